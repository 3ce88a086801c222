import { assumed, type Evidence, isKnown, isKnownFact, type Reckoner, TERM, type Unit } from "@good-grounds/core";
import type { Circuit } from "@good-grounds/inspection";
import { CONDUCTOR_TOLERANCE, perMetre, testFactor } from "@good-grounds/measurement";
import { AS_COPPER } from "./assumptions.ts";
import type { RingInput, Uncertain } from "./readings.ts";

/** Conductors of one cable against each other, relative: a habit of the trade's cables, as CONDUCTOR_TOLERANCE is. */
export const NEUTRAL_AGAINST_LINE = 0.02;
export const CPC_AGAINST_LINE = 0.025;
/** A length stated as one figure is paced or scaled off. */
const LENGTH_AS_STATED = 0.03;

/** Ω/m at the temperature of the test, with the tolerance of real conductors. */
export function perMetreNow(
  area: Evidence<"square-millimetre">,
  circuit: Circuit,
  reckon: Reckoner,
): Evidence<"ohm-per-metre"> {
  const at20 = perMetre(TERM.conductorPerMetre, area, circuit.cable.material, reckon);
  const atTest = reckon.product(TERM.conductorPerMetre, at20, testFactor(circuit.readings.temperature));
  return reckon.product(TERM.conductorPerMetre, atTest, CONDUCTOR_TOLERANCE);
}

/** Resistance of a conductor over that of the line conductor, by their sizes. */
export function ratioOf(
  area: Evidence<"square-millimetre">,
  ofLine: Evidence<"square-millimetre">,
  stated: Circuit["cable"]["material"],
  reckon: Reckoner,
  relative: number,
): Uncertain | undefined {
  // Of one metal, whichever it is, sizes stand in nearly the same ratio.
  const material = isKnownFact(stated) ? stated : AS_COPPER;
  const other = perMetre(TERM.conductorPerMetre, area, material, reckon);
  const line = perMetre(TERM.conductorPerMetre, ofLine, material, reckon);
  if (!isKnown(other) || !isKnown(line)) return undefined;
  const value = other.value / line.value;
  return { value, deviation: value * relative };
}

/** Sizes a protective conductor of a ring may have in truth, mm². */
const SIZES = [1, 1.5, 2.5, 4, 6];

/** Ratios of the other sizes that the protective conductor may have; it is never larger than the line conductor. */
export function otherSizes({ cable }: Circuit, reckon: Reckoner): NonNullable<RingInput["cpcSizes"]> {
  const { line, cpc, material } = cable;
  if (!isKnown(line) || !isKnown(cpc)) return [];
  return SIZES.flatMap((size) => {
    if (size === cpc.value || size > line.value) return [];
    const ratio = ratioOf(sizeOf(size), line, material, reckon, CPC_AGAINST_LINE);
    return ratio === undefined ? [] : [{ size, ratio }];
  });
}

function sizeOf(size: number): Evidence<"square-millimetre"> {
  return assumed(TERM.cpcArea, size, "a size the protective conductor may have in truth");
}

/** Whether the protective conductor is a conductor of the table, not armour or conduit. */
export function isMetalOfCable({ cable: { cpcArrangement } }: Circuit): boolean {
  return !isKnownFact(cpcArrangement) || cpcArrangement.word === "in-cable" || cpcArrangement.word === "separate";
}

/** The length of the cable, where it is known. */
export function lengthOf(length: Evidence<"metre">): Uncertain | undefined {
  if (!isKnown(length) || !(length.value > 0)) return undefined;
  const { value, deviation } = spread(length);
  return { value, deviation: Math.max(deviation, value * LENGTH_AS_STATED) };
}

/** A band as a rectangular distribution. */
export function spread({ low, high }: Evidence<Unit>): Uncertain {
  return { value: (low + high) / 2, deviation: (high - low) / Math.sqrt(12) };
}
