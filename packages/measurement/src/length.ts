import {
  assumed,
  type Evidence,
  type Fact,
  isExact,
  isKnown,
  isKnownFact,
  type LengthFound,
  TERM,
} from "@good-grounds/core";
import { type Doubted, doubtedOf, sumOf, within } from "./doubted.ts";

/** What a length is out by, as its limits either way: a part of it, and metres. */
interface LengthDoubt {
  readonly part: number;
  readonly metres: number;
  readonly why: string;
}

/**
 * What a length may be out by, by how it was found. Habits of the trade without a source. A length of which nobody wrote
 * down how it was found is taken as estimated: to take it as taped would make faults of honest guesses.
 */
export const LENGTH_DOUBT: Readonly<Record<LengthFound, LengthDoubt>> = Object.freeze({
  taped: { part: 0.01, metres: 0.5, why: "length taped: right to 1 % and half a metre" },
  "by-drawing": { part: 0.06, metres: 1, why: "length off a drawing: right to 6 % and a metre" },
  estimated: { part: 0.15, metres: 1, why: "length estimated: right to 15 % and a metre" },
  unknown: { part: 0.5, metres: 2, why: "nobody knows how the length was found: right to half of it and 2 m" },
});

/** How a length was found; one that does not say was estimated. */
export function lengthFoundOf(found: Fact<LengthFound>): LengthFound {
  return isKnownFact(found) ? found.word : "estimated";
}

/** A length with its doubt; a range stays as it was given. */
export function lengthOf(length: Evidence<"metre">, found: Fact<LengthFound>): Doubted | undefined {
  if (!isKnown(length)) return undefined;
  if (!isExact(length)) return doubtedOf(length);
  const { part, metres } = LENGTH_DOUBT[lengthFoundOf(found)];
  // Two causes: what was misjudged along the way, and what was left out at the ends.
  return sumOf(within(length.value, part * length.value, length), within(0, metres, length.detail));
}

/** The same as a line of an argument: the length with the band that it may have. */
export function lengthWithin(length: Evidence<"metre">, found: Fact<LengthFound>): Evidence<"metre"> {
  if (!isKnown(length) || !isExact(length)) return length;
  const { part, metres, why } = LENGTH_DOUBT[lengthFoundOf(found)];
  const either = part * length.value + metres;
  const band = [Math.max(0, length.value - either), length.value + either] as const;
  return assumed(TERM.length, length.value, why, band, PRACTICE);
}

const PRACTICE = Object.freeze({
  work: "habits of surveying routes",
  edition: "none",
  basis: "common-practice" as const,
});
