import { isExact, TERM } from "@good-grounds/core";
import { cpcBySelection, mainBondingOther, mainBondingPme } from "@good-grounds/tables";
import { calculation } from "../check.ts";
import { asksQuantity } from "../need.ts";

/** Least sizes in mm² of copper. */
export const protectiveSizes = calculation({
  id: "protective-sizes",
  title: "Least sizes of protective and bonding conductors",
  formula: "Tables 54.7 and 54.8, 544.1.1",
  regulations: ["543.1.4", "544.1.1"],
  needs: {
    line: asksQuantity(TERM.lineArea, "25 mm², for Table 54.7"),
    neutral: asksQuantity(TERM.neutralArea, "25 mm², for main bonding under PME"),
    earthing: asksQuantity(TERM.earthingArea, "16 mm², for main bonding elsewhere"),
  },
  compute({ line, neutral, earthing }, reckon) {
    return {
      results: [
        reckon.lookedUp(TERM.cpcArea, isExact(line) ? cpcBySelection(line.value) : undefined, line),
        reckon.lookedUp(TERM.bondArea, isExact(neutral) ? mainBondingPme(neutral.value) : undefined, neutral),
        reckon.lookedUp(TERM.earthingBond, isExact(earthing) ? mainBondingOther(earthing.value) : undefined, earthing),
      ],
      remarks: [],
    };
  },
  examples: [
    {
      name: "25 mm² line, 50 mm² neutral, 16 mm² earthing conductor",
      given: { line: "25 mm²", neutral: "50 mm²", earthing: "16 mm²" },
      values: {
        "cpc-area": { value: 16, within: 0 },
        "bond-area": { value: 16, within: 0 },
        "earthing-bond": { value: 10, within: 0 },
      },
      source: "BS 7671 Tables 54.7 and 54.8, 544.1.1",
    },
    {
      name: "70 mm² line and neutral",
      given: { line: "70 mm²", neutral: "70 mm²" },
      values: { "cpc-area": { value: 35, within: 0 }, "bond-area": { value: 25, within: 0 } },
      source: "BS 7671 Tables 54.7 and 54.8",
    },
  ],
});
