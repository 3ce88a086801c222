import { published, publishedBetween, TERM } from "@good-grounds/core";
import { source } from "../sources.ts";

/** Voltage factor for the least fault current, BS 7671 Appendix 3. */
export const cMin = published(
  TERM.cMin,
  0.95,
  source("BS 7671 Appendix 3", "2018 and later (since 2015)", "published"),
  "voltage factor Cmin",
);

/** Voltage factor for the greatest fault current. */
export const cMax = published(
  TERM.cMax,
  1.1,
  source("BS 7671 Appendix 3", "2018 and later", "memory"),
  "voltage factor Cmax",
);

const ESQCR = "Electricity Safety, Quality and Continuity Regulations 2002, regulation 27";
const LIMITS = source(ESQCR, "as amended", "published", { formula: "230 V + 10 % − 6 %" });

/** Nominal voltage of a public low voltage supply to earth, V. */
export const publicNominalVoltage = published(
  TERM.nominalVoltage,
  230,
  source(ESQCR, "as amended", "published"),
  "public low voltage supply, line to neutral",
);

/** Statutory limits of a 230 V public supply. */
export const supplyVoltageLimits = Object.freeze({
  least: published(TERM.leastVoltage, 216.2, LIMITS, "230 V − 6 %"),
  greatest: published(TERM.greatestVoltage, 253, LIMITS, "230 V + 10 %"),
});

/** Declared frequency of a public supply, Hz, with its statutory limits of ±1 %. */
export const publicFrequency = publishedBetween(
  TERM.frequency,
  50,
  49.5,
  50.5,
  source(ESQCR, "as amended", "memory", { formula: "50 Hz ± 1 %" }),
  "public supply",
);
