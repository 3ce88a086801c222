import { isKnownFact, RCD_DELAYS, RCD_STANDARDS, TERM } from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { permittedRcdTime } from "@good-grounds/tables";
import { calculation } from "../check.ts";
import { asksWord } from "../need.ts";

/** Permitted operating times in s at IΔn and 5 IΔn. */
export const rcdTimes = calculation({
  id: "rcd-times",
  title: "Permitted operating times of an RCD",
  formula: "by product standard",
  regulations: ["643.8"],
  needs: {
    standard: asksWord(MATTER.rcdStandard, RCD_STANDARDS),
    delay: asksWord(MATTER.rcdDelay, RCD_DELAYS),
  },
  compute({ standard, delay }, reckon) {
    const at = (multiple: 1 | 5) =>
      isKnownFact(standard) && isKnownFact(delay)
        ? permittedRcdTime({ standard: standard.word, delay: delay.word, multiple })
        : undefined;
    const rated = at(1);
    const least = rated?.min ?? null;
    const results = [
      reckon.lookedUp(TERM.permittedRcdTime, rated?.max, standard, delay),
      reckon.lookedUp(TERM.permittedRcdTimeFive, at(5)?.max, standard, delay),
    ];
    return {
      results: least === null ? results : [...results, reckon.lookedUp(TERM.leastRcdTime, least, standard, delay)],
      remarks: [],
    };
  },
  examples: [
    {
      name: "general",
      given: { standard: "BS EN 61008", delay: "general" },
      values: {
        "permitted-rcd-time": { value: 0.3, within: 0 },
        "permitted-rcd-time-five": { value: 0.04, within: 0 },
      },
      source: "BS EN 61008-1",
    },
    {
      name: "selective",
      given: { standard: "BS EN 61008", delay: "S" },
      values: { "permitted-rcd-time": { value: 0.5, within: 0 }, "least-rcd-time": { value: 0.13, within: 0 } },
      source: "BS EN 61008-1",
    },
    {
      name: "older device",
      given: { standard: "BS 4293", delay: "general" },
      values: { "permitted-rcd-time": { value: 0.2, within: 0 } },
      source: "BS 4293",
    },
  ],
});
