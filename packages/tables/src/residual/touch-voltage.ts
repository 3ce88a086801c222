import { published, TERM } from "@good-grounds/core";
import { source } from "../sources.ts";

const TOUCH = source("BS 7671 411.5.3 and Table 41.5", "2008 to 2018+A4", "published");

/** Permitted touch voltage behind an RCD, 50 V. */
export const permittedTouchVoltage = published(TERM.permittedTouchVoltage, 50, TOUCH, "RA × IΔn ≤ 50 V");

/** Lower touch voltage that testers offer for special locations, 25 V. */
export const reducedTouchVoltage = published(
  TERM.permittedTouchVoltage,
  25,
  source("loop-tester manual, table of RA at 50 V and 25 V", "none", "published", {
    doubt: "where it applies has to be read in the Part 7 section of the location",
  }),
  "RA × IΔn ≤ 25 V",
);

/** Resistance above which an electrode may not be stable. */
export const electrodeStability = published(
  TERM.permittedRa,
  200,
  source("BS 7671 411.5.3, note", "2008 to 2018+A4", "memory"),
  "electrode regarded as stable up to about 200 Ω",
);
