import { source } from "../../sources.ts";
import type { FuseRow } from "./fuse-row.ts";

const DERIVED = source("BS 7671:2018 Table 41.2(c) and 41.4(c)", "2018 to 2018+A4", "derived", {
  formula: "Ia recovered from the older printed table (230 ÷ Zs), limit 218.5 ÷ Ia",
});
const MEMORY = source("BS 7671:2018 Table 41.2(c) and 41.4(c)", "2018 to 2018+A4", "memory");

/** BS 3036, semi-enclosed fuses. */
export const BS_3036: readonly FuseRow[] = Object.freeze([
  { seconds: 0.4, rated: 5, operating: 24, printedZs: 9.1, source: DERIVED },
  { seconds: 0.4, rated: 15, operating: 90, printedZs: 2.43, source: DERIVED },
  { seconds: 0.4, rated: 20, operating: 130, printedZs: 1.68, source: DERIVED },
  { seconds: 0.4, rated: 30, operating: 210, printedZs: 1.04, source: DERIVED },
  { seconds: 0.4, rated: 45, operating: 390, printedZs: 0.56, source: MEMORY },
  { seconds: 0.4, rated: 60, operating: 546, printedZs: 0.4, source: MEMORY },
  { seconds: 5, rated: 5, operating: 13, printedZs: 16.8, source: MEMORY },
  { seconds: 5, rated: 15, operating: 43, printedZs: 5.08, source: MEMORY },
  { seconds: 5, rated: 20, operating: 60, printedZs: 3.64, source: MEMORY },
  { seconds: 5, rated: 30, operating: 87, printedZs: 2.51, source: MEMORY },
  { seconds: 5, rated: 45, operating: 145, printedZs: 1.51, source: MEMORY },
  { seconds: 5, rated: 60, operating: 205, printedZs: 1.07, source: MEMORY },
  { seconds: 5, rated: 100, operating: 430, printedZs: 0.51, source: MEMORY },
]);
