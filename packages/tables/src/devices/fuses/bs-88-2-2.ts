import { source } from "../../sources.ts";
import type { FuseRow } from "./fuse-row.ts";

const DERIVED = source("BS 7671:2008 Table 41.2, raised to Cmin", "2008 to 2011; no table of today", "derived", {
  formula: "Ia = 230 ÷ printed Zs, limit 218.5 ÷ Ia",
});

/** BS 88-2.2, gG fuses, withdrawn; BS 88-6 the same. */
export const BS_88_2_2: readonly FuseRow[] = Object.freeze([
  { seconds: 0.4, rated: 6, operating: 27, printedZs: 8.09, printedZs230: 8.52, source: DERIVED },
  { seconds: 0.4, rated: 10, operating: 45, printedZs: 4.86, printedZs230: 5.11, source: DERIVED },
  { seconds: 0.4, rated: 16, operating: 85, printedZs: 2.57, printedZs230: 2.7, source: DERIVED },
  { seconds: 0.4, rated: 20, operating: 130, printedZs: 1.68, printedZs230: 1.77, source: DERIVED },
  { seconds: 0.4, rated: 25, operating: 160, printedZs: 1.37, printedZs230: 1.44, source: DERIVED },
  { seconds: 0.4, rated: 32, operating: 220, printedZs: 0.99, printedZs230: 1.04, source: DERIVED },
]);
