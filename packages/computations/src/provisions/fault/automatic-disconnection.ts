import { concluded } from "../../check.ts";
import { maximumZs } from "../../checks/maximum-zs.ts";
import { asksYesNo } from "../../need.ts";
import { assessor } from "../assessor.ts";
import { wants } from "../verdicts.ts";
import { FAULT } from "./matters.ts";

const needs = { ...maximumZs.needs, earthed: asksYesNo(FAULT.earthed) };

/**
 * Fault protection by automatic disconnection (411): exposed metal is earthed (411.3.1.1), and a fault is disconnected
 * in time, as the check `maximum-zs` concludes: where it is an RCD alone that disconnects, it has to have been found to
 * work. Units as in `maximum-zs`.
 */
export const automaticDisconnection = assessor({
  id: "automatic-disconnection",
  provision: "fault-protection",
  title: "Exposed metal is earthed and a fault is disconnected in time",
  formula: "earthed, and Zs within the limit of the device or of an RCD that works",
  regulations: ["411.3.1.1", "411.3.2", "411.4.4", "411.5.3"],
  needs,
  conclude(given, reckon) {
    const { judgement, beside, remarks } = maximumZs.conclude(given, reckon);
    const earthed = wants(reckon, FAULT.earthed, given.earthed);
    return concluded(reckon.all(FAULT.automatic, earthed, judgement), beside, remarks);
  },
  examples: [
    {
      name: "B32 with its loop within the limit",
      given: { ...breaker(), zs: "1.00 Ω", r1r2: "0.40 Ω", temperature: "20 °C", rcd: "no", earthed: "yes" },
      verdict: "met",
      source: "0.60 + 0.40 × 1.20 = 1.08 Ω is less than 230 × 0.95 ÷ 160 = 1.366 Ω",
    },
    {
      name: "the same loop, metal case not earthed",
      given: { ...breaker(), zs: "1.00 Ω", r1r2: "0.40 Ω", temperature: "20 °C", rcd: "no", earthed: "no" },
      verdict: "not-met",
      source: "BS 7671 411.3.1.1",
    },
    {
      name: "loop too high, RCD works",
      given: { ...breaker(), zs: "1.75 Ω", rcd: "yes", residual: "30 mA", rcdTest: "in-time", earthed: "yes" },
      verdict: "met",
      source: "1.75 × 0.030 = 0.05 V is less than 50 V; the RCD was tested",
    },
    {
      name: "loop too high, RCD does not operate",
      given: {
        ...breaker(),
        zs: "1.75 Ω",
        rcd: "yes",
        residual: "30 mA",
        rcdTest: "does-not-operate",
        earthed: "yes",
      },
      verdict: "not-met",
      source: "only the breaker counts: 1.75 Ω is more than 1.366 Ω",
    },
    {
      name: "loop too high, RCD too slow",
      given: { ...breaker(), zs: "1.75 Ω", rcd: "yes", residual: "30 mA", rcdTest: "too-slow", earthed: "yes" },
      verdict: "not-met",
      source: "only the breaker counts: 1.75 Ω is more than 1.366 Ω",
    },
    {
      name: "loop too high, RCD not tested",
      given: { ...breaker(), zs: "1.75 Ω", rcd: "yes", residual: "30 mA", earthed: "yes" },
      verdict: "not-known",
      missing: ["rcd-tested"],
      source: "disconnection rests on the RCD, and whether it works is not known",
    },
  ],
});

function breaker() {
  return {
    system: "TN-S",
    nominalVoltage: "230 V",
    underTable411: "yes",
    standard: "BS EN 60898",
    type: "B",
    rated: "32 A",
    insulation: "70C-thermoplastic",
    cpcArrangement: "in-cable",
  } as const;
}
