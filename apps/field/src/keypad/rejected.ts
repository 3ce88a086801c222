import type { Value } from "../record/entry.ts";
import type { Record as JobRecord } from "../record/record.ts";
import { type Taken, takenOf } from "./reading.ts";
import { changeAt, type Spot, spotId, valueAt } from "./spot.ts";

/** Where rejected readings are kept: a name of the record's own, no part of the inspection file. */
const REJECTED = "~rejected";

/** A reading that its inspector rejected in order to measure again. */
interface Rejected {
  /** The place it was taken for. */
  readonly of: string;
  readonly reading: Taken;
  /** When it was rejected, and by whom. */
  readonly at: string;
  readonly by?: string;
}

/**
 * The changes that reject the reading at a spot: its place is empty again, and the reading is kept with its time under
 * `name`, which no other rejected reading has. None where no reading stands.
 */
export function rejecting(
  record: JobRecord,
  spot: Spot,
  name: string,
  at: string,
  by: string,
): readonly (readonly [path: string, value: Value])[] {
  const reading = valueAt(record, spot);
  if (reading === undefined || takenOf(reading) === undefined) return [];
  const kept = { of: spotId(spot), reading, at, ...(by === "" ? {} : { by }) };
  return [changeAt(record, spot, null), [`${REJECTED}/${name}`, kept]];
}

/** Whether a place of the record is that of a rejected reading. */
export function isRejected(path: string): boolean {
  return path.startsWith(`${REJECTED}/`);
}

/** The rejected reading at a place of the record; undefined where there is none. */
export function rejectedAt(record: JobRecord, path: string): Rejected | undefined {
  return rejectedOf(record.value(path));
}

/** A value of the record as a rejected reading. */
export function rejectedOf(value: Value | undefined): Rejected | undefined {
  const { of, reading, at } = (value ?? {}) as { readonly [name: string]: Value };
  if (typeof of !== "string" || typeof at !== "string" || takenOf(reading) === undefined) return undefined;
  return value as unknown as Rejected;
}
