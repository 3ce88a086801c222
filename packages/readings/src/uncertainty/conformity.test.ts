import { givenFromText, zsAgreement } from "@good-grounds/computations";
import {
  assumed,
  type Compared,
  type Evidence,
  type Judgement,
  matter,
  measured,
  nodesOf,
  notKnown,
  parseAccuracy,
  parseWritten,
  quantity,
  Reckoner,
  seenBetween,
  TERM,
  type Term,
  type Written,
} from "@good-grounds/core";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { comparedConformity } from "./compared.ts";
import { comparedParts, conformityOf } from "./conformity.ts";

const RECKON = new Reckoner(true);
const QUESTION = matter("invented", "an invented comparison");

/** Nothing of a circuit but what a case states. */
function nothingElse() {
  const made = givenFromText(zsAgreement.needs, {});
  if (!made.ok) throw new Error("nothing was given");
  return made.given;
}
const LOOP = "±(5 % + 3 digits)";

function read(term: Term<"ohm">, ohms: number, accuracy: string | null = LOOP, instrument = "mft") {
  const written = parseWritten(`${ohms.toFixed(2)} Ω`, "ohm") as Written<"ohm">;
  return measured(term, written, [], accuracy === null ? null : (parseAccuracy(accuracy) ?? null), { instrument });
}

const limitOf = (ohms: number) => assumed(TERM.permittedZs, ohms, "invented");
const zs = (ohms: number, limit = 1.37, accuracy: string | null = LOOP) =>
  RECKON.atMost(QUESTION, read(TERM.measuredZs, ohms, accuracy), limitOf(limit));

