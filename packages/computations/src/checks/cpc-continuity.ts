import {
  assumed,
  CPC_ARRANGEMENTS,
  type Evidence,
  isKnown,
  isKnownFact,
  type Judgement,
  type Reckoner,
  type Remark,
  TERM,
} from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { check, concluded } from "../check.ts";
import { QUESTION } from "../matters.ts";
import { asksQuantities, asksQuantity, asksWord, type Given } from "../need.ts";

const needs = {
  cpcArrangement: asksWord(MATTER.cpcArrangement, CPC_ARRANGEMENTS, "none where there is no protective conductor"),
  r1r2: asksQuantity(TERM.measuredR1R2, "0.55 Ω"),
  r2Only: asksQuantity(TERM.measuredR2, "0.34 Ω, by a long lead, where R1+R2 was not read"),
  r2: asksQuantity(TERM.ringCpc, "0.73 Ω, of a ring"),
  crossLineCpc: asksQuantities(TERM.ringCrossLineCpc, "0.29 Ω, one for each point of a ring"),
  zs: asksQuantity(TERM.measuredZs, "0.78 Ω, which shows a way to earth and not which"),
};

/**
 * Whether the protective conductor of a circuit is there and continuous to where it was read (411.3.1.1, 643.2.1).
 * Readings in Ω with the supply off: R1+R2, or R2 by a long lead; of a ring r2 end to end and, where they were taken, the
 * readings at its points as well. A display beyond its range, or more than any protective conductor has, is none. A loop
 * to earth by itself says that something earths the far end and not what: continuity is not known by it.
 */
export const cpcContinuity = check({
  id: "cpc-continuity",
  scope: "circuit",
  title: "Protective conductor there and continuous",
  formula: "R1+R2, R2 or r2 reads through",
  regulations: ["411.3.1.1", "643.2.1"],
  needs,
  gather: ({ cable, readings }) => ({
    cpcArrangement: cable.cpcArrangement,
    r1r2: readings.r1r2,
    r2Only: readings.r2Only,
    r2: readings.r2,
    crossLineCpc: readings.crossLineCpc.map(({ reading }) => reading),
    zs: readings.zs,
  }),
  conclude(given, reckon) {
    const judgement = continuous(given, reckon);
    return concluded(judgement, [], remarksOf(given, judgement));
  },
  examples: [
    {
      name: "28 m of 2.5/1.5 mm²",
      given: { cpcArrangement: "in-cable", r1r2: "0.55 Ω" },
      verdict: "met",
      source: "BS EN 60228: (7.41 + 12.1) mΩ/m × 28 m = 0.55 Ω",
    },
    {
      name: "open, and earthed by pipes in the live test",
      given: { cpcArrangement: "in-cable", r1r2: ">99.9 Ω", zs: "0.61 Ω" },
      verdict: "not-met",
      source: "a display beyond its range shows no connection; BS 7671 643.2.1",
    },
    {
      name: "a resistance that no conductor has",
      given: { cpcArrangement: "in-cable", r2Only: "64 Ω" },
      verdict: "not-met",
      source: "arithmetic: 64 Ω would be 3.5 km of 1 mm² at 18.1 mΩ/m",
    },
    {
      name: "one point of a ring has none",
      given: { r2: "0.73 Ω", crossLineCpc: ["0.27 Ω", ">99.9 Ω", "0.28 Ω"] },
      verdict: "not-met",
      source: "BS 7671 643.2.1: continuous at every point",
    },
    {
      name: "none was laid",
      given: { cpcArrangement: "none" },
      verdict: "not-met",
      source: "BS 7671 411.3.1.1: a protective conductor runs to and is terminated at each point",
    },
    {
      name: "Zs alone",
      given: { cpcArrangement: "in-cable", zs: "0.78 Ω" },
      verdict: "not-known",
      missing: ["measured-r1r2"],
      source: "a loop closes by whatever earths the far end",
    },
  ],
});

function continuous(given: Given<typeof needs>, reckon: Reckoner): Judgement {
  const { cpcArrangement, r1r2, r2Only, r2, crossLineCpc } = given;
  if (isKnownFact(cpcArrangement) && cpcArrangement.word === "none")
    return reckon.settled(QUESTION.cpcContinuous, "not-met", "no protective conductor", cpcArrangement);
  const read = [r1r2, r2Only, r2, ...crossLineCpc].filter((one) => isKnown(one));
  const [only, ...others] = read.length === 0 ? [r1r2] : read;
  const through = (one: Evidence<"ohm">) => reckon.atMost(QUESTION.cpcReads, one, MOST);
  return others.length === 0
    ? reckon.all(QUESTION.cpcContinuous, through(only ?? r1r2))
    : reckon.all(QUESTION.cpcContinuous, through(only ?? r1r2), ...others.map(through));
}

/** More than this is no conductor of a circuit, Ω. */
const MOST = assumed(
  TERM.resistance,
  20,
  "line and protective conductor of 1 mm² have it after 550 m, longer than any circuit of that size",
);

function remarksOf({ zs, r1r2 }: Given<typeof needs>, { verdict }: Judgement): readonly Remark[] {
  const earthed = isKnown(zs) && Number.isFinite(zs.high);
  if (verdict === "not-met" && earthed) return [EARTHED_BY_ANOTHER];
  return verdict === "not-known" && earthed && !isKnown(r1r2) ? [BY_LOOP_ALONE] : [];
}

const EARTHED_BY_ANOTHER: Remark = Object.freeze({
  code: "cpc-open-earthed-by-another",
  words:
    "The loop test closes all the same: pipes, steelwork or another circuit's conductor earths the far end, until somebody takes it away.",
});

const BY_LOOP_ALONE: Remark = Object.freeze({
  code: "cpc-by-loop-alone",
  words: "Zs shows that something earths the far end, and not that it is the protective conductor.",
});
