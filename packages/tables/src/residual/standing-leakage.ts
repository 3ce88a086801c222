import { published, TERM } from "@good-grounds/core";
import { source } from "../sources.ts";

/** Part of IΔn that the standing protective conductor current behind an RCD should not exceed, so that it does not trip unwanted. */
export const standingLeakagePart = published(
  TERM.ratio,
  0.3,
  source("BS 7671 531.3.2", "2018 and later", "memory"),
  "standing current at most 30 % of IΔn",
);
