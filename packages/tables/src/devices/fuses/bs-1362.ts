import { source } from "../../sources.ts";
import type { FuseRow } from "./fuse-row.ts";

const DERIVED = source("BS 7671:2018 Table 41.2(d) and 41.4(d)", "2018 to 2018+A4", "derived", {
  formula: "Ia recovered from the older printed table (230 ÷ Zs), limit 218.5 ÷ Ia",
});
const MEMORY = source("BS 7671:2018 Table 41.2(d) and 41.4(d)", "2018 to 2018+A4", "memory");

/** BS 1362, plug and spur fuses. */
export const BS_1362: readonly FuseRow[] = Object.freeze([
  { seconds: 0.4, rated: 3, operating: 14, printedZs: 15.6, source: DERIVED },
  { seconds: 0.4, rated: 13, operating: 95, printedZs: 2.3, source: DERIVED },
  { seconds: 5, rated: 3, operating: null, printedZs: 22.0, source: MEMORY },
  { seconds: 5, rated: 13, operating: 60, printedZs: 3.64, source: MEMORY },
]);
