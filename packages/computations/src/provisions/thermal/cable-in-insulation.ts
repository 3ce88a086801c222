import { type Evidence, isKnown, type Reckoner, TERM } from "@good-grounds/core";
import { thermalInsulationFactor } from "@good-grounds/tables";
import { concluded } from "../../check.ts";
import { asksQuantity } from "../../need.ts";
import { assessor } from "../assessor.ts";
import { THERMAL } from "./matters.ts";

/**
 * Whether a cable wholly surrounded by thermal insulation over a length carries its load (523.9, Table 52.2): Ib ≤ It·Ci,
 * currents in A, the length in m, It the capacity of the cable beside the insulation. Between the lengths of the table
 * the factor of the next longer one is taken. Whether the device protects the cable is the matter of `cable-capacity`.
 */
export const cableInInsulation = assessor({
  id: "cable-in-insulation",
  provision: "thermal-protection",
  title: "Cable in thermal insulation carries its load",
  formula: "Ib ≤ It·Ci",
  regulations: ["523.1", "523.9"],
  needs: {
    designCurrent: asksQuantity(TERM.designCurrent, "26 A"),
    capacity: asksQuantity(TERM.tabulatedCapacity, "27 A beside the insulation"),
    surrounded: asksQuantity(TERM.length, "0.3 m wholly surrounded"),
  },
  conclude({ designCurrent, capacity, surrounded }, reckon) {
    const carries = reckon.product(TERM.cableCapacity, capacity, factorOf(surrounded, reckon));
    return concluded(reckon.atMost(THERMAL.carries, designCurrent, carries));
  },
  examples: [
    {
      name: "not surrounded",
      given: { designCurrent: "26 A", capacity: "27 A", surrounded: "0 m" },
      verdict: "met",
      source: "26 A is less than 27 A",
    },
    {
      name: "half over more than 500 mm",
      given: { designCurrent: "16 A", capacity: "27 A", surrounded: "2 m" },
      verdict: "not-met",
      values: { "cable-capacity": { value: 13.5, within: 1e-9 } },
      source: "BS 7671 523.9: 27 × 0.5 = 13.5 A",
    },
    {
      name: "length between two steps of the table",
      given: { designCurrent: "16 A", capacity: "27 A", surrounded: "80 mm to 350 mm" },
      verdict: "too-near",
      source: "27 × 0.78 = 21.1 A, 27 × 0.51 = 13.8 A",
    },
    {
      name: "load not known",
      given: { capacity: "27 A", surrounded: "2 m" },
      verdict: "not-known",
      missing: ["design-current"],
      source: "an input that is missing leaves the comparison open",
    },
  ],
});

/** Ci of a length; of a range of lengths, from that of the longest to that of the shortest. */
function factorOf(surrounded: Evidence<"metre">, reckon: Reckoner): Evidence<"ratio"> {
  if (!isKnown(surrounded)) return reckon.lookedUp(TERM.insulationFactor, undefined, surrounded);
  const at = (metres: number) =>
    reckon.lookedUp(TERM.insulationFactor, thermalInsulationFactor(Math.round(metres * 1e6) / 1e3), surrounded);
  if (surrounded.low === surrounded.high) return at(surrounded.value);
  return reckon.between(TERM.insulationFactor, at(surrounded.high), at(surrounded.low));
}
