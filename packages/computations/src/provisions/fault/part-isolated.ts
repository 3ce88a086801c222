import { type Remark, TERM } from "@good-grounds/core";
import { bearableCurrent, reckonedBody } from "@good-grounds/tables";
import { concluded } from "../../check.ts";
import { asksQuantity } from "../../need.ts";
import { assessor } from "../assessor.ts";
import { FAULT } from "./matters.ts";

/**
 * Whether a metal part brings in no earth potential, so that it is no extraneous-conductive-part (411.3.1.2): its
 * resistance to the main earthing terminal, any bond off, lets less than 10 mA through a person at U0. R ≥ U0 ÷ 10 mA
 * less the person's own 1 kΩ, in Ω: 22 kΩ at 230 V, or 23 kΩ where the person is left out; between the two it is too near
 * to call.
 */
export const partIsolated = assessor({
  id: "part-isolated",
  provision: "fault-protection",
  title: "Metal part brings in no earth",
  formula: "R ≥ U0/10 mA − 1 kΩ",
  regulations: ["411.3.1.2"],
  needs: {
    resistance: asksQuantity(TERM.partToTerminal, "45 kΩ, any bond off"),
    nominalVoltage: asksQuantity(TERM.nominalVoltage, "230 V"),
  },
  conclude({ resistance, nominalVoltage }, reckon) {
    const whole = reckon.quotient(TERM.wholeIsolation, nominalVoltage, bearableCurrent);
    const withBody = reckon.difference(TERM.isolatedPart, whole, reckonedBody);
    const limit = reckon.oneOf(TERM.isolatedPart, [withBody, whole]);
    const judgement = reckon.atLeast(FAULT.isolatedPart, resistance, limit);
    return concluded(judgement, [], judgement.verdict === "met" ? [MAY_CHANGE] : []);
  },
  examples: [
    {
      name: "a rail on plastic pipes",
      given: { resistance: ">1 MΩ", nominalVoltage: "230 V" },
      verdict: "met",
      values: { "isolated-part": { value: 22_000, within: 1e-6 } },
      source: "230 V ÷ 10 mA − 1 kΩ = 22 kΩ",
    },
    {
      name: "a pipe that comes out of the ground",
      given: { resistance: "1.8 kΩ", nominalVoltage: "230 V" },
      verdict: "not-met",
      source: "1.8 kΩ < 22 kΩ",
    },
    {
      name: "between the two ways of reckoning",
      given: { resistance: "22.5 kΩ", nominalVoltage: "230 V" },
      verdict: "too-near",
      source: "22 kΩ with the body, 23 kΩ without",
    },
    {
      name: "judged by sight",
      given: { nominalVoltage: "230 V" },
      verdict: "not-known",
      missing: ["part-to-terminal"],
      source: "a part is extraneous or not by what it measures",
    },
  ],
});

const MAY_CHANGE: Remark = Object.freeze({
  code: "may-change",
  words: "It holds for the day of the test: damp, a new metal pipe or contact with another part may change it.",
});
