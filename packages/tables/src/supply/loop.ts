import { type EarthingSystem, type NotKnown, type Published, published, TERM } from "@good-grounds/core";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";

const P23 = source("ENA Engineering Recommendation P23/1", "1991 (P23/2:2018 gives percentiles instead)", "published", {
  doubt: "typical declared maximum for single-phase supplies up to 100 A; no limit of the standard",
});

const ROWS = Object.freeze({
  "TN-C-S": published(TERM.measuredZe, 0.35, P23, "TN-C-S (PME)"),
  "TN-S": published(TERM.measuredZe, 0.8, P23, "TN-S (cable sheath)"),
  TT: published(TERM.measuredZe, 21, P23, "TT, source side without the consumer's electrode"),
});

/** What distributors usually declare as the greatest external loop impedance of a system. */
export function typicalZe(system: EarthingSystem): Published<"ohm"> | NotKnown<"ohm"> {
  return system === "IT" ? notTabulated(TERM.measuredZe, "P23/1", "an IT system") : ROWS[system];
}

/** Usual declared greatest prospective short-circuit current of a low voltage service up to 100 A. */
export const declaredFaultCurrent = published(
  TERM.faultCurrent,
  16000,
  source("distributors' declarations under P25", "none", "memory"),
  "service up to 100 A",
);

/** The rule of thumb for loop readings taken cold. */
export const thumbFactor = published(
  TERM.thumb,
  0.8,
  source("BS 7671 Appendix 3 and a trade page explaining it", "2008 and later", "published", {
    doubt: "a rule of thumb; right only for conductors at 10 °C or warmer",
  }),
  "0.8 of the tabulated limit",
);
