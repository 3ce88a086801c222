import {
  type Evidence,
  isKnown,
  isKnownFact,
  type Judgement,
  RCD_DELAYS,
  RCD_STANDARDS,
  type Reckoner,
  type Remark,
  TERM,
} from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { permittedRcdTime } from "@good-grounds/tables";
import { check, concluded } from "../check.ts";
import { opensWithin } from "../circuits/rcd-test.ts";
import { QUESTION } from "../matters.ts";
import { asksQuantity, asksWord, type Given } from "../need.ts";

const needs = {
  standard: asksWord(MATTER.rcdStandard, RCD_STANDARDS),
  delay: asksWord(MATTER.rcdDelay, RCD_DELAYS),
  atRated: asksQuantity(TERM.rcdTime, "28.4 ms"),
  atFive: asksQuantity(TERM.rcdTimeFive, "18 ms"),
  button: asksWord(MATTER.rcdButton, ["trips", "does-not-trip"]),
};

/**
 * Operation of an RCD: time at IΔn with an alternating test current against the limit of its product standard, for a
 * delayed device also against the least time; and the test button (643.8, 643.10). Times in s. A reading at 5 IΔn is no
 * longer asked for (since the 2022 amendment) and is shown beside when it was taken.
 */
export const rcdTime = check({
  id: "rcd-time",
  scope: "rcd",
  title: "RCD operates in time",
  formula: "tΔ ≤ tΔ,max; type S: tΔ ≥ tΔ,min",
  regulations: ["643.7.1", "643.8", "643.10"],
  needs,
  gather: (rcd) => ({
    standard: rcd.standard,
    delay: rcd.delay,
    atRated: rcd.timeAtRated,
    atFive: rcd.timeAtFive,
    button: rcd.button,
  }),
  conclude(given, reckon) {
    const { atRated, atFive, button } = given;
    const limits = limitsOf(given, 1, reckon);
    const notSlow = opensWithin(QUESTION.rcdNotSlow, atRated, limits.most, reckon);
    const parts: Judgement[] = [notSlow];
    if (limits.least !== null) parts.push(reckon.atLeast(QUESTION.rcdNotFast, atRated, limits.least));
    const byButton = reckon.byWord(QUESTION.rcdButton, button, (word) => (word === "trips" ? "met" : "not-met"));
    if (isKnownFact(button)) parts.push(byButton);
    const beside = isKnown(atFive)
      ? [opensWithin(QUESTION.rcdFive, atFive, limitsOf(given, 5, reckon).most, reckon)]
      : [];
    // Whether it opens in time and whether its button works are told apart: a dead button is not a slow device.
    return concluded(reckon.all(QUESTION.rcdOperates, ...parts), beside, isKnownFact(button) ? [] : [NO_BUTTON], [
      notSlow,
      byButton,
      ...beside,
    ]);
  },
  examples: [
    {
      name: "30 mA general type within 300 ms",
      given: { standard: "BS EN 61008", delay: "general", atRated: "28.4 ms", button: "trips" },
      verdict: "met",
      source: "BS EN 61008-1: 300 ms at IΔn",
    },
    {
      name: "30 mA general type too slow",
      given: { standard: "BS EN 61009", delay: "general", atRated: "312 ms", button: "trips" },
      verdict: "not-met",
      source: "BS EN 61009-1: 300 ms at IΔn",
    },
    {
      name: "selective type too fast",
      given: { standard: "BS EN 61008", delay: "S", atRated: "96 ms", button: "trips" },
      verdict: "not-met",
      source: "BS EN 61008-1: type S 130 ms to 500 ms at IΔn",
    },
    {
      name: "older type has its own limit",
      given: { standard: "BS 4293", delay: "general", atRated: "240 ms" },
      verdict: "not-met",
      source: "BS 4293: 200 ms at IΔn",
    },
    {
      name: "in time, and its button is dead",
      given: {
        standard: "BS EN 61008",
        delay: "general",
        atRated: "22 ms",
        atFive: "18 ms",
        button: "does-not-trip",
      },
      verdict: "not-met",
      source: "regulation 643.10: the button is part of the test",
    },
    {
      name: "still closed when the test ended at the limit",
      given: { standard: "BS EN 61008", delay: "general", atRated: ">300 ms", button: "trips" },
      verdict: "not-met",
      source: "BS EN 61008-1: 300 ms at IΔn; the display says that it took longer",
    },
    {
      name: "not tested",
      given: { standard: "BS EN 61008", delay: "general" },
      verdict: "not-known",
      missing: ["rcd-time"],
      source: "an input that is missing leaves the comparison open",
    },
  ],
});

function limitsOf(given: Given<typeof needs>, multiple: 1 | 5, reckon: Reckoner) {
  const { standard, delay } = given;
  const found =
    isKnownFact(standard) && isKnownFact(delay)
      ? permittedRcdTime({ standard: standard.word, delay: delay.word, multiple })
      : undefined;
  const most: Evidence<"second"> = reckon.lookedUp(TERM.permittedRcdTime, found?.max, standard, delay);
  const min = found?.min ?? null;
  const least = min === null ? null : reckon.lookedUp(TERM.leastRcdTime, min, standard, delay);
  return { most, least };
}

const NO_BUTTON: Remark = Object.freeze({
  code: "rcd-button-not-recorded",
  words: "Operation of the test button was not recorded.",
});
