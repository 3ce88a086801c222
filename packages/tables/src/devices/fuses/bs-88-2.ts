import { source } from "../../sources.ts";
import type { FuseRow } from "./fuse-row.ts";

const DERIVED = source("BS 7671:2018 Table 41.2(a) and 41.4(a)", "2018 to 2018+A4", "derived", {
  formula: "Ia recovered from the older printed table (230 ÷ Zs), limit 218.5 ÷ Ia",
});
const MEMORY = source("BS 7671:2018 Table 41.2(a) and 41.4(a)", "2018 to 2018+A4", "memory");
const IRREGULAR = source("BS 7671:2018 Table 41.2(a) and 41.4(a)", "2018 to 2018+A4", "memory", {
  doubt: "Ia ÷ In falls from 5.46 at 125 A to 5.06 at 160 A and rises to 6.07 at 200 A; prefer the maker's figure",
});

/** BS 88-2, gG fuses, systems E (bolted) and G (clip-in). */
export const BS_88_2: readonly FuseRow[] = Object.freeze([
  { seconds: 0.4, rated: 2, operating: null, printedZs: 33.1, source: MEMORY },
  { seconds: 0.4, rated: 4, operating: 14, printedZs: 15.6, source: MEMORY },
  { seconds: 0.4, rated: 6, operating: 28, printedZs: 7.8, source: DERIVED },
  { seconds: 0.4, rated: 10, operating: 47, printedZs: 4.65, source: DERIVED },
  { seconds: 0.4, rated: 16, operating: 90, printedZs: 2.43, source: DERIVED },
  { seconds: 0.4, rated: 20, operating: 130, printedZs: 1.68, source: DERIVED },
  { seconds: 0.4, rated: 25, operating: 170, printedZs: 1.29, source: DERIVED },
  { seconds: 0.4, rated: 32, operating: 220, printedZs: 0.99, source: DERIVED },
  { seconds: 0.4, rated: 40, operating: 290, printedZs: 0.75, source: MEMORY },
  { seconds: 0.4, rated: 50, operating: null, printedZs: 0.57, source: MEMORY },
  { seconds: 0.4, rated: 63, operating: 500, printedZs: 0.44, source: MEMORY },
  { seconds: 5, rated: 2, operating: null, printedZs: 44.0, source: MEMORY },
  { seconds: 5, rated: 4, operating: null, printedZs: 21.0, source: MEMORY },
  { seconds: 5, rated: 6, operating: null, printedZs: 12.0, source: MEMORY },
  { seconds: 5, rated: 10, operating: null, printedZs: 6.8, source: MEMORY },
  { seconds: 5, rated: 16, operating: null, printedZs: 4.0, source: MEMORY },
  { seconds: 5, rated: 20, operating: null, printedZs: 2.8, source: MEMORY },
  { seconds: 5, rated: 25, operating: null, printedZs: 2.2, source: MEMORY },
  { seconds: 5, rated: 32, operating: null, printedZs: 1.7, source: MEMORY },
  { seconds: 5, rated: 40, operating: null, printedZs: 1.3, source: MEMORY },
  { seconds: 5, rated: 50, operating: null, printedZs: 0.99, source: MEMORY },
  { seconds: 5, rated: 63, operating: null, printedZs: 0.78, source: MEMORY },
  { seconds: 5, rated: 80, operating: null, printedZs: 0.55, source: MEMORY },
  { seconds: 5, rated: 100, operating: null, printedZs: 0.42, source: MEMORY },
  { seconds: 5, rated: 125, operating: null, printedZs: 0.32, source: IRREGULAR },
  { seconds: 5, rated: 160, operating: null, printedZs: 0.27, source: IRREGULAR },
  { seconds: 5, rated: 200, operating: null, printedZs: 0.18, source: IRREGULAR },
]);
