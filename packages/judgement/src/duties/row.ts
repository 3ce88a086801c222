import type { Basis, DutyBearer, DutyCondition, DutyEvent, DutyId, DutyRecipient, Statute } from "@good-grounds/core";

/** By when, as the law has it. */
export type TimeRule =
  | {
      readonly kind: "within";
      readonly number: number;
      readonly unit: "hour" | "day" | "year";
      readonly from: DutyEvent;
      /** Whether the law itself says that the period starts with that day, or the safer way is taken. */
      readonly firstDay: "stated" | "safer" | "elapsed";
      /** A shorter period that the report states counts instead. */
      readonly orShorter?: true;
    }
  /** The next inspection, so many years later at the most; null where no law says how many. */
  | { readonly kind: "next"; readonly years: number | null; readonly firstDay: "stated" | "safer" }
  | { readonly kind: "before"; readonly event: "occupation" | "tenancy" }
  /** Kept until the next inspection is due, or for so many years. */
  | { readonly kind: "keep"; readonly years: number | null }
  | { readonly kind: "on"; readonly day: string }
  | { readonly kind: "at-once" | "always" | "undated" };

/** One duty as the law has it. What it asks is said in words by whoever shows it. */
export interface DutyRow {
  readonly id: DutyId;
  readonly provision: string;
  readonly basis: Basis;
  /** What is not certain about it. */
  readonly doubt?: string;
  readonly who: DutyBearer;
  readonly to?: DutyRecipient;
  /** All of them have to hold. */
  readonly when: readonly DutyCondition[];
  /** Inspections before this day are not asked it. */
  readonly since?: string;
  readonly time: TimeRule;
}

/** Duties of one statute. */
export interface DutyTable {
  readonly statute: Statute;
  /** As it stands in these amendments. */
  readonly edition: string;
  readonly rows: readonly DutyRow[];
}

/** A period of days; `stated` where the law says that the day it runs from is the first of it. */
export const days = (
  number: number,
  from: DutyEvent,
  firstDay: "stated" | "safer",
  shorter?: "or-shorter",
): TimeRule => ({
  kind: "within",
  number,
  unit: "day",
  from,
  firstDay,
  ...(shorter === undefined ? {} : { orShorter: true }),
});

export const before = (event: "occupation" | "tenancy"): TimeRule => ({ kind: "before", event });
export const next = (years: number | null, firstDay: "stated" | "safer"): TimeRule => ({
  kind: "next",
  years,
  firstDay,
});
export const keep = (years: number | null): TimeRule => ({ kind: "keep", years });
export const ALWAYS: TimeRule = Object.freeze({ kind: "always" });
export const UNDATED: TimeRule = Object.freeze({ kind: "undated" });
export const AT_ONCE: TimeRule = Object.freeze({ kind: "at-once" });
