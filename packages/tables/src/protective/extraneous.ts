import { published, TERM } from "@good-grounds/core";
import { source } from "../sources.ts";

/** Current that an unbonded part may bring through a person: most can still let go. */
export const bearableCurrent = published(
  TERM.bearableCurrent,
  0.01,
  source("test of extraneous-conductive-parts", "none", "common-practice", {
    doubt: "the trade takes 10 mA; the effects of current are in IEC 60479",
  }),
  "10 mA",
);

/** Resistance of a person's body, as low as it is reckoned with in this test. */
export const reckonedBody = published(
  TERM.bodyResistance,
  1000,
  source("test of extraneous-conductive-parts", "none", "common-practice"),
  "1 kΩ",
);
