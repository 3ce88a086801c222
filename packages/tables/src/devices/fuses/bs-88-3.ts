import { source } from "../../sources.ts";
import type { FuseRow } from "./fuse-row.ts";

const DERIVED = source("BS 7671:2018 Table 41.2(b) and 41.4(b)", "2018 to 2018+A4", "derived", {
  formula:
    "0.8 of the limit is printed as 0.72 Ω on a trade page, so it lies between 0.90 and 0.9125 Ω; 218.5 ÷ 240 A = 0.91 Ω",
});
const MEMORY = source("BS 7671:2018 Table 41.2(b) and 41.4(b)", "2018 to 2018+A4", "memory");

/** BS 88-3, fuse system C. */
export const BS_88_3: readonly FuseRow[] = Object.freeze([
  { seconds: 0.4, rated: 5, operating: 22, printedZs: 9.93, source: MEMORY },
  { seconds: 0.4, rated: 16, operating: 95, printedZs: 2.3, source: MEMORY },
  { seconds: 0.4, rated: 20, operating: 113, printedZs: 1.93, source: MEMORY },
  { seconds: 0.4, rated: 32, operating: 240, printedZs: 0.91, source: DERIVED },
  { seconds: 0.4, rated: 45, operating: null, printedZs: 0.57, source: MEMORY },
  { seconds: 0.4, rated: 63, operating: null, printedZs: 0.36, source: MEMORY },
  { seconds: 5, rated: 5, operating: null, printedZs: 14.6, source: MEMORY },
  { seconds: 5, rated: 16, operating: null, printedZs: 3.9, source: MEMORY },
  { seconds: 5, rated: 20, operating: null, printedZs: 3.2, source: MEMORY },
  { seconds: 5, rated: 32, operating: null, printedZs: 1.6, source: MEMORY },
  { seconds: 5, rated: 45, operating: null, printedZs: 1.0, source: MEMORY },
  { seconds: 5, rated: 63, operating: null, printedZs: 0.68, source: MEMORY },
  { seconds: 5, rated: 80, operating: null, printedZs: 0.51, source: MEMORY },
  { seconds: 5, rated: 100, operating: null, printedZs: 0.38, source: MEMORY },
]);
