import type { Value } from "../record/entry.ts";
import { KEYPAD } from "../words/keypad.ts";

/** A reading as it was taken. */
export interface Taken {
  readonly shown: string;
  readonly at?: string;
  readonly by?: string;
  readonly with?: string;
  readonly method?: string;
  readonly note?: string;
}

type Silence = "limited" | "not-verified" | "not-applicable";

/** Why there is no value. */
export interface NoValue {
  readonly kind: Silence;
  readonly reason: string;
}

export function takenOf(value: Value | undefined): Taken | undefined {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return undefined;
  const { shown } = value as { readonly shown?: Value };
  return typeof shown === "string" ? (value as unknown as Taken) : undefined;
}

/** The statement that a reading was not taken or a fact is not known. */
export function noValueOf(value: Value | undefined): NoValue | undefined {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return undefined;
  const { notTaken, notKnown, reason } = value as { readonly [name: string]: Value };
  const kind = notTaken ?? notKnown;
  return typeof kind === "string"
    ? { kind: kind as Silence, reason: typeof reason === "string" ? reason : "" }
    : undefined;
}

/** What stands at a field of readings, as a reader sees it; empty where nothing does. */
export function shownWords(value: Value | undefined): string {
  const taken = takenOf(value);
  if (taken !== undefined) return taken.shown;
  const none = noValueOf(value);
  if (none !== undefined)
    return none.reason === "" ? KEYPAD.silence[none.kind] : `${KEYPAD.silence[none.kind]}: ${none.reason}`;
  return typeof value === "string" ? value : "";
}
