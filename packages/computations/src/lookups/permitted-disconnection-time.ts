import { EARTHING_SYSTEMS, isExact, isKnownFact, TERM } from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { permittedDisconnectionTime } from "@good-grounds/tables";
import { calculation } from "../check.ts";
import { ASKED } from "../matters.ts";
import { asksQuantity, asksWord, asksYesNo } from "../need.ts";

/** Permitted disconnection time in s. */
export const permittedTime = calculation({
  id: "permitted-disconnection-time",
  title: "Permitted disconnection time",
  formula: "Table 41.1, or 411.3.2.3 and 411.3.2.4",
  regulations: ["411.3.2"],
  needs: {
    system: asksWord(MATTER.earthingSystem, EARTHING_SYSTEMS),
    nominalVoltage: asksQuantity(TERM.nominalVoltage, "230 V"),
    underTable411: asksYesNo(ASKED.underTable411),
  },
  compute({ system, nominalVoltage, underTable411 }, reckon) {
    const figure =
      isKnownFact(system) && isExact(nominalVoltage) && isKnownFact(underTable411)
        ? permittedDisconnectionTime(system.word, nominalVoltage.value, underTable411.word ? "final-41.1" : "other")
        : undefined;
    return {
      results: [reckon.lookedUp(TERM.disconnectionTime, figure, system, nominalVoltage, underTable411)],
      remarks: [],
    };
  },
  examples: [
    {
      name: "40 A shower on TN",
      given: { system: "TN-S", nominalVoltage: "230 V", underTable411: "no" },
      values: { "permitted-disconnection-time": { value: 5, within: 0 } },
      source: "BS 7671 411.3.2.3",
    },
    {
      name: "socket circuit on TT",
      given: { system: "TT", nominalVoltage: "230 V", underTable411: "yes" },
      values: { "permitted-disconnection-time": { value: 0.2, within: 0 } },
      source: "BS 7671 Table 41.1",
    },
    {
      name: "above 230 V",
      given: { system: "TN-S", nominalVoltage: "400 V", underTable411: "yes" },
      values: { "permitted-disconnection-time": { value: 0.2, within: 0 } },
      source: "BS 7671 Table 41.1",
    },
  ],
});
