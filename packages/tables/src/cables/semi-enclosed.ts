import { published, TERM } from "@good-grounds/core";
import { source } from "../sources.ts";

/** Rating factor for overload protection by a semi-enclosed fuse, 1.45 ÷ 2. */
export const semiEnclosedFactor = published(
  TERM.fuseFactor,
  0.725,
  source("BS 7671 433.1.202", "2008 to 2018+A4", "published", { formula: "1.45 ÷ 2" }),
  "BS 3036",
);
