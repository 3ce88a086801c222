import { type NotKnown, type Published, published, TERM } from "@good-grounds/core";
import { notTabulated } from "../not-tabulated.ts";
import { remembered } from "../remembered.ts";
import { source } from "../sources.ts";
import { nextStandardSize } from "./standard-sizes.ts";

const T547 = source("BS 7671 543.1.4 and Table 54.7", "2008 to 2018+A4", "published", {
  formula: "S ≤ 16: S; 16 < S ≤ 35: 16; S > 35: S/2, next standard size; other materials × k1 ÷ k2",
});

/**
 * Least protective conductor of the same material by selection, mm², for a line conductor of `lineArea` mm². For another
 * material the size is multiplied by k of the line conductor's material over k of the protective conductor's.
 */
export const cpcBySelection: (lineArea: number) => Published<"square-millimetre"> | NotKnown<"square-millimetre"> =
  remembered((lineArea) => {
    const wanted = lineArea <= 16 ? lineArea : lineArea <= 35 ? 16 : nextStandardSize(lineArea / 2);
    if (!(lineArea > 0) || wanted === undefined) {
      return notTabulated(TERM.requiredArea, "Table 54.7", `a line conductor of ${lineArea} mm²`);
    }
    return published(TERM.requiredArea, wanted, T547, `line conductor of ${lineArea} mm²`);
  });
