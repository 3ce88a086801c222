import { assumed, isKnown, TERM } from "@good-grounds/core";
import { calculation } from "../check.ts";
import { asksQuantity } from "../need.ts";

/**
 * Correction of tabulated voltage drop for a cable that runs cooler than its operating temperature:
 * Ct = [230 + θp − (Ca²Cg² − (Ib/It)²)(θp − 30)] ÷ (230 + θp). Not for semi-enclosed fuses, and for ambient of 30 °C or more.
 */
export const voltageDropCorrection = calculation({
  id: "voltage-drop-correction",
  title: "Correction of voltage drop for conductor temperature",
  formula: "Ct = [230 + θp − (Ca²Cg² − (Ib/It)²)(θp − 30)] ÷ (230 + θp)",
  regulations: ["Appendix 4, 6.1"],
  needs: {
    designCurrent: asksQuantity(TERM.designCurrent, "20 A"),
    tabulated: asksQuantity(TERM.tabulatedCapacity, "27 A"),
    ambient: asksQuantity(TERM.ambientFactor, "1"),
    grouping: asksQuantity(TERM.groupingFactor, "1"),
    operating: asksQuantity(TERM.operatingTemperature, "70 °C"),
    drop: asksQuantity(TERM.voltageDrop, "9 V as tabulated; leave out for the factor alone"),
  },
  compute({ designCurrent, tabulated, ambient, grouping, operating, drop }, reckon) {
    const factors = reckon.product(TERM.ratio, ambient, grouping);
    const ratio = reckon.quotient(TERM.loadRatio, designCurrent, tabulated);
    const slack = reckon.difference(
      TERM.ratio,
      reckon.product(TERM.ratio, factors, factors),
      reckon.product(TERM.ratio, ratio, ratio),
    );
    const span = reckon.difference(TERM.temperatureSpan, operating, AT_30);
    const base = reckon.sum(TERM.temperatureSpan, ZERO_RESISTANCE, operating);
    const cooler = reckon.difference(TERM.temperatureSpan, base, reckon.product(TERM.temperatureSpan, span, slack));
    const correction = reckon.quotient(TERM.dropCorrection, cooler, base);
    const results = isKnown(drop) ? [correction, reckon.product(TERM.voltageDrop, drop, correction)] : [correction];
    return { results, remarks: [] };
  },
  examples: [
    {
      name: "20 A on 27 A",
      given: {
        designCurrent: "20 A",
        tabulated: "27 A",
        ambient: "1",
        grouping: "1",
        operating: "70 °C",
        drop: "9.0 V",
      },
      values: {
        "drop-correction": { value: 0.939826, within: 1e-5 },
        "voltage-drop": { value: 8.45844, within: 1e-4 },
      },
      source: "[300 − (1 − (20 ÷ 27)²) × 40] ÷ 300",
    },
    {
      name: "operating temperature not known",
      given: { designCurrent: "20 A", tabulated: "27 A", ambient: "1", grouping: "1" },
      missing: ["operating-temperature"],
      source: "input missing",
    },
  ],
});

const AT_30 = assumed(TERM.ambientTemperature, 30, "ambient temperature the tables hold for");
const ZERO_RESISTANCE = assumed(
  TERM.temperatureSpan,
  230,
  "the straight line of a metal's resistance meets zero 230 K below 0 °C",
);
