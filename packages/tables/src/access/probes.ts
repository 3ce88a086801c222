import type { Source } from "@good-grounds/core";
import { source } from "../sources.ts";

/** Additional letters of an IP code: access by back of hand, finger, tool, wire. */
export const ACCESS_LETTERS = ["A", "B", "C", "D"] as const;
export type AccessLetter = (typeof ACCESS_LETTERS)[number];

/** A probe that stands for part of a person or what they hold. Lengths in mm. */
export interface AccessProbe {
  readonly letter: AccessLetter;
  readonly shape: "sphere" | "jointed finger" | "rod" | "wire";
  readonly diameter: number;
  /** Length of the probe that may enter; null for the sphere. */
  readonly length: number | null;
  /** What stops the probe: a face by its two sides, a sphere by its diameter, the guard of the handle. */
  readonly stop: string;
  /** What the probe may do without the hazard being within reach. */
  readonly may: string;
  /** Force of the test, N, with a source of its own. */
  readonly force: { readonly newtons: number; readonly source: Source };
  readonly source: Source;
}

const WORK = "BS EN 60529 and BS EN 61032";
const SEEN = source(`${WORK}; pages that describe the probes`, "current", "published");
const REMEMBERED = source(WORK, "current", "memory");

const PROBES: Readonly<Record<AccessLetter, AccessProbe>> = Object.freeze({
  A: {
    letter: "A",
    shape: "sphere",
    diameter: 50,
    length: null,
    stop: "guard of the handle",
    may: "enter up to the guard without touching",
    force: { newtons: 50, source: REMEMBERED },
    source: SEEN,
  },
  B: {
    letter: "B",
    shape: "jointed finger",
    diameter: 12,
    length: 80,
    stop: "face of 50 mm × 20 mm; each joint bends to 90°",
    may: "enter its length; the stop face must not pass and clearance has to stay",
    force: { newtons: 10, source: REMEMBERED },
    source: SEEN,
  },
  C: {
    letter: "C",
    shape: "rod",
    diameter: 2.5,
    length: 100,
    stop: "sphere of 35 mm",
    may: "enter its length; clearance has to stay",
    force: { newtons: 3, source: REMEMBERED },
    source: REMEMBERED,
  },
  D: {
    letter: "D",
    shape: "wire",
    diameter: 1,
    length: 100,
    stop: "sphere of 35 mm",
    may: "enter its length; the stop must not pass and clearance has to stay",
    force: { newtons: 1, source: REMEMBERED },
    source: SEEN,
  },
});

/** The probe of an additional letter. Access is judged at the hazardous part, not at the opening. */
export function accessProbe(letter: AccessLetter): AccessProbe {
  return PROBES[letter];
}
