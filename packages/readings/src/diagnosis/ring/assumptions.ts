import {
  assumed,
  type Evidence,
  type Fact,
  fact,
  type Ground,
  isKnown,
  isKnownFact,
  matter,
  TERM,
} from "@good-grounds/core";
import { type Circuit, MATTER } from "@good-grounds/inspection";

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
  "accuracy of the instrument not stated: an error common to all readings up to the greatest its standard allows, and " +
    "of each reading 2 % and 3 digits by the habit of such instruments",
  [0.7, 1.3],
  { work: "BS EN 61557-4", edition: "all", basis: "published" },
);

/** What was taken to be so of a ring, and what was computed from tables. */
export function assumptions(
  { readings, cable }: Circuit,
  line: Evidence<"ohm-per-metre">,
  neutralStated: boolean,
  read: readonly Evidence<"ohm">[],
): readonly Ground[] {
  const found: Ground[] = [line];
  if (readings.crossLineNeutral.length + readings.crossLineCpc.length > 0) found.push(LISTED_IN_ORDER);
  if (!neutralStated) found.push(NEUTRAL_AS_LINE);
  if (!isKnownFact(cable.material) && isKnown(cable.line)) found.push(AS_COPPER);
  if (isKnown(cable.length)) found.push(cable.length);
  if (read.some((one) => one.kind === "measured" && one.detail.accuracy === null)) found.push(NO_ACCURACY);
  return found;
}