describe("one reading and its limit", () => {
  test("1.20 Ω ± (5 % + 3 digits) against 1.37 Ω: worked by hand", () => {
    const found = comparedConformity(zs(1.2));
    // a = 0.06 + 0.03 = 0.09; a²/3 = 0.0027; contacts of 0.02 Ω, 0.02²/3; u = 0.05323.
    expect(found?.standard).toBeCloseTo(Math.sqrt(0.0027 + 4e-4 / 3), 9);
    expect(found?.expanded).toBeCloseTo(2 * Math.sqrt(0.0027 + 4e-4 / 3), 9);
    expect(found?.difference).toBeCloseTo(0.17, 9);
    expect(found?.decision).toEqual({ simple: "met", guarded: "met" });
    expect(found?.probability).toBeGreaterThan(0.999);
    expect(found?.budget.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
  });

  test("at the limit a reading is as likely beyond as within; simple accepts, guarded does not", () => {
    const found = comparedConformity(zs(1.37));
    expect(found?.probability).toBeCloseTo(0.5, 9);
    expect(found?.decision).toEqual({ simple: "met", guarded: "too-near" });
    expect(comparedConformity(zs(1.38))?.decision).toEqual({ simple: "not-met", guarded: "too-near" });
    expect(comparedConformity(zs(1.6))?.decision).toEqual({ simple: "not-met", guarded: "not-met" });
  });

  test("without a stated accuracy the ceiling of the instrument standard is taken and said", () => {
    const found = comparedConformity(zs(1.2, 1.37, null));
    // A usual loop tester: 5 % of 1.20 Ω and 5 digits, rectangular; contacts of 0.02 Ω.
    expect(found?.standard).toBeCloseTo(Math.sqrt((0.11 ** 2 + 0.02 ** 2) / 3), 9);
    expect(found?.notes).toEqual(["accuracy-not-stated"]);
    expect(found?.decision).toEqual({ simple: "met", guarded: "met" });
  });

  test("two accounts of one thing: the chance and the decision are those of the check", () => {
    const given = {
      ...nothingElse(),
      zs: read(TERM.measuredZs, 1.22, null),
      zdb: read(TERM.measuredZdb, 0.21, null),
      ze: notKnown(TERM.measuredZe, []),
      r1r2: read(TERM.measuredR1R2, 0.81, null),
    };
    const { judgement } = zsAgreement.conclude(given, RECKON);
    if (judgement.kind !== "compared") throw new Error("two accounts are compared");
    const sure = conformityOf(judgement);
    expect(sure.deciding?.standard).toBe(judgement.apart?.standard);
    expect(sure).toMatchObject({ kind: "agreement", probability: judgement.apart?.chance });
    expect(sure.decision.simple).toBe(judgement.verdict);
  });

  test("a range alone gives a verdict and no percentage; a reading gives one", () => {
    const range = (low: number, high: number) =>
      seenBetween(TERM.resistance, quantity(low, "ohm"), quantity(high, "ohm"), "a range", []);
    const across = conformityOf(RECKON.atMost(QUESTION, range(1, 2), limitOf(1.5)));
    expect(across).toMatchObject({ probability: null, lowest: 0, highest: 1, decision: { simple: "too-near" } });
    expect(conformityOf(RECKON.atMost(QUESTION, range(1, 1.4), limitOf(1.5))).probability).toBe(1);
    expect(conformityOf(zs(1.35)).probability).toBeGreaterThan(0.5);
  });

  test("a value without errors decides for certain", () => {
    const size = (area: number) => assumed(TERM.area, area, "invented");
    expect(conformityOf(RECKON.atLeast(QUESTION, size(10), size(10)))).toMatchObject({
      probability: 1,
      decision: { simple: "met", guarded: "met" },
    });
    expect(conformityOf(RECKON.atLeast(QUESTION, size(6), size(10)))).toMatchObject({
      probability: 0,
      decision: { simple: "not-met", guarded: "not-met" },
    });
  });

  test("a display at the end of its range bears out only what lies on its side", () => {
    const insulation = (text: string) =>
      measured(TERM.insulation, parseWritten(text, "ohm") as Written<"ohm">, [], parseAccuracy("3 %") ?? null, {});
    const least = assumed(TERM.insulation, 1e6, "invented");
    const more = comparedConformity(RECKON.atLeast(QUESTION, insulation(">999 MΩ"), least));
    expect(more).toMatchObject({ probability: 1, highest: 1, decision: { simple: "met", guarded: "met" } });
    const open = comparedConformity(RECKON.atLeast(QUESTION, insulation(">0.5 MΩ"), least));
    expect(open).toMatchObject({
      probability: null,
      highest: 1,
      decision: { simple: "too-near", guarded: "too-near" },
    });
  });

  test("an open conductor does not agree with a sound one, whatever lies beyond the display", () => {
    const open = measured(TERM.ringLine, parseWritten(">99.9 Ω", "ohm") as Written<"ohm">, [], null, {});
    const apart = comparedConformity(RECKON.agrees(QUESTION, open, read(TERM.ringNeutral, 0.44)));
    expect(apart).toMatchObject({ probability: 0, decision: { simple: "not-met", guarded: "not-met" } });
    const beyond = comparedConformity(RECKON.agrees(QUESTION, open, read(TERM.ringNeutral, 120)));
    expect(beyond).toMatchObject({ probability: null, decision: { simple: "met" } });
  });

  test("what is known only as a range decides where both its ends do", () => {
    const length = (low: number, high: number) =>
      RECKON.atMost(
        QUESTION,
        seenBetween(TERM.length, quantity(low, "metre"), quantity(high, "metre"), "", []),
        assumed(TERM.length, 10, "invented"),
      );
    expect(comparedConformity(length(6, 14))).toMatchObject({
      lowest: 0,
      highest: 1,
      decision: { simple: "too-near", guarded: "too-near" },
    });
    expect(comparedConformity(length(6, 14))?.probability).toBeNull();
    expect(comparedConformity(length(6, 9))).toMatchObject({ probability: 1, lowest: 1 });
  });
});

describe("errors in common", () => {
  const ring = (accuracy: string, second = "mft") =>
    RECKON.agrees(QUESTION, read(TERM.ringLine, 0.44, accuracy), read(TERM.ringNeutral, 0.47, accuracy, second));

  test("leads that were nulled once cancel between two ends of a ring, and add in a sum", () => {
    const kinds = ({ budget }: { readonly budget: readonly { readonly kind: string }[] }) =>
      budget.map(({ kind }) => kind);
    const apart = comparedConformity(ring("2 %"));
    expect(apart === undefined ? [] : kinds(apart)).not.toContain("leads");
    const other = comparedConformity(ring("2 %", "other"));
    expect(other === undefined ? [] : kinds(other)).toContain("leads");
    const sum = RECKON.sum(TERM.ringHalf, read(TERM.ringLine, 0.44, "2 %"), read(TERM.ringNeutral, 0.47, "2 %"));
    const added = comparedConformity(RECKON.atMost(QUESTION, sum, limitOf(1)));
    expect(added?.budget.find(({ kind }) => kind === "leads")?.contribution).toBeCloseTo((2 * 0.02) / Math.sqrt(3), 9);
  });

  test("the gain of one meter acts on a difference by the difference, on a sum by the sum", () => {
    const [a, b] = [read(TERM.measuredZs, 1, "10 %"), read(TERM.measuredZdb, 0.4, "10 %")];
    const gain = (left: Evidence<"ohm">) =>
      comparedConformity(RECKON.atMost(QUESTION, left, limitOf(9)))?.budget.find(({ kind }) => kind === "gain")
        ?.contribution;
    const part = (0.1 * Math.sqrt(0.5)) / Math.sqrt(3);
    expect(gain(RECKON.difference(TERM.circuitPart, a, b))).toBeCloseTo(0.6 * part, 9);
    expect(gain(RECKON.sum(TERM.expectedZs, a, b))).toBeCloseTo(1.4 * part, 9);
  });

  test("with causes apart the budget is that of errors that know nothing of each other", () => {
    const ohms = fc.integer({ min: 5, max: 300 }).map((n) => n / 100);
    fc.assert(
      fc.property(ohms, ohms, ohms, (a, b, c) => {
        // Three instruments have nothing in common.
        const leaves = [
          read(TERM.measuredZs, a, LOOP, "one"),
          read(TERM.measuredZdb, b, LOOP, "two"),
          read(TERM.measuredR1R2, c, LOOP, "three"),
        ] as const;
        const [first, second, third] = leaves;
        const left = RECKON.difference(TERM.circuitPart, RECKON.sum(TERM.expectedZs, first, second), third);
        const together = comparedConformity(RECKON.atMost(QUESTION, left, limitOf(1)));
        const alone = leaves.map(
          (leaf) => comparedConformity(RECKON.atMost(QUESTION, leaf, limitOf(1)))?.standard ?? Number.NaN,
        );
        expect(together?.standard).toBeCloseTo(Math.hypot(...alone), 9);
      }),
    );
  });
});

describe("laws", () => {
  test("the probability falls as a reading gets worse, and is never no number", () => {
    const ohms = fc.integer({ min: 1, max: 400 });
    fc.assert(
      fc.property(ohms, ohms, fc.constantFrom(LOOP, "2 %", null), (a, b, accuracy) => {
        const [better, worse] = [Math.min(a, b) / 100, Math.max(a, b) / 100].map(
          (one) => comparedConformity(zs(one, 1.37, accuracy))?.probability ?? Number.NaN,
        ) as [number, number];
        expect(better).toBeGreaterThanOrEqual(worse - 1e-9);
        for (const one of [better, worse]) expect(one >= 0 && one <= 1).toBe(true);
      }),
    );
  });

  test("agreement gets less likely the further two accounts lie apart", () => {
    const agree = (ohms: number) =>
      comparedConformity(RECKON.agrees(QUESTION, read(TERM.measuredZs, 1), read(TERM.measuredZdb, ohms)));
    let before = 1;
    for (const ohms of [1, 1.03, 1.08, 1.15, 1.3, 2]) {
      const now = agree(ohms)?.probability ?? Number.NaN;
      expect(now).toBeLessThanOrEqual(before);
      before = now;
    }
    expect(agree(1.03)?.decision.simple).toBe("met");
    expect(agree(2)).toMatchObject({ probability: 0, decision: { simple: "not-met", guarded: "not-met" } });
  });

  test("of parts that all have to hold the least is given, of parts of which one is enough the surest", () => {
    const [a, b] = [zs(1.3), zs(1.34)];
    const [pa, pb] = [a, b].map((one) => comparedConformity(one)?.probability ?? Number.NaN) as [number, number];
    const all = conformityOf(RECKON.all(QUESTION, a, b));
    expect(all.probability).toBeCloseTo(pa + pb - 1, 12);
    expect(all.highest).toBeCloseTo(Math.min(pa, pb), 12);
    expect(all.deciding?.probability).toBe(pb);
    const any = conformityOf(RECKON.any(QUESTION, a, b));
    expect(any.probability).toBeCloseTo(Math.max(pa, pb), 12);
    expect(any.deciding?.probability).toBe(pa);
  });

  test("what is not known stays open, and facts decide without a figure", () => {
    const missing = RECKON.atMost(QUESTION, notKnown(TERM.measuredZs, []), limitOf(1));
    expect(conformityOf(missing)).toMatchObject({
      probability: null,
      lowest: 0,
      highest: 1,
      decision: { simple: "not-known", guarded: "not-known" },
    });
    const fact = (verdict: "met" | "not-met") => RECKON.settled(QUESTION, verdict, "");
    expect(conformityOf(RECKON.all(QUESTION, missing, fact("not-met")))).toMatchObject({
      probability: 0,
      decision: { simple: "not-met" },
    });
    expect(conformityOf(RECKON.any(QUESTION, missing, fact("met")))).toMatchObject({
      probability: 1,
      decision: { simple: "met" },
    });
  });

  test("a larger of two that cannot be told apart has no straight line, and what is said is safe", () => {
    const larger = RECKON.largest(TERM.resistance, read(TERM.ringLine, 0.44), read(TERM.ringNeutral, 0.44));
    const found = comparedConformity(RECKON.atMost(QUESTION, larger, limitOf(0.45)));
    expect(found).toMatchObject({ probability: null, lowest: 0, highest: 1, decision: { guarded: "too-near" } });
    expect(found?.notes).toContain("curved");
  });

  test("divides by what may reach nothing without losing its footing", () => {
    const volts = assumed(TERM.nominalVoltage, 230, "invented");
    const fault = (ohms: number): Compared =>
      RECKON.atMost(
        QUESTION,
        RECKON.quotient(TERM.faultCurrent, volts, read(TERM.measuredZs, ohms)),
        assumed(TERM.breakingCapacity, 6000, "invented"),
      );
    for (const ohms of [0, 0.01, 0.02, 0.03, 0.05, 0.1, 1]) {
      const found = comparedConformity(fault(ohms));
      expect(everyNumber(found)).toBe(true);
    }
    // Z against U/Icn = 0.0383 Ω says the same without the bend.
    const straight = RECKON.atLeast(QUESTION, read(TERM.measuredZs, 0.08), limitOf(230 / 6000));
    expect(comparedConformity(fault(0.08))?.probability).toBeCloseTo(
      comparedConformity(straight)?.probability ?? Number.NaN,
      2,
    );
  });
});

function everyNumber(value: unknown): boolean {
  if (typeof value === "number") return Number.isFinite(value);
  return typeof value !== "object" || value === null || Object.values(value).every(everyNumber);
}

test("without its lines a judgement has no doubt to work out", () => {
  const bare = new Reckoner(false).atMost(QUESTION, read(TERM.measuredZs, 1), limitOf(1.37));
  expect(conformityOf(bare)).toMatchObject({ deciding: null, decision: { simple: "met" } });
});

test("the comparisons of a judgement are those in its tree", () => {
  const judgement: Judgement = RECKON.all(QUESTION, zs(1), RECKON.any(QUESTION, zs(2), zs(3)));
  const inTree = [...nodesOf(judgement)].filter(({ kind }) => kind === "compared");
  expect(comparedParts(judgement)).toHaveLength(inTree.length);
});
