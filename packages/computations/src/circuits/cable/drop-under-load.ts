import {
  assumed,
  type Evidence,
  expected,
  fact,
  isExact,
  isKnown,
  isKnownFact,
  type Reckoner,
  TERM,
} from "@good-grounds/core";
import { operatingTemperature } from "@good-grounds/tables";
import { ASKED } from "../../matters.ts";
import { type Installed, installedCapacity } from "./installed-capacity.ts";

/** Beyond this size the tabulated drop is no resistance alone, mm². */
const RESISTANCE_ALONE = 16;

/**
 * The voltage drop of a cable no warmer than its load makes it, V: the tabulated one is of a conductor at its greatest
 * temperature. θ = θa + (θp − θa)·(Ib ÷ Iz)², and resistance goes with 230 + θ (Appendix 4, 6.1). Undefined where the
 * capacity as installed is not known, for cables in the ground, and above 16 mm².
 */
export function dropUnderLoad(
  tabulated: Evidence<"volt">,
  current: Evidence<"ampere">,
  cable: Omit<Installed, "hotTerminals">,
  reckon: Reckoner,
): Evidence<"volt"> | undefined {
  const { insulation, line, methods, ambient } = cable;
  if (!isKnownFact(insulation) || !isExact(line) || line.value > RESISTANCE_ALONE) return undefined;
  if (methods.some((method) => isKnownFact(method) && method.word === "D")) return undefined;
  const capacity = installedCapacity({ ...cable, hotTerminals: AS_TABULATED }, reckon);
  const share = reckon.quotient(TERM.loadRatio, current, capacity);
  const squared = reckon.product(TERM.loadRatio, share, share);
  if (!isKnown(squared) || !(squared.high <= 1)) return undefined;
  const greatest = operatingTemperature(insulation.word);
  const around = isKnown(ambient) ? ambient : AT_30;
  const rise = reckon.product(TERM.temperatureSpan, reckon.difference(TERM.temperatureSpan, greatest, around), squared);
  const warm = reckon.sum(TERM.loadTemperature, around, rise);
  const correction = reckon.quotient(
    TERM.dropCorrection,
    reckon.sum(TERM.temperatureSpan, FROM_NOTHING, warm),
    reckon.sum(TERM.temperatureSpan, FROM_NOTHING, greatest),
  );
  return reckon.product(TERM.voltageDrop, tabulated, correction);
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
