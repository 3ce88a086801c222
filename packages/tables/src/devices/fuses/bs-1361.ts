import { source } from "../../sources.ts";
import type { FuseRow } from "./fuse-row.ts";

const DERIVED = source("BS 7671:2008 Table 41.2, raised to Cmin", "2008 to 2011; no table of today", "derived", {
  formula: "Ia = 230 ÷ printed Zs, limit 218.5 ÷ Ia",
});
const MEMORY = source("BS 7671:2008 Table 41.4, raised to Cmin", "2008 to 2011; no table of today", "memory");

/** BS 1361, cartridge fuses, withdrawn. */
export const BS_1361: readonly FuseRow[] = Object.freeze([
  { seconds: 0.4, rated: 5, operating: 22, printedZs: 9.93, printedZs230: 10.45, source: DERIVED },
  { seconds: 0.4, rated: 15, operating: 70, printedZs: 3.12, printedZs230: 3.28, source: DERIVED },
  { seconds: 0.4, rated: 20, operating: 135, printedZs: 1.62, printedZs230: 1.7, source: DERIVED },
  { seconds: 0.4, rated: 30, operating: 200, printedZs: 1.09, printedZs230: 1.15, source: DERIVED },
  { seconds: 5, rated: 5, operating: null, printedZs: 15.58, printedZs230: 16.4, source: MEMORY },
  { seconds: 5, rated: 15, operating: null, printedZs: 4.75, printedZs230: 5.0, source: MEMORY },
  { seconds: 5, rated: 20, operating: null, printedZs: 2.66, printedZs230: 2.8, source: MEMORY },
  { seconds: 5, rated: 30, operating: null, printedZs: 1.75, printedZs230: 1.84, source: MEMORY },
  { seconds: 5, rated: 45, operating: null, printedZs: 0.91, printedZs230: 0.96, source: MEMORY },
  { seconds: 5, rated: 60, operating: null, printedZs: 0.66, printedZs230: 0.7, source: MEMORY },
  { seconds: 5, rated: 80, operating: null, printedZs: 0.47, printedZs230: 0.5, source: MEMORY },
  { seconds: 5, rated: 100, operating: null, printedZs: 0.34, printedZs230: 0.36, source: MEMORY },
]);
