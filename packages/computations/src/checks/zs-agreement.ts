import {
  CIRCUIT_LOADS,
  CONDUCTOR_MATERIALS,
  type Compared,
  isKnown,
  isKnownFact,
  type Judgement,
  type Matter,
  type Reckoner,
  type Remark,
  TERM,
} from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { agreement, BETWEEN_TESTS, doubtedOf, exactly, perMetre, productOf, sumOf } from "@good-grounds/measurement";
import { check, concluded } from "../check.ts";
import { isAtOrigin, loopAtOrigin } from "../circuits/fed-from.ts";
import { type LoopParts, nearTheBoard, withEarthsBeside, withLineAlone } from "../circuits/lower-loop.ts";
import { mainBonding } from "../circuits/main-bonding.ts";
import { byOtherPath, isOnPipes, OTHER_PATH } from "../circuits/other-path.ts";
import { POSSIBLE_MISFIT } from "../circuits/possible-misfit.ts";
import { ASKED, QUESTION } from "../matters.ts";
import { asksQuantity, asksWord, asksYesNo, type Given } from "../need.ts";

const needs = {
  zs: asksQuantity(TERM.measuredZs, "1.20 Ω"),
  zdb: asksQuantity(TERM.measuredZdb, "0.35 Ω"),
  ze: asksQuantity(TERM.measuredZe, "0.35 Ω, where the board is at the origin"),
  originLoop: asksQuantity(
    TERM.measuredZdb,
    "0.20 Ω, at the board beside the main earthing terminal, if that is another",
  ),
  r1r2: asksQuantity(TERM.measuredR1R2, "0.75 Ω"),
  bonded: asksYesNo(ASKED.bonded),
  load: asksWord(MATTER.circuitLoad, CIRCUIT_LOADS, "pipes of a heater may lie beside the protective conductor"),
  line: asksQuantity(TERM.lineArea, "2.5 mm²"),
  cpc: asksQuantity(TERM.cpcArea, "1.5 mm²"),
  material: asksWord(MATTER.material, CONDUCTOR_MATERIALS),
  r1: asksQuantity(TERM.ringLine, "0.44 Ω, of a ring"),
  r2: asksQuantity(TERM.ringCpc, "0.73 Ω, of a ring"),
};

type GivenHere = Given<typeof needs>;

/**
 * Whether Zs, the loop before the circuit and R1+R2 can all be true: Zs against Zdb + (R1+R2), or Ze + (R1+R2) where
 * the board's own reading is missing and the board is at the origin. All in Ω. They are held against the errors between
 * them, those of one instrument shared: a clear misfit is not met, a possible one too near to call. A higher Zs points to
 * a joint or a misread R1+R2, a lower one to a parallel path, a reading taken line to neutral, or an R1+R2 copied from
 * elsewhere. Lower is no misfit where bonding lies beside Ze, or where R1+R2 of a ring was read at a spur. In a ring without
 * one it is expected to be the point, and at a load on pipes, above what line conductors alone leave, the pipes: they lead
 * to the main earthing terminal, beside the protective conductors of feeders as well.
 */
