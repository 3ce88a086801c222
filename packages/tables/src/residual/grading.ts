import { published, TERM } from "@good-grounds/core";
import { source } from "../sources.ts";

/** Ratio of rated residual operating currents from which a time-delayed RCD ahead lets the one behind act first. */
export const rcdGradingRatio = published(
  TERM.gradingRatio,
  3,
  source("BS 7671 536.4.1.4", "2018 to 2018+A4", "memory", { doubt: "the number of the regulation is remembered" }),
  "IΔn,1 : IΔn,2 = 3 : 1",
);
