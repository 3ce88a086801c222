import { type NotKnown, type Published, published, TERM } from "@good-grounds/core";
import { notTabulated } from "../not-tabulated.ts";
import { remembered } from "../remembered.ts";
import { source } from "../sources.ts";
import { nextStandardSize } from "./standard-sizes.ts";

const T548 = source("BS 7671 Table 54.8, seen on a page reproducing it", "2008 to 2018+A4", "published", {
  doubt: "copper equivalent of the supply neutral; a distributor may ask for more",
});

const PME_ROWS = [
  { upTo: 35, bond: 10 },
  { upTo: 50, bond: 16 },
  { upTo: 95, bond: 25 },
  { upTo: 150, bond: 35 },
  { upTo: Number.POSITIVE_INFINITY, bond: 50 },
] as const;

const PME_NODES = PME_ROWS.map(({ upTo, bond }) => ({
  upTo,
  node: published(
    TERM.requiredArea,
    bond,
    T548,
    Number.isFinite(upTo) ? `supply neutral up to ${upTo} mm²` : "supply neutral above 150 mm²",
  ),
}));

/** Least main bonding conductor under PME, mm² copper, by the copper-equivalent size of the supply neutral. */
export function mainBondingPme(neutralArea: number): Published<"square-millimetre"> | NotKnown<"square-millimetre"> {
  const row = neutralArea > 0 ? PME_NODES.find(({ upTo }) => neutralArea <= upTo) : undefined;
  return row?.node ?? notTabulated(TERM.requiredArea, "Table 54.8", `${neutralArea} mm²`);
}

const R5441 = source("BS 7671 544.1.1, seen on a page explaining it", "2008 to 2018+A4", "published", {
  formula: "half the required earthing conductor, at least 6 mm², need not exceed 25 mm²; next standard size",
});

/** Least main bonding conductor where PME does not apply, mm² copper, from the size required of the earthing conductor. */
export const mainBondingOther: (
  earthingArea: number,
) => Published<"square-millimetre"> | NotKnown<"square-millimetre"> = remembered((earthingArea) => {
  const wanted = nextStandardSize(Math.min(25, Math.max(6, earthingArea / 2)));
  if (!(earthingArea > 0) || wanted === undefined) {
    return notTabulated(TERM.requiredArea, "544.1.1", `an earthing conductor of ${earthingArea} mm²`);
  }
  return published(TERM.requiredArea, wanted, R5441, `earthing conductor of ${earthingArea} mm²`);
});
