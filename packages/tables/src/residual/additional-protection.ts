import { published, TERM } from "@good-grounds/core";
import { source } from "../sources.ts";

/** Largest rated residual operating current of an RCD that counts as additional protection, 30 mA. */
export const additionalProtectionCurrent = published(
  TERM.residualOperatingCurrent,
  0.03,
  source("BS 7671 415.1.1", "2008 to 2018+A4", "published"),
  "additional protection by RCD",
);
