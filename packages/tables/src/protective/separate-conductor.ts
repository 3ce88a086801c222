import { type Published, published, TERM } from "@good-grounds/core";
import { source } from "../sources.ts";

const R5431 = source("BS 7671 543.1.1", "2008 to 2018+A4", "published");
const PROTECTED = published(TERM.requiredArea, 2.5, R5431, "separate, mechanically protected, copper");
const UNPROTECTED = published(TERM.requiredArea, 4, R5431, "separate, not mechanically protected, copper");

/** Least size of a protective conductor that is not part of a cable or enclosure, mm² copper. */
export function separateCpcFloor(mechanicallyProtected: boolean): Published<"square-millimetre"> {
  return mechanicallyProtected ? PROTECTED : UNPROTECTED;
}
