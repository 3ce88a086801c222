import {
  type CpcArrangement,
  type Insulation,
  type NotKnown,
  type Published,
  published,
  TERM,
} from "@good-grounds/core";
import { notTabulated } from "../not-tabulated.ts";
import { remembered } from "../remembered.ts";
import { source } from "../sources.ts";

/** Temperature coefficient of copper and aluminium on a base of 20 °C, per K, simplified as BS 7671 uses it. */
const COEFFICIENT = 0.004;

const LAW = source("BS 7671 Appendix 3 and IEC 60228 correction factors", "2008 and later", "derived", {
  formula: "1 + 0.004 (θ − 20)",
});

/** Temperatures between which the simplified law is used, °C. */
const COLDEST = -20;
const HOTTEST = 110;

/** Resistance at a temperature in °C over that at 20 °C. */
export const temperatureFactor: (celsius: number) => Published<"ratio"> | NotKnown<"ratio"> = remembered((celsius) =>
  celsius >= COLDEST && celsius <= HOTTEST
    ? published(TERM.testFactor, 1 + COEFFICIENT * (celsius - 20), LAW, `${celsius} °C`)
    : notTabulated(TERM.testFactor, "the temperature law", `${celsius} °C`),
);

const OPERATING = source("BS 7671 Tables 43.1 and 52.1", "2008 to 2018+A4", "memory");

/** Greatest operating temperature of the conductor, °C, by insulation. */
const LIMITS: Readonly<Record<Insulation, number>> = {
  "70C-thermoplastic": 70,
  "90C-thermoplastic": 90,
  "90C-thermosetting": 90,
  "60C-rubber": 60,
  "mineral-covered": 70,
  "mineral-bare": 105,
};

const HOT = new Map(
  Object.entries(LIMITS).map(([insulation, celsius]) => [
    insulation,
    {
      temperature: published(TERM.operatingTemperature, celsius, OPERATING, insulation),
      factor: published(TERM.hotFactor, 1 + COEFFICIENT * (celsius - 20), LAW, `${insulation}, ${celsius} °C`),
    },
  ]),
);

const SEPARATE = published(TERM.hotFactor, 1 + COEFFICIENT * (30 - 20), LAW, "separate protective conductor at 30 °C");

/** Greatest operating temperature of a conductor, °C. */
export function operatingTemperature(insulation: Insulation): Published<"celsius"> | NotKnown<"celsius"> {
  return HOT.get(insulation)?.temperature ?? notTabulated(TERM.operatingTemperature, "Table 52.1", insulation);
}

/** Rise of the line conductor's resistance from 20 °C to operating temperature. */
export function lineHotFactor(insulation: Insulation): Published<"ratio"> | NotKnown<"ratio"> {
  return HOT.get(insulation)?.factor ?? notTabulated(TERM.hotFactor, "the temperature law", insulation);
}

/** Rise of the protective conductor's resistance: that of the line conductor in a cable, less when it runs apart. */
export function cpcHotFactor(
  insulation: Insulation,
  arrangement: CpcArrangement,
): Published<"ratio"> | NotKnown<"ratio"> {
  if (arrangement === "in-cable") return lineHotFactor(insulation);
  if (arrangement === "separate") return SEPARATE;
  return notTabulated(TERM.hotFactor, "the temperature law", `a protective conductor formed by ${arrangement}`);
}
