import type { Source } from "./grounds/evidence.ts";

/** Everything the law is known here to ask, one name a duty. A new one is added here, as a row, and in words. */
export const DUTY_IDS = [
  "england-while-let",
  "england-before-tenancy",
  "england-next-inspection",
  "england-report-names-next",
  "england-copy-tenant",
  "england-copy-new-tenant",
  "england-copy-prospective",
  "england-copy-authority",
  "england-keep",
  "england-work",
  "england-work-confirmation",
  "england-remedial-notice",
  "england-reasonable-steps",
  "england-social-first",
  "england-equipment-check",
  "england-equipment-repair",
  "england-report-names-equipment",
  "england-emergency-hazard",
  "wales-valid-report",
  "wales-copy-occupation",
  "wales-copy-later",
  "wales-work-confirmation",
  "wales-fit",
  "wales-smoke-alarms",
  "scotland-next-inspection",
  "scotland-while-let",
  "scotland-copy-new-tenant",
  "scotland-copy-tenant",
  "scotland-keep",
  "scotland-work",
  "scotland-rcd",
  "scotland-appliances",
  "scotland-fire-alarms",
  "scotland-social",
  "ni-while-let",
  "ni-next-inspection",
  "ni-report-names-next",
  "ni-copy-tenant",
  "ni-copy-new-tenant",
  "ni-copy-prospective",
  "ni-copy-council",
  "ni-keep",
  "ni-work",
  "ni-work-confirmation",
  "ni-social",
  "hmo-england",
  "hmo-wales-interval",
  "hmo-wales-authority",
  "hmo-scotland",
  "hmo-ni",
  "work-maintain",
  "work-defence",
  "work-maintain-ni",
  "work-defence-ni",
  "inspector-safe-work",
  "inspector-safe-work-ni",
  "inspector-tell-danger",
  "inspector-tell-danger-ni",
] as const;
export type DutyId = (typeof DUTY_IDS)[number];

/** Who has to do it. */
export type DutyBearer = "landlord" | "licence-holder" | "duty-holder" | "inspector";

/** To whom something has to be given or told. */
export type DutyRecipient =
  | "tenant"
  | "new-tenant"
  | "prospective-tenant"
  | "authority"
  | "tenant-and-authority"
  | "next-inspector"
  | "landlord"
  | "duty-holder";

/** What has to be so for a duty to be there. */
export type DutyCondition =
  | "england"
  | "wales"
  | "scotland"
  | "northern-ireland"
  | "great-britain"
  | "let-home"
  | "private-let"
  | "social-let"
  | "single-home"
  | "hmo"
  | "workplace"
  | "occupied"
  | "tenancy-to-come"
  | "older-social-tenancy"
  | "social-in-force"
  | "equipment"
  | "work-required"
  | "danger"
  | "danger-or-likely"
  | "no-main-rcd";

/** What a period runs from, or what something has to come before. */
export type DutyEvent =
  | "inspection"
  | "inspection-completed"
  | "finding"
  | "told"
  | "request"
  | "occupation"
  | "tenancy"
  | "work-done"
  | "notice"
  | "equipment-check";

/** How a date was counted. */
export interface DutyCount {
  /** Length of the period that counts. */
  readonly number: number;
  readonly unit: "hour" | "day" | "year";
  readonly from: DutyEvent;
  /** The day, or for hours the moment, from which it was counted; null where that is not known. */
  readonly start: string | null;
  /**
   * `stated`: the law says that the period starts with that day, so that it is day 1. `safer`: the law leaves it open, and
   * the reading that gives the earlier date was taken, with that day as day 1. `elapsed`: hours on the clock.
   */
  readonly firstDay: "stated" | "safer" | "elapsed";
  /** Length by law, where the report states a shorter period that counts instead. */
  readonly byLaw?: number;
}

/**
 * By when. `by`: at the latest on `day`; null where the period runs from something that is not known yet. `before`: at
 * the latest on `day`, the one before it; null where that is not known. `keep`: at least until `day`. `next`: the next
 * inspection, at the latest on `day`. `at-once`: before leaving. `always`: at all times. `undated`: the law sets no period.
 */
export interface DutyTime {
  readonly kind: "by" | "before" | "keep" | "next" | "at-once" | "always" | "undated";
  /** Calendar day; null where it is not known or there is none. */
  readonly day: string | null;
  /** Date and time in the United Kingdom with its offset, where it is a matter of hours. */
  readonly moment?: string;
  readonly count?: DutyCount;
  /** What it has to come before. */
  readonly event?: DutyEvent;
  /** Where the report names a date for the next inspection that is later than the law allows: that date. */
  readonly laterInReport?: string;
}

/** An act, or regulations made under one. */
export interface Statute {
  /** Short name inside the program. */
  readonly id: string;
  readonly title: string;
  /** Its number: "SI 2020/312". */
  readonly number: string;
}

/** What the law asks of somebody: a reminder, not legal advice, and never part of the technical outcome. */
export interface Duty {
  readonly id: DutyId;
  readonly statute: Statute;
  /** Regulation, section or article: "reg. 3(4)". */
  readonly provision: string;
  readonly source: Source;
  readonly who: DutyBearer;
  readonly to: DutyRecipient | null;
  /** What is not known and would have to be so; empty where the duty is there. */
  readonly onlyIf: readonly DutyCondition[];
  readonly time: DutyTime;
}
