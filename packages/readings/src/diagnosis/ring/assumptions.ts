import {
  assumed,
  type Evidence,
  type Fact,
  fact,
  type Ground,
  isKnown,
  isKnownFact,
  matter,
  type Reckoner,
  TERM,
} from "@good-grounds/core";
import { type Circuit, MATTER } from "@good-grounds/inspection";
import { CONDUCTOR_TOLERANCE, lengthWithin, perMetre, testFactor } from "@good-grounds/measurement";

const ORDER = matter("ring-order", "the points are listed in their order round the ring");
const NEUTRAL = matter("ring-neutral-size", "the neutral conductor of the ring is of the size of the line conductor");

const LISTED_IN_ORDER: Fact<boolean> = fact<boolean>(
  ORDER,
  true,
  [],
  "true",
  "assumed",
  "the file does not say otherwise; distances between the points are left open",
);

const NEUTRAL_AS_LINE: Fact<boolean> = fact<boolean>(
  NEUTRAL,
  true,
  [],
  "true",
  "assumed",
  "line and neutral of one cable are of one size",
);

/** Where the metal is not known, the ratio of sizes is taken as that of copper. */
export const AS_COPPER: Fact<"copper"> = fact<"copper">(
  MATTER.material,
  "copper",
  [],
  "copper",
  "assumed",
  "line, neutral and protective conductor of a ring are of one metal; the ratio of their sizes is taken as that of copper",
);

const NO_ACCURACY = assumed(
  TERM.operatingUncertainty,
  1,
  "accuracy of the instrument not stated: each reading is taken to be out by up to 2 % and 3 digits, as usual instruments are",
  [0.98, 1.02],
  { work: "experience of installation testers", edition: "none", basis: "common-practice" },
);

/** Ω/m at the temperature of the test, with the tolerance of real conductors. */
export function perMetreNow({ cable, readings }: Circuit, reckon: Reckoner): Evidence<"ohm-per-metre"> {
  const at20 = perMetre(TERM.conductorPerMetre, cable.line, cable.material, reckon);
  const atTest = reckon.product(TERM.conductorPerMetre, at20, testFactor(readings.temperature));
  return reckon.product(TERM.conductorPerMetre, atTest, CONDUCTOR_TOLERANCE);
}

/** What was taken to be so of a ring, and what was computed from tables. */
export function assumptions(
  { readings, cable }: Circuit,
  line: Evidence<"ohm-per-metre">,
  read: readonly Evidence<"ohm">[],
): readonly Ground[] {
  const found: Ground[] = [line];
  if (readings.crossLineNeutral.length + readings.crossLineCpc.length > 0) found.push(LISTED_IN_ORDER);
  if (!isKnown(cable.neutral)) found.push(NEUTRAL_AS_LINE);
  if (!isKnownFact(cable.material) && isKnown(cable.line)) found.push(AS_COPPER);
  if (isKnown(cable.length)) found.push(lengthWithin(cable.length, cable.lengthFound));
  if (read.some((one) => one.kind === "measured" && one.detail.accuracy === null)) found.push(NO_ACCURACY);
  return found;
}
