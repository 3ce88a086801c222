import { type Assumed, assumed, type Evidence, isKnown, type Published, TERM } from "@good-grounds/core";
import { temperatureFactor } from "@good-grounds/tables";

/** Resistance at the temperature of the test over that at 20 °C, 1 + 0.004 (θ − 20); assumed where θ was not recorded. */
export function factorAt(temperature: Evidence<"celsius">): Published<"ratio"> | Assumed<"ratio"> {
  if (!isKnown(temperature)) return UNRECORDED;
  const factor = temperatureFactor(temperature.value);
  return isKnown(factor) && factor.kind === "published" ? factor : UNRECORDED;
}

const UNRECORDED = assumed(
  TERM.testFactor,
  0.98,
  "conductor temperature during the test not recorded; taken to lie between 0 and 30 °C",
  [0.92, 1.04],
);
