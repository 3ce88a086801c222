import {
  assumed,
  type ConductorMaterial,
  type Evidence,
  type Fact,
  isExact,
  isKnown,
  isKnownFact,
  type Reckoner,
  TERM,
  type Term,
} from "@good-grounds/core";
import { conductorResistance, temperatureFactor } from "@good-grounds/tables";

/** Real conductors are drawn a little thicker than the standard's greatest resistance demands. */
export const CONDUCTOR_TOLERANCE = assumed(
  TERM.conductorTolerance,
  0.97,
  "real conductors lie a few per cent below the greatest permitted resistance",
  [0.92, 1],
  { work: "experience of measured cables", edition: "none", basis: "common-practice" },
);

/** Resistance per metre at 20 °C by size and material, BS EN 60228. */
export function perMetre(
  term: Term<"ohm-per-metre">,
  area: Evidence<"square-millimetre">,
  material: Fact<ConductorMaterial>,
  reckon: Reckoner,
): Evidence<"ohm-per-metre"> {
  const figure =
    isExact(area) && isKnownFact(material) ? conductorResistance(term, area.value, material.word) : undefined;
  return reckon.lookedUp(term, figure, area, material);
}

/** Resistance at the test temperature over that at 20 °C; unknown temperature becomes the band of likely ones. */
export function testFactor(temperature: Evidence<"celsius">): Evidence<"ratio"> {
  if (!isKnown(temperature)) return UNRECORDED;
  const middle = temperatureFactor(temperature.value);
  if (isExact(temperature)) return middle;
  const [low, high] = [temperatureFactor(temperature.low), temperatureFactor(temperature.high)];
  if (!isKnown(low) || !isKnown(middle) || !isKnown(high)) return middle;
  return assumed(TERM.testFactor, middle.value, "temperature known within a range", [low.value, high.value]);
}

const UNRECORDED = assumed(
  TERM.testFactor,
  1,
  "conductor temperature during the test not recorded; taken to lie between 0 and 30 °C",
  [0.92, 1.04],
);
