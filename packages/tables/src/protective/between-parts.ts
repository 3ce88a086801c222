import { published, TERM } from "@good-grounds/core";
import { source } from "../sources.ts";

const R4152 = source("BS 7671 415.2.2", "2008 to 2018+A4", "memory", {
  formula: "R ≤ 50 V ÷ Ia; Ia: IΔn of an RCD, else the current that operates the overcurrent device within 5 s",
});

/** Voltage between parts that can be touched together during a fault, a.c.: 50 V. */
export const voltageBetweenParts = published(TERM.permittedTouchVoltage, 50, R4152, "50 V a.c.");
