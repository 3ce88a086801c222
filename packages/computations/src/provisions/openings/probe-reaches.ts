import {
  type Basis,
  type Evidence,
  isKnown,
  published,
  publishedBetween,
  type Reckoner,
  type Source,
  TERM,
} from "@good-grounds/core";
import { type AccessLetter, accessProbe, JOINTED_FINGER, source } from "@good-grounds/tables";
import { type BehindOpening, fingerReach, type ProbeReach, passes } from "./finger-reach.ts";
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

/** Geometry of a probe whose sizes were read, or remembered where they are. */
const geometry = (letter: AccessLetter, formula: string, more: { doubt?: string; basis?: Basis } = {}): Source => {
  const { work, basis } = accessProbe(letter).source;
  const { doubt, basis: founded = basis === "memory" ? "memory" : "derived" } = more;
  const name = `${work}, geometry of the probe behind a thin wall`;
  return source(name, "current", founded, doubt === undefined ? { formula } : { formula, doubt });
};

const LEANS = { doubt: "sideways it depends on how far the wall lets it lean" };
const STRAIGHT_FINGER = geometry("B", "its length, 80 mm, where it passes; without limit where its stop face passes");
const BENT_FINGER = geometry(
  "B",
  "sideways 20 mm + √(60² − (s + 6)²) up to the leaning finger; at most its taper where it does not pass",
  {
    basis: JOINTED_FINGER.source.basis,
    ...(JOINTED_FINGER.source.doubt === undefined ? {} : { doubt: JOINTED_FINGER.source.doubt }),
  },
);
const WIRE_SOURCE = geometry("D", "behind the opening 100 mm; sideways at most √(100² − s²)", LEANS);
const ROD_SOURCE = geometry("C", "behind the opening 100 mm; sideways at most √(100² − s²)", LEANS);
const HAND_SOURCE = geometry("A", "25 mm − √(25² − (w/2)²), without limit from 50 mm");

/** How deep the four probes reach, from the widths of the opening and the offset. */
export function probeReaches(asked: OpeningAsked, reckon: Reckoner): ProbeReaches {
  const reach = (of: (behind: BehindOpening) => ProbeReach, from: Source, row: string) =>
    reckon.lookedUp(TERM.probeReach, banded(asked, of, from, row), asked.least, asked.greatest, asked.offset);
  return {
    finger: reach(fingerReach, straight(asked) ? STRAIGHT_FINGER : BENT_FINGER, "jointed finger"),
    wire: reach((behind) => straightReach(WIRE.diameter, WIRE.length ?? 0, behind), WIRE_SOURCE, "wire of 1 mm"),
    rod: reach((behind) => straightReach(ROD.diameter, ROD.length ?? 0, behind), ROD_SOURCE, "rod of 2.5 mm"),
    hand: reach(sphereReach, HAND_SOURCE, "sphere of 50 mm"),
  };
}

/** Whether the finger passes and goes straight, so that only its length and not its joints and its end matter. */
function straight({ least, offset }: OpeningAsked): boolean {
  return isKnown(least) && isKnown(offset) && offset.high <= 0 && passes(least.low * 1000, JOINTED_FINGER.diameter);
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
