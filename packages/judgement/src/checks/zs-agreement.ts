import { type Evidence, isKnown, type Remark, TERM } from "@good-grounds/core";
import { check, concluded } from "../check.ts";
import { withInstrumentDoubt } from "../circuits/instrument-doubt.ts";
import { QUESTION } from "../matters.ts";
import { asksQuantity } from "../need.ts";

/**
 * Whether Zs, the loop before the circuit and R1+R2 can all be true: Zs against Zdb + (R1+R2), or Ze + (R1+R2) where
 * the board's own reading is missing and the board is at the origin. They agree where their bands meet. All in Ω, at the
 * same conductor temperature. A higher Zs points to a joint or a misread R1+R2, a lower one to a parallel path, a
 * reading taken line to neutral, or an R1+R2 copied from elsewhere.
 */
export const zsAgreement = check({
  id: "zs-agreement",
  scope: "circuit",
  title: "Zs agrees with the loop before the circuit and R1+R2",
  formula: "Zs ≈ Zdb + (R1+R2); at the origin without Zdb: Ze + (R1+R2)",
  regulations: ["643.7.3"],
  needs: {
    zs: asksQuantity(TERM.measuredZs, "1.20 Ω"),
    zdb: asksQuantity(TERM.measuredZdb, "0.35 Ω"),
    ze: asksQuantity(TERM.measuredZe, "0.35 Ω, where the board is at the origin"),
    r1r2: asksQuantity(TERM.measuredR1R2, "0.75 Ω"),
  },
  gather: (circuit, installation) => ({
    zs: circuit.readings.zs,
    zdb: circuit.board.zdb,
    ze: circuit.board.feeder === undefined ? installation.supply.ze : circuit.board.zdb,
    r1r2: circuit.readings.r1r2,
  }),
  conclude({ zs, zdb, ze, r1r2 }, reckon) {
    const [before, term] = isKnown(zdb) ? [zdb, TERM.expectedZsFromBoard] : [ze, TERM.expectedZs];
    const doubt = (reading: Evidence<"ohm">) => withInstrumentDoubt(TERM.loopReading, reading, reckon);
    const expected = reckon.sum(term, doubt(before), doubt(r1r2));
    const judgement = reckon.agrees(QUESTION.readingsAgree, doubt(zs), expected);
    return concluded(judgement, [], judgement.verdict === "not-met" ? [explain(zs, expected)] : [], [
      reckon.agrees(QUESTION.readingsNotAbove, doubt(zs), expected, "not-above"),
    ]);
  },
  examples: [
    {
      name: "a sum that comes out to the digit",
      given: { zs: "1.22 Ω", zdb: "0.21 Ω", r1r2: "1.01 Ω" },
      verdict: "met",
      values: { "expected-zs-from-board": { value: 1.22, within: 1e-9 } },
      source: "arithmetic: 0.21 + 1.01 = 1.22; figures given without a band agree when equal",
    },
    {
      name: "far below the sum: a parallel path or a misread value",
      given: { zs: "0.58 Ω", ze: "0.35 Ω", r1r2: "0.62 Ω" },
      verdict: "not-met",
      values: { "expected-zs": { value: 0.97, within: 1e-9 } },
      source: "arithmetic: 0.35 + 0.62 = 0.97, measured 0.58",
    },
    {
      name: "bands that meet",
      given: { zs: "1.10 Ω to 1.30 Ω", zdb: "0.30 Ω to 0.40 Ω", r1r2: "0.70 Ω to 0.80 Ω" },
      verdict: "met",
      source: "arithmetic: 1.00 to 1.20 meets 1.10 to 1.30",
    },
    {
      name: "R1+R2 not recorded",
      given: { zs: "1.20 Ω", zdb: "0.21 Ω" },
      verdict: "not-known",
      missing: ["measured-r1r2"],
      source: "an input that is missing leaves the comparison open",
    },
  ],
});

function explain(zs: Evidence<"ohm">, expected: Evidence<"ohm">): Remark {
  return zs.value > expected.value ? HIGHER : LOWER;
}

const HIGHER: Remark = Object.freeze({
  code: "zs-higher-than-sum",
  words:
    "Zs is higher than the parts explain: look for a loose or corroded joint, an R1+R2 read at another point, or leads not nulled.",
});

const LOWER: Remark = Object.freeze({
  code: "zs-lower-than-sum",
  words:
    "Zs is lower than the parts explain: a parallel earth path, a reading taken line to neutral, or an R1+R2 that belongs to another circuit.",
});