export const zsAgreement = check({
  id: "zs-agreement",
  scope: "circuit",
  title: "Zs agrees with the loop before the circuit and R1+R2",
  formula: "Zs ≈ Zdb + (R1+R2); at the origin without Zdb: Ze + (R1+R2)",
  regulations: ["643.7.3"],
  needs,
  gather: (circuit, installation) => ({
    zs: circuit.readings.zs,
    zdb: circuit.board.zdb,
    ze: isAtOrigin(circuit.board) ? installation.supply.ze : circuit.board.zdb,
    originLoop: loopAtOrigin(circuit, installation),
    r1r2: circuit.readings.r1r2,
    bonded: mainBonding(installation.supply),
    load: circuit.load,
    line: circuit.cable.line,
    cpc: circuit.cable.cpc,
    material: circuit.cable.material,
    r1: circuit.readings.r1,
    r2: circuit.readings.r2,
  }),
  conclude(given, reckon) {
    const { zs, zdb, ze, r1r2 } = given;
    const [before, term] = isKnown(zdb) ? [zdb, TERM.expectedZsFromBoard] : [ze, TERM.expectedZs];
    const own = reckon.product(TERM.circuitPart, r1r2, BETWEEN_TESTS);
    const expected = reckon.sum(term, before, own);
    const [x, r] = [doubtedOf(before), doubtedOf(r1r2)];
    const y = r && productOf(r, WARMTH);
    const sum = x && y && sumOf(x, y);
    const held = (question: Matter, how: "agrees-with" | "not-above") =>
      agreement(reckon, question, { shown: zs, doubted: doubtedOf(zs) }, { shown: expected, doubted: sum }, how);
    const fits = held(QUESTION.readingsAgree, "agrees-with");
    const settles = [held(QUESTION.readingsNotAbove, "not-above")];
    const { verdict } = fits;
    if (verdict !== "not-met" && verdict !== "too-near") return concluded(fits, [], [], settles);
    const possible = verdict === "too-near" ? [POSSIBLE_MISFIT] : [];
    if (zs.value > expected.value) return concluded(fits, [], [...possible, HIGHER], settles);
    const parts: LoopParts = {
      zs: { shown: zs, doubted: doubtedOf(zs) },
      before: { shown: before, doubted: x },
      isExternal: !isKnown(zdb),
      own: { shown: own, doubted: y },
    };
    const [judgement, why] = lower(fits, given, parts, reckon);
    const left = judgement.verdict === "too-near" && why === LOWER ? [POSSIBLE_MISFIT] : [];
    return concluded(judgement, [], [...left, why], settles);
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
      given: { zs: "0.58 ± 0.03 Ω", ze: "0.35 Ω ± 0.03 Ω", r1r2: "0.62 Ω ± 5 %", bonded: "no" },
      verdict: "not-met",
      values: { "expected-zs": { value: 0.97, within: 1e-9 } },
      source: "arithmetic: 0.35 + 0.62 = 0.97, measured 0.58; 0.61 at most, 0.91 at least",
    },
    {
      name: "the same without a word on the instruments, or on what is bonded",
      given: { zs: "0.58 Ω", ze: "0.35 Ω", r1r2: "0.62 Ω" },
      verdict: "not-met",
      source:
        "arithmetic: 0.39 Ω apart; usual instruments, ±(5 % + 5 digits) and ±(2 % + 3 digits), leave a standard deviation of 0.062 Ω: 6.3 of them",
    },
    {
      name: "an electrode with bonded pipes beside it",
      given: { zs: "26.9 Ω", ze: "82.1 Ω", r1r2: "0.40 Ω", bonded: "yes" },
      verdict: "met",
      source: "Ze is read without the pipes: the sum is an upper bound, and 26.9 Ω is no less than 0.40 Ω",
    },
    {
      name: "the same where nobody said whether anything is bonded",
      given: { zs: "26.9 Ω", ze: "82.1 Ω", r1r2: "0.40 Ω" },
      verdict: "too-near",
      source: "pipes may be in parallel",
    },
    {
      name: "lower than R1+R2 alone, whatever is bonded",
      given: { zs: "0.42 Ω", ze: "0.25 Ω", r1r2: "0.95 Ω", bonded: "yes" },
      verdict: "not-met",
      source: "arithmetic: bonding lies beside what is before the circuit, not beside its own conductors; 0.53 Ω short",
    },
    {
      name: "R1+R2 of a ring at its spur beside the board",
      given: {
        zs: "0.59 Ω ±(2 % + 2 digits)",
        zdb: "0.20 Ω ±(2 % + 2 digits)",
        r1r2: "0.60 Ω ±(2 % + 2 digits)",
        r1: "0.65 Ω ±(2 % + 2 digits)",
        r2: "1.03 Ω ±(2 % + 2 digits)",
      },
      verdict: "met",
      source: "0.60 Ω is above (0.65 + 1.03) ÷ 4 = 0.42 Ω; 0.65 × 1.03 ÷ 1.68 = 0.40 Ω of it need not be in the loop",
    },
    {
      name: "a ring of equal conductors: cross-connected it reads the same everywhere, the loop does not",
      given: {
        zs: "0.24 Ω ±(2 % + 2 digits)",
        zdb: "0.17 Ω ±(2 % + 2 digits)",
        r1r2: "0.29 Ω ±(2 % + 2 digits)",
        r1: "0.54 Ω ±(2 % + 2 digits)",
        r2: "0.54 Ω ±(2 % + 2 digits)",
      },
      verdict: "met",
      grade: "assumed",
      source: "arithmetic: 0.22 Ω below 0.46 Ω; beside the board 0.54 ÷ 2 = 0.27 Ω of R1+R2 is not in the loop",
    },
    {
      name: "a boiler whose pipes lie beside its protective conductor",
      given: {
        zs: "0.61 Ω ±(2 % + 2 digits)",
        zdb: "0.27 Ω ±(2 % + 2 digits)",
        r1r2: "0.66 Ω ±(2 % + 2 digits)",
        load: "heating",
        line: "1.5 mm²",
        cpc: "1 mm²",
        material: "copper",
      },
      verdict: "met",
      grade: "assumed",
      source: "arithmetic: 0.27 + 0.66 = 0.93 Ω; 0.27 Ω + 0.66 Ω × 12.1 ÷ 30.2 = 0.53 Ω by the line conductor alone",
    },
    {
      name: "an immersion heater fed from a board of its own: its pipes lie beside the feeder as well",
      given: {
        zs: "0.42 Ω ±(2 % + 2 digits)",
        zdb: "0.58 Ω ±(2 % + 2 digits)",
        originLoop: "0.20 Ω ±(2 % + 2 digits)",
        r1r2: "0.12 Ω ±(2 % + 2 digits)",
        load: "water-heater",
        line: "2.5 mm²",
        cpc: "1.5 mm²",
        material: "copper",
      },
      verdict: "met",
      grade: "assumed",
      source: "arithmetic: below 0.58 + 0.12 = 0.70 Ω, above 0.20 Ω + 0.12 Ω × 7.41 ÷ 19.51 = 0.25 Ω",
    },
    {
      name: "lower than what lies before the feeder",
      given: {
        zs: "0.12 Ω ±(2 % + 2 digits)",
        zdb: "0.58 Ω ±(2 % + 2 digits)",
        originLoop: "0.30 Ω ±(2 % + 2 digits)",
        r1r2: "0.12 Ω ±(2 % + 2 digits)",
        load: "water-heater",
        line: "2.5 mm²",
        cpc: "1.5 mm²",
        material: "copper",
      },
      verdict: "not-met",
      source: "arithmetic: 0.30 Ω + 0.12 Ω × 7.41 ÷ 19.51 = 0.35 Ω at the least",
    },
    {
      name: "the same at sockets",
      given: {
        zs: "0.61 Ω ±(2 % + 2 digits)",
        zdb: "0.27 Ω ±(2 % + 2 digits)",
        r1r2: "0.66 Ω ±(2 % + 2 digits)",
        load: "socket-outlets",
        line: "1.5 mm²",
        cpc: "1 mm²",
        material: "copper",
      },
      verdict: "not-met",
      source: "arithmetic: 0.32 Ω below 0.93 Ω",
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

/** What may hold where Zs is lower than the sum, and the word for it. */
function lower(fits: Compared, given: GivenHere, parts: LoopParts, reckon: Reckoner): readonly [Judgement, Remark] {
  const { bonded, originLoop, load, line, cpc, material, r1, r2 } = given;
  const either = (other: Judgement) => reckon.any(QUESTION.readingsAgree, fits, other);
  const near = nearTheBoard(parts, { r1, r2 }, reckon);
  if (near !== undefined) return [either(near), NEAR_THE_BOARD];
  const unbonded = isKnownFact(bonded) && !bonded.word;
  if (parts.isExternal && !unbonded) {
    const least = withEarthsBeside(parts, reckon);
    // Nobody said that anything is bonded: then something has to be left for it, by the readings as they stand.
    const leaves = parts.zs.shown.value > parts.own.shown.value;
    if (least.verdict === "met" && (isKnownFact(bonded) || leaves)) {
      const known = isKnownFact(bonded) ? least : reckon.settled(QUESTION.loopWithEarths, "too-near", NOT_SAID, bonded);
      return [either(known), EARTHS_BESIDE];
    }
  }
  const ofLine = perMetre(TERM.linePerMetre, line, material, reckon);
  const whole = reckon.sum(TERM.conductorPerMetre, ofLine, perMetre(TERM.cpcPerMetre, cpc, material, reckon));
  const share = reckon.quotient(TERM.ratio, ofLine, whole);
  if (!isOnPipes(load)) return [fits, LOWER];
  const start = isKnown(originLoop) ? originLoop : parts.before.shown;
  const piped = byOtherPath(parts.zs, withLineAlone(start, parts.own, share, reckon), reckon);
  return piped.verdict === "met" ? [either(piped), OTHER_PATH] : [fits, LOWER];
}

const NOT_SAID = "whether main bonding lies in parallel is not said";

const EARTHS_BESIDE: Remark = Object.freeze({
  code: "earths-beside",
  words:
    "Ze was read with the earthing conductor off, Zs with all that is bonded in parallel: the sum is an upper bound. Zdb, read at the board, would tell more.",
});

const NEAR_THE_BOARD: Remark = Object.freeze({
  code: "r1r2-cross-connected",
  words:
    "R1+R2 of a ring is read cross-connected: at a spur or a point near the board it holds a part of the ring that is not in the loop, and Zs may be lower by as much. Read Zs at the point where R1+R2 was read.",
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
