import { type NotKnown, type Published, published, TERM } from "@good-grounds/core";
import { byKey } from "../by-key.ts";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";

const HANDBOOK = "handbook appendix on cable data, flat twin and cpc (BS 6004)";
const SEEN = source(HANDBOOK, "16th to 18th edition", "published");
const SEEN_25 = source(HANDBOOK, "16th to 18th edition", "published", {
  doubt: "older cable of 2.5 mm² may have a protective conductor of 1 mm² (from memory): look at it",
});
const RECALLED = source(HANDBOOK, "16th to 18th edition", "memory");

/** The usual protective conductor of flat twin and cpc, mm², by size of the line conductor, mm². */
export const FLAT_TWIN_CPC = Object.freeze([
  { line: 1, cpc: 1, source: RECALLED },
  { line: 1.5, cpc: 1, source: SEEN },
  { line: 2.5, cpc: 1.5, source: SEEN_25 },
  { line: 4, cpc: 1.5, source: SEEN },
  { line: 6, cpc: 2.5, source: SEEN },
  { line: 10, cpc: 4, source: SEEN },
  { line: 16, cpc: 6, source: SEEN },
]);

const NODES = byKey(
  FLAT_TWIN_CPC.map(
    ({ line, cpc, source: from }) =>
      [line, published(TERM.cpcArea, cpc, from, `flat twin and cpc, line conductor of ${line} mm²`)] as const,
  ),
);

/** The usual size of the protective conductor in flat twin and cpc, mm². What is seen in the cable decides. */
export function flatTwinCpcArea(lineArea: number): Published<"square-millimetre"> | NotKnown<"square-millimetre"> {
  return NODES.get(lineArea) ?? notTabulated(TERM.cpcArea, HANDBOOK, `a line conductor of ${lineArea} mm²`);
}
