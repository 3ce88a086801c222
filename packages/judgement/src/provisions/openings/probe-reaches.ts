import {
  type Evidence,
  isKnown,
  published,
  publishedBetween,
  type Reckoner,
  type Source,
  TERM,
} from "@good-grounds/core";
import { type AccessLetter, accessProbe, JOINTED_FINGER, source } from "@good-grounds/tables";
import { type BehindOpening, fingerReach, type ProbeReach } from "./finger-reach.ts";
import { sphereReach, straightReach } from "./straight-reach.ts";

/** The widths of an opening and the offset of the live part, m. */
export interface OpeningAsked {
  readonly least: Evidence<"metre">;
  readonly greatest: Evidence<"metre">;
  readonly offset: Evidence<"metre">;
}

/** Depth each probe reaches at the offset, m, as a band. */
export interface ProbeReaches {
  readonly finger: Evidence<"metre">;
  readonly wire: Evidence<"metre">;
  readonly rod: Evidence<"metre">;
  readonly hand: Evidence<"metre">;
}

const ROD = accessProbe("C");
const WIRE = accessProbe("D");

/** The wire of the fourth numeral and the letter D, m. */
export const WIRE_DIAMETER = published(TERM.probeDiameter, WIRE.diameter / 1000, WIRE.source, "wire of 1 mm");

/** A part this far beyond a probe's end, mm, is no longer at its end: a tie counts as touched. */
const BEYOND = 1e-3;

const derived = (letter: AccessLetter, formula: string): Source =>
  source(`${accessProbe(letter).source.work}, geometry of the probe behind a thin wall`, "current", "derived", {
    formula,
    doubt: letter === "B" ? (JOINTED_FINGER.source.doubt ?? "") : "how far a rod leans depends on the wall",
  });

const FINGER_SOURCE = derived(
  "B",
  "behind the opening 80 mm; sideways 20 mm + √(60² − (s + 6)²) up to the leaning finger",
);
const WIRE_SOURCE = derived("D", "behind the opening 100 mm; sideways at most √(100² − s²)");
const ROD_SOURCE = derived("C", "behind the opening 100 mm; sideways at most √(100² − s²)");
const HAND_SOURCE = derived("A", "25 mm − √(25² − (w/2)²), without limit from 50 mm");

/** How deep the four probes reach, from the widths of the opening and the offset. */
export function probeReaches(asked: OpeningAsked, reckon: Reckoner): ProbeReaches {
  const reach = (of: (behind: BehindOpening) => ProbeReach, from: Source, row: string) =>
    reckon.lookedUp(TERM.probeReach, banded(asked, of, from, row), asked.least, asked.greatest, asked.offset);
  return {
    finger: reach(fingerReach, FINGER_SOURCE, "jointed finger"),
    wire: reach((behind) => straightReach(WIRE.diameter, WIRE.length ?? 0, behind), WIRE_SOURCE, "wire of 1 mm"),
    rod: reach((behind) => straightReach(ROD.diameter, ROD.length ?? 0, behind), ROD_SOURCE, "rod of 2.5 mm"),
    hand: reach(sphereReach, HAND_SOURCE, "sphere of 50 mm"),
  };
}

/** From what the tightest opening and the largest offset allow for certain, to what the reverse leaves possible. */
function banded(
  { least, greatest, offset }: OpeningAsked,
  of: (behind: BehindOpening) => ProbeReach,
  from: Source,
  row: string,
) {
  if (!isKnown(least) || !isKnown(greatest) || !isKnown(offset)) return undefined;
  const at = (end: "low" | "value" | "high", far: "low" | "value" | "high") =>
    of({ narrow: least[end] * 1000, wide: greatest[end] * 1000, offset: offset[far] * 1000 });
  const metres = (depth: number) => (depth > 0 ? (depth + BEYOND) / 1000 : 0);
  return publishedBetween(
    TERM.probeReach,
    metres(at("value", "value").possible),
    metres(at("low", "high").certain),
    metres(at("high", "low").possible),
    from,
    row,
  );
}
