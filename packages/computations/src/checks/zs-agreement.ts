import { isKnown, type Matter, type Remark, TERM } from "@good-grounds/core";
import { agreement, BETWEEN_TESTS, doubtedOf, exactly, productOf, sumOf } from "@good-grounds/measurement";
import { check, concluded } from "../check.ts";
import { isAtOrigin } from "../circuits/fed-from.ts";
import { POSSIBLE_MISFIT } from "../circuits/possible-misfit.ts";
import { QUESTION } from "../matters.ts";
import { asksQuantity } from "../need.ts";

/**
 * Whether Zs, the loop before the circuit and R1+R2 can all be true: Zs against Zdb + (R1+R2), or Ze + (R1+R2) where
 * the board's own reading is missing and the board is at the origin. All in Ω. They are held against the errors between
 * them, those of one instrument shared: a clear misfit is not met, a possible one too near to call. A higher Zs points to
 * a joint or a misread R1+R2, a lower one to a parallel path, a reading taken line to neutral, or an R1+R2 copied from
 * elsewhere.
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
    ze: isAtOrigin(circuit.board) ? installation.supply.ze : circuit.board.zdb,
    r1r2: circuit.readings.r1r2,
  }),
  conclude({ zs, zdb, ze, r1r2 }, reckon) {
    const [before, term] = isKnown(zdb) ? [zdb, TERM.expectedZsFromBoard] : [ze, TERM.expectedZs];
    const own = reckon.product(TERM.circuitPart, r1r2, BETWEEN_TESTS);
    const expected = reckon.sum(term, before, own);
    const [x, y] = [doubtedOf(before), doubtedOf(r1r2)];
    const sum = x === undefined || y === undefined ? undefined : sumOf(x, productOf(y, WARMTH));
    const held = (question: Matter, how: "agrees-with" | "not-above") =>
      agreement(reckon, question, { shown: zs, doubted: doubtedOf(zs) }, { shown: expected, doubted: sum }, how);
    const judgement = held(QUESTION.readingsAgree, "agrees-with");
    const settles = [held(QUESTION.readingsNotAbove, "not-above")];
    const { verdict } = judgement;
    if (verdict !== "not-met" && verdict !== "too-near") return concluded(judgement, [], [], settles);
    const why = zs.value > expected.value ? HIGHER : LOWER;
    return concluded(judgement, [], verdict === "too-near" ? [POSSIBLE_MISFIT, why] : [why], settles);
  },
  examples: [
    {
      name: "a sum that comes out to the digit",
      given: { zs: "1.22 Ω", zdb: "0.21 Ω", r1r2: "1.01 Ω" },
      verdict: "met",
      values: { "expected-zs-from-board": { value: 1.22, within: 1e-9 } },
      source: "arithmetic: 0.21 + 1.01 = 1.22; readings that are equal agree",
    },
    {
      name: "far below the sum: a parallel path or a misread value",
      given: { zs: "0.58 ± 0.03 Ω", ze: "0.35 Ω ± 0.03 Ω", r1r2: "0.62 Ω ± 5 %" },
      verdict: "not-met",
      values: { "expected-zs": { value: 0.97, within: 1e-9 } },
      source: "arithmetic: 0.35 + 0.62 = 0.97, measured 0.58; 0.61 at most, 0.91 at least",
    },
    {
      name: "the same without a word on the instruments",
      given: { zs: "0.58 Ω", ze: "0.35 Ω", r1r2: "0.62 Ω" },
      verdict: "not-met",
      source:
        "arithmetic: 0.39 Ω apart; usual instruments, ±(5 % + 5 digits) and ±(2 % + 3 digits), leave a standard deviation of 0.062 Ω: 6.3 of them",
    },
    {
      name: "a joint of 0.2 Ω, instruments not stated: too little to be sure of",
      given: { zs: "1.17 Ω", ze: "0.35 Ω", r1r2: "0.62 Ω" },
      verdict: "met",
      source: "arithmetic: 0.20 Ω apart with a standard deviation of 0.074 Ω: 2.7 of them",
    },
    {
      name: "a digit of rounding is no fault",
      given: { zs: "1.23 Ω", zdb: "0.21 Ω", r1r2: "1.01 Ω" },
      verdict: "met",
      source: "arithmetic: 0.21 + 1.01 = 1.22, a digit from 1.23",
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

const WARMTH = doubtedOf(BETWEEN_TESTS) ?? exactly(1);

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
