import type { Source } from "@good-grounds/core";
import { source } from "../sources.ts";
import type { AccessLetter } from "./probes.ts";

/** First numerals of an IP code. */
export const OBJECT_NUMERALS = [1, 2, 3, 4, 5, 6] as const;
export type ObjectNumeral = (typeof OBJECT_NUMERALS)[number];

/** What a first numeral keeps out. */
export interface ObjectProtection {
  readonly numeral: ObjectNumeral;
  /** What is kept out, in words. */
  readonly keepsOut: string;
  /** Diameter of the test object, mm; null for dust. */
  readonly diameter: number | null;
  /** Force on the test object, N; null where there is none or where it is not held. */
  readonly force: { readonly newtons: number; readonly source: Source } | null;
  /** The access probe that has to keep its clearance; dust numerals include that of the fourth. */
  readonly probe: AccessLetter;
  readonly source: Source;
}

const WORK = "BS EN 60529, first numeral";
const SEEN = source(`${WORK}; pages that reproduce it`, "current", "published");
const REMEMBERED = source(WORK, "current", "memory");
const force = (newtons: number) => Object.freeze({ newtons, source: REMEMBERED });

const ROWS: Readonly<Record<ObjectNumeral, ObjectProtection>> = Object.freeze({
  1: {
    numeral: 1,
    keepsOut: "a sphere of 50 mm, the back of a hand",
    diameter: 50,
    force: force(50),
    probe: "A",
    source: SEEN,
  },
  2: {
    numeral: 2,
    keepsOut: "a sphere of 12.5 mm, which does not fully enter; a finger",
    diameter: 12.5,
    force: force(30),
    probe: "B",
    source: SEEN,
  },
  3: {
    numeral: 3,
    keepsOut: "a rod of 2.5 mm, which does not enter at all; a tool",
    diameter: 2.5,
    force: force(3),
    probe: "C",
    source: REMEMBERED,
  },
  4: {
    numeral: 4,
    keepsOut: "a wire of 1 mm, which does not enter at all",
    diameter: 1,
    force: force(1),
    probe: "D",
    source: SEEN,
  },
  5: {
    numeral: 5,
    keepsOut: "dust in harmful quantity",
    diameter: null,
    force: null,
    probe: "D",
    source: REMEMBERED,
  },
  6: { numeral: 6, keepsOut: "dust", diameter: null, force: null, probe: "D", source: REMEMBERED },
});

/** What a first numeral keeps out, and the access probe it implies. */
export function objectProtection(numeral: ObjectNumeral): ObjectProtection {
  return ROWS[numeral];
}
