import { type NotKnown, type Published, published, TERM } from "@good-grounds/core";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";

/** Standard conductor sizes, mm². */
export const STANDARD_SIZES = [
  0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150, 185, 240, 300, 400, 500, 630,
] as const;

/** The next standard size that is not smaller, mm². */
export function nextStandardSize(area: number): number | undefined {
  return STANDARD_SIZES.find((size) => size >= area - 1e-9);
}

const T547 = source("BS 7671 Table 54.7", "2008 to 2018+A4", "published", {
  formula: "S ≤ 16: S; 16 < S ≤ 35: 16; S > 35: S/2, next standard size",
});

/** Least protective conductor of the same material by selection, mm², for a line conductor of `lineArea` mm². */
export function cpcBySelection(lineArea: number): Published<"square-millimetre"> | NotKnown<"square-millimetre"> {
  if (!(lineArea > 0)) return notTabulated(TERM.requiredArea, "Table 54.7", `${lineArea} mm²`);
  const wanted = lineArea <= 16 ? lineArea : lineArea <= 35 ? 16 : nextStandardSize(lineArea / 2);
  if (wanted === undefined) return notTabulated(TERM.requiredArea, "Table 54.7", `${lineArea} mm²`);
  return published(TERM.requiredArea, wanted, T547, `line conductor of ${lineArea} mm²`);
}

const T548 = source("BS 7671 Table 54.8; handbook Table E4.6", "2008 to 2018+A4", "published", {
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

const R5441 = source("BS 7671 544.1.1; contractor-body pocket guide 13, page 22", "2008 to 2018+A4", "published", {
  formula: "half the required earthing conductor, at least 6 mm², need not exceed 25 mm²",
});

/** Least main bonding conductor where PME does not apply, mm² copper, from the size required of the earthing conductor. */
export function mainBondingOther(earthingArea: number): Published<"square-millimetre"> | NotKnown<"square-millimetre"> {
  if (!(earthingArea > 0)) return notTabulated(TERM.requiredArea, "544.1.1", `${earthingArea} mm²`);
  const half = Math.min(25, Math.max(6, earthingArea / 2));
  return published(TERM.requiredArea, nextStandardSize(half) ?? 25, R5441, `earthing conductor of ${earthingArea} mm²`);
}

const R5431 = source("BS 7671 543.1.1", "2008 to 2018+A4", "published");
const PROTECTED = published(TERM.requiredArea, 2.5, R5431, "separate, mechanically protected, copper");
const UNPROTECTED = published(TERM.requiredArea, 4, R5431, "separate, not mechanically protected, copper");

/** Least size of a protective conductor that is not part of a cable or enclosure, mm² copper. */
export function separateCpcFloor(mechanicallyProtected: boolean): Published<"square-millimetre"> {
  return mechanicallyProtected ? PROTECTED : UNPROTECTED;
}

const T541 = source("BS 7671 542.3.1 and Table 54.1", "2008 to 2018+A4", "published");
const BURIED = Object.freeze({
  bare: published(TERM.requiredArea, 25, T541, "buried, not protected against corrosion, copper"),
  sheathed: published(TERM.requiredArea, 16, T541, "buried, sheathed, not mechanically protected, copper"),
  protected: published(TERM.requiredArea, 2.5, T541, "buried, sheathed and mechanically protected, copper"),
});

/** Least size of a buried earthing conductor of copper, mm². */
export function buriedEarthingConductor(run: {
  readonly sheathed: boolean;
  readonly mechanicallyProtected: boolean;
}): Published<"square-millimetre"> {
  if (!run.sheathed) return BURIED.bare;
  return run.mechanicallyProtected ? BURIED.protected : BURIED.sheathed;
}
