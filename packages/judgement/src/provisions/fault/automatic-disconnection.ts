import { type Fact, fact, isKnownFact, type Judgement, type Reckoner } from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { concluded } from "../../check.ts";
import { maximumZs } from "../../checks/maximum-zs.ts";
import { asksWord, asksYesNo, type Given } from "../../need.ts";
import { assessor } from "../assessor.ts";
import { wants } from "../verdicts.ts";
import { FAULT } from "./matters.ts";

const needs = {
  ...maximumZs.needs,
  earthed: asksYesNo(FAULT.earthed),
  rcdTested: asksWord(
    FAULT.rcdTested,
    ["in-time", "too-slow", "does-not-operate"],
    "asked where disconnection rests on the RCD",
  ),
};

/**
 * Fault protection by automatic disconnection (411): exposed metal is earthed (411.3.1.1), and a fault is disconnected
 * in time, as the check `maximum-zs` concludes. Where it is the RCD alone that disconnects, the RCD has to have been
 * found to work: with one that is too slow or does not operate, only the overcurrent device counts. Units as in
 * `maximum-zs`.
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
    const inTime = byWorkingDevice(given, judgement, reckon);
    return concluded(reckon.all(FAULT.automatic, wants(reckon, FAULT.earthed, given.earthed), inTime), beside, remarks);
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
      given: { ...breaker(), zs: "1.75 Ω", rcd: "yes", residual: "30 mA", rcdTested: "in-time", earthed: "yes" },
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
        rcdTested: "does-not-operate",
        earthed: "yes",
      },
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

function byWorkingDevice(given: Given<typeof needs>, either: Judgement, reckon: Reckoner): Judgement {
  const { rcdTested } = given;
  if (isKnownFact(rcdTested) && rcdTested.word === "in-time") return either;
  // Without an RCD: what the overcurrent device does alone.
  const alone = maximumZs.conclude({ ...given, rcd: leftOut(rcdTested) }, reckon).judgement;
  if (alone.verdict === either.verdict) return either;
  if (isKnownFact(rcdTested)) return alone;
  return reckon.settled(FAULT.inTime, "not-known", "it rests on an RCD whose test is not known", either, rcdTested);
}

function leftOut(rcdTested: Fact<string>): Fact<boolean> {
  const { path } = rcdTested.detail;
  return fact(MATTER.rcdPresent, false, path, "left out", "assumed", "an RCD not found to work is not counted");
}
