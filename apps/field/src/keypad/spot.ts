import type { Value } from "../record/entry.ts";
import type { Record as JobRecord } from "../record/record.ts";
import { type Field, put, useField, useSession } from "../shell/job.ts";

/** A place of the record, or a member within the one value that stands there: the operating time of a circuit's own RCD. */
export interface Spot {
  readonly path: string;
  readonly inner?: readonly string[];
  /** Written along with a value, so that what holds it is there: a new member of a list. */
  readonly along?: readonly (readonly [path: string, value: Value])[];
}

export function spotId({ path, inner = [] }: Spot): string {
  return [path, ...inner].join("/");
}

/** A member within a value; undefined where there is none. */
export function within(value: Value | undefined, inner: readonly string[] = []): Value | undefined {
  let found = value;
  for (const name of inner) {
    if (typeof found !== "object" || found === null || Array.isArray(found)) return undefined;
    found = (found as { readonly [name: string]: Value })[name];
  }
  return found ?? undefined;
}

/** A value with a member within it replaced or, for null, taken out. What is left without members goes with it. */
export function replaced(value: Value | undefined, inner: readonly string[], member: Value): Value {
  const [name, ...further] = inner;
  if (name === undefined) return member;
  const isObject = typeof value === "object" && value !== null && !Array.isArray(value);
  const { [name]: old, ...others } = isObject ? (value as { readonly [name: string]: Value }) : {};
  const fresh = replaced(old, further, member);
  if (fresh !== null) return { ...others, [name]: fresh };
  return Object.keys(others).length === 0 ? null : others;
}

/** What stands at a spot of a record. */
export function valueAt(record: JobRecord, { path, inner }: Spot): Value | undefined {
  return within(record.value(path), inner);
}

/** The change of the record that writes a value at a spot. */
export function changeAt(record: JobRecord, { path, inner = [] }: Spot, value: Value): readonly [string, Value] {
  return [path, replaced(record.value(path), inner, value)];
}

interface SpotField extends Field {
  /** Writes the whole value the spot lies in: what is chosen where two stand. */
  readonly writeWhole: (value: Value) => void;
}

/** What stands at a spot, and how to write it. */
export function useSpot(spot: Spot): SpotField {
  const session = useSession();
  const field = useField(spot.path);
  const { inner = [], along = [] } = spot;
  return {
    value: within(field.value, inner),
    standing: field.standing,
    write: (value) => put(session, ...along, [spot.path, replaced(field.value, inner, value)]),
    writeWhole: field.write,
  };
}
