import {
  assumed,
  type Evidence,
  expected,
  fact,
  isExact,
  isKnown,
  isKnownFact,
  notKnown,
  type Reckoner,
  TERM,
} from "@good-grounds/core";
import { operatingTemperature } from "@good-grounds/tables";
import { ASKED } from "../../matters.ts";
import { type Installed, installedCapacity } from "./installed-capacity.ts";

/** Beyond this size the drop is not of resistance alone, mm². */
export const RESISTANCE_ALONE = 16;

/**
 * The voltage drop of a cable no warmer than its load makes it, V: the tabulated one is of a conductor at its greatest
 * temperature. Resistance goes with 230 + θ (Appendix 4, 6.1). Undefined where that temperature is not known, and above
 * 16 mm².
 */
export function dropUnderLoad(
  tabulated: Evidence<"volt">,
  current: Evidence<"ampere">,
  cable: Omit<Installed, "hotTerminals">,
  reckon: Reckoner,
): Evidence<"volt"> | undefined {
  const { insulation, line } = cable;
  if (!isKnownFact(insulation) || !isExact(line) || line.value > RESISTANCE_ALONE) return undefined;
  const warm = underItsLoad(current, cable, reckon);
  if (warm === undefined || !isKnown(warm)) return undefined;
  const correction = reckon.quotient(
    TERM.dropCorrection,
    fromNothing(warm, reckon),
    fromNothing(operatingTemperature(insulation.word), reckon),
  );
  return reckon.product(TERM.voltageDrop, tabulated, correction);
}

/**
 * The temperature that a load gives a cable: θ = θa + (θp − θa)·(Ib ÷ Iz)², °C. Not known where its capacity as installed is
 * not, and in the ground; undefined where the load is beyond the capacity.
 */
export function underItsLoad(
  current: Evidence<"ampere">,
  cable: Omit<Installed, "hotTerminals">,
  reckon: Reckoner,
): Evidence<"celsius"> | undefined {
  const { insulation, methods, ambient } = cable;
  const inGround = methods.some((method) => isKnownFact(method) && method.word === "D");
  if (!isKnownFact(insulation) || inGround) return notKnown(TERM.loadTemperature, []);
  const capacity = installedCapacity({ ...cable, hotTerminals: AS_TABULATED }, reckon);
  const share = reckon.quotient(TERM.loadRatio, current, capacity);
  const squared = reckon.product(TERM.loadRatio, share, share);
  if (isKnown(squared) && !(squared.high <= 1)) return undefined;
  const greatest = operatingTemperature(insulation.word);
  const around = isKnown(ambient) ? ambient : AT_30;
  const rise = reckon.product(TERM.temperatureSpan, reckon.difference(TERM.temperatureSpan, greatest, around), squared);
  return reckon.sum(TERM.loadTemperature, around, rise);
}

/** A temperature as a metal's resistance goes with it, K above where the straight line meets zero. */
export function fromNothing(temperature: Evidence<"celsius">, reckon: Reckoner): Evidence<"celsius"> {
  return reckon.sum(TERM.temperatureSpan, FROM_NOTHING, temperature);
}

const AT_30 = assumed(TERM.ambientTemperature, 30, "ambient temperature not recorded; the table's 30 °C is taken");
const FROM_NOTHING = expected(
  TERM.temperatureSpan,
  230,
  "the straight line of a metal's resistance meets zero 230 K below 0 °C, and the cable is as warm as its load makes it",
);
const AS_TABULATED = fact(
  ASKED.hotTerminals,
  true,
  [],
  "the drop is tabulated for the insulation's own temperature",
  "assumed",
);
