import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Unit } from "../quantity/unit.ts";
import { parseWritten } from "../quantity/written.ts";
import { TERM } from "../terms/index.ts";
import { matter } from "../terms/term.ts";
import { parseAccuracy } from "./accuracy.ts";
import type { Evidence } from "./evidence.ts";
import { assumed, measured, notKnown } from "./leaves.ts";
import { Reckoner } from "./reckoner.ts";
import { missingOf, nodesOf } from "./walk.ts";

const reckon = new Reckoner(true);
const bare = new Reckoner(false);
const about = matter("test", "test");

const banded = (value: number, low: number, high: number) => assumed(TERM.resistance, value, "test", [low, high]);
const exactly = (value: number) => banded(value, value, value);

const band = fc
  .tuple(
    fc.double({ min: 0.01, max: 1000, noNaN: true }),
    fc.double({ min: 0, max: 0.5, noNaN: true }),
    fc.double({ min: 0, max: 0.5, noNaN: true }),
  )
  .map(([value, below, above]) => banded(value, value * (1 - below), value * (1 + above)));
const inside = fc.double({ min: 0, max: 1, noNaN: true });
const pick = (evidence: Evidence<"ohm">, at: number) => evidence.low + at * (evidence.high - evidence.low);

describe("bands of the arithmetic", () => {
  const cases: readonly [
    string,
    (a: Evidence<"ohm">, b: Evidence<"ohm">) => { low: number; high: number },
    (a: number, b: number) => number,
  ][] = [
    ["sum", (a, b) => reckon.sum(TERM.resistance, a, b), (a, b) => a + b],
    ["difference", (a, b) => reckon.difference(TERM.resistance, a, b), (a, b) => a - b],
    ["quotient", (a, b) => reckon.quotient(TERM.ratio, a, b), (a, b) => a / b],
    ["largest", (a, b) => reckon.largest(TERM.resistance, a, b), Math.max],
    ["smallest", (a, b) => reckon.smallest(TERM.resistance, a, b), Math.min],
    ["in parallel", (a, b) => reckon.inParallel(TERM.resistance, [a, b]), (a, b) => 1 / (1 / a + 1 / b)],
  ];
  test.each(cases)("%s contains every pair of true values", (_, operate, exact) => {
    fc.assert(
      fc.property(band, band, inside, inside, (a, b, i, j) => {
        const result = operate(a, b);
        const truth = exact(pick(a, i), pick(b, j));
        const slack = 1e-9 * (1 + Math.abs(truth));
        expect(truth).toBeGreaterThanOrEqual(result.low - slack);
        expect(truth).toBeLessThanOrEqual(result.high + slack);
      }),
    );
  });

  test("product contains every pair of true values, whatever the signs", () => {
    const ratio = fc.tuple(fc.double({ min: -2, max: 2, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }));
    fc.assert(
      fc.property(band, ratio, inside, inside, (a, [value, width], i, j) => {
        const factor = assumed(TERM.ratio, value, "test", [value - width, value + width]);
        const result = reckon.product(TERM.resistance, a, factor);
        const truth = pick(a, i) * (factor.low + j * (factor.high - factor.low));
        expect(truth).toBeGreaterThanOrEqual(result.low - 1e-9 * (1 + Math.abs(truth)));
        expect(truth).toBeLessThanOrEqual(result.high + 1e-9 * (1 + Math.abs(truth)));
      }),
    );
  });
});

describe("bands at the edges of arithmetic", () => {
  const nothing = exactly(0);
  const endless = exactly(Number.POSITIVE_INFINITY);
  const unknown = notKnown(TERM.resistance, ["x"]);
  const hostile = fc
    .tuple(
      ...Array.from({ length: 3 }, () => fc.constantFrom(-3, -0.2, 0, 1e-9, 0.5, 2, 1e9, Number.POSITIVE_INFINITY)),
    )
    .map((three) => {
      const [low = 0, value = 0, high = 0] = three.sort((a, b) => a - b);
      return banded(value, low, high);
    });
  const operations: readonly [string, (a: Evidence<"ohm">, b: Evidence<"ohm">) => Evidence<Unit>][] = [
    ["sum", (a, b) => reckon.sum(TERM.resistance, a, b)],
    ["difference", (a, b) => reckon.difference(TERM.resistance, a, b)],
    ["product", (a, b) => reckon.product(TERM.resistance, a, reckon.quotient(TERM.ratio, b, exactly(1)))],
    ["quotient", (a, b) => reckon.quotient(TERM.ratio, a, b)],
    ["largest", (a, b) => reckon.largest(TERM.resistance, a, b)],
    ["smallest", (a, b) => reckon.smallest(TERM.resistance, a, b)],
    ["in parallel", (a, b) => reckon.inParallel(TERM.resistance, [a, b])],
    ["one of", (a, b) => reckon.oneOf(TERM.resistance, [a, b])],
    ["between", (a, b) => reckon.between(TERM.resistance, a, b)],
    ["at most of", (a) => reckon.atMostOf(TERM.resistance, a)],
    ["square", (a) => reckon.square(TERM.letThrough, assumed(TERM.rootLetThrough, a.value, "test", [a.low, a.high]))],
    ["root", (a) => reckon.root(TERM.rootLetThrough, assumed(TERM.letThrough, a.value, "test", [a.low, a.high]))],
    [
      "let-through",
      (a, b) =>
        reckon.letThrough(
          TERM.letThrough,
          assumed(TERM.current, a.value, "test", [a.low, a.high]),
          assumed(TERM.operatingTime, b.value, "test", [b.low, b.high]),
        ),
    ],
  ];

  test.each(operations)("%s: every band holds its value, and none is a number of no meaning", (_, operate) => {
    fc.assert(
      fc.property(hostile, hostile, (a, b) => {
        const { kind, value, low, high } = operate(a, b);
        if (kind === "lacking") expect([value, low, high]).toEqual([Number.NaN, Number.NaN, Number.NaN]);
        else expect(low <= value && value <= high, `${low} .. ${value} .. ${high}`).toBe(true);
      }),
      { seed: 20_261_130, numRuns: 2000 },
    );
  });

  test.each(operations.slice(0, 9))("%s with something unknown is unknown, whatever the other is", (_, operate) => {
    for (const other of [nothing, endless, exactly(1), banded(1, 0, Number.POSITIVE_INFINITY)])
      for (const result of [operate(unknown, other), operate(other, unknown)]) {
        expect(result.kind).toBe("lacking");
        expect([result.value, result.low, result.high]).toEqual([Number.NaN, Number.NaN, Number.NaN]);
      }
  });

  test("an unknown over nothing is no endless current", () => {
    expect(reckon.quotient(TERM.ratio, unknown, nothing).kind).toBe("lacking");
    expect(reckon.atLeast(about, reckon.quotient(TERM.ratio, unknown, nothing), TEN).verdict).toBe("not-known");
  });

  test("none of nothing is the largest or the smallest", () => {
    expect(reckon.largest(TERM.resistance).kind).toBe("lacking");
    expect(reckon.smallest(TERM.resistance).kind).toBe("lacking");
  });
});

const TEN = assumed(TERM.ratio, 10, "test");

describe("comparison with a limit", () => {
  test("met and not met are what every true value inside the band says; too near is the rest", () => {
    fc.assert(
      fc.property(band, fc.double({ min: 0.01, max: 1000, noNaN: true }), (reading, limit) => {
        const { verdict } = reckon.atMost(about, reading, exactly(limit));
        if (verdict === "met") expect(reading.high).toBeLessThanOrEqual(limit * (1 + 2e-9));
        if (verdict === "not-met") expect(reading.low).toBeGreaterThan(limit);
        if (verdict === "too-near") expect(reading.low <= limit * (1 + 2e-9) && reading.high > limit).toBe(true);
      }),
    );
  });

  test("a reading typed equal to its limit meets it, and one digit beyond does not", () => {
    expect(reckon.atMost(about, exactly(0.1 + 0.2), exactly(0.3)).verdict).toBe("met");
    expect(reckon.atLeast(about, exactly(0.3), exactly(0.1 + 0.2)).verdict).toBe("met");
    expect(reckon.atMost(about, exactly(0.31), exactly(0.3)).verdict).toBe("not-met");
  });

  test("a worse reading never has a better verdict or margin", () => {
    const rank = { met: 0, "too-near": 1, "not-met": 2, "not-known": 3, "not-applicable": 4 };
    fc.assert(
      fc.property(
        band,
        fc.double({ min: 0, max: 10, noNaN: true }),
        fc.double({ min: 0.01, max: 1000, noNaN: true }),
        (a, more, limit) => {
          const worse = banded(a.value + more, a.low + more, a.high + more);
          const before = reckon.atMost(about, a, exactly(limit));
          const after = reckon.atMost(about, worse, exactly(limit));
          expect(rank[after.verdict]).toBeGreaterThanOrEqual(rank[before.verdict]);
          expect(after.margin).toBeLessThanOrEqual(before.margin);
        },
      ),
    );
  });

  test("what the values alone say is kept beside the verdict on the bands", () => {
    expect(reckon.atMost(about, banded(1, 0.9, 1.1), exactly(1.05))).toMatchObject({
      verdict: "too-near",
      asRead: "met",
    });
  });

  test("over-range displays are open on one side", () => {
    const written = parseWritten(">999 MΩ", "ohm");
    if ("code" in written) throw new Error("fault");
    const reading = measured(TERM.insulation, written, ["x"]);
    expect(reckon.atLeast(about, reading, exactly(1e6)).verdict).toBe("met");
    expect(reckon.atLeast(about, reading, exactly(2e9)).verdict).toBe("too-near");
  });
});

describe("agreement of two accounts", () => {
  test("is met exactly when some true value lies in both bands, and is symmetric", () => {
    fc.assert(
      fc.property(band, band, (a, b) => {
        const meet = Math.max(a.low, b.low) <= Math.min(a.high, b.high) * (1 + 1e-9);
        expect(reckon.agrees(about, a, b).verdict).toBe(meet ? "met" : "not-met");
        expect(reckon.agrees(about, b, a).verdict).toBe(reckon.agrees(about, a, b).verdict);
      }),
    );
  });

  test("where what they may be out by is given, that decides and not their bands", () => {
    const apart = (verdict: "met" | "too-near" | "not-met", margin: number) =>
      reckon.agrees(about, exactly(5), exactly(1), "agrees-with", { verdict, margin, standard: 1, chance: 0.1 });
    expect(apart("met", 0.5)).toMatchObject({ verdict: "met", asRead: "met", margin: 0.5, apart: { standard: 1 } });
    expect(apart("too-near", 0.1)).toMatchObject({ verdict: "too-near", asRead: "not-met", margin: 0.1 });
    expect(apart("not-met", -1)).toMatchObject({ verdict: "not-met", asRead: "not-met", margin: -1 });
  });

  test("one-sided agreement minds that side only", () => {
    expect(reckon.agrees(about, exactly(5), exactly(1), "not-below").verdict).toBe("met");
    expect(reckon.agrees(about, exactly(1), exactly(5), "not-below").verdict).toBe("not-met");
    expect(reckon.agrees(about, exactly(1), exactly(5), "not-above").verdict).toBe("met");
  });
});

describe("what is not known", () => {
  test("makes every result that needs it lacking, keeps the lines and names the missing leaf", () => {
    const missing = notKnown(TERM.measuredR1R2, ["boards", 0]);
    const sum = reckon.sum(TERM.expectedZs, exactly(1), missing);
    expect(sum.kind).toBe("lacking");
    const judgement = reckon.atMost(about, sum, exactly(2));
    expect(judgement.verdict).toBe("not-known");
    expect(missingOf(judgement)).toEqual([missing]);
  });

  test.each([
    ["product", () => reckon.product(TERM.resistance, notKnown(TERM.resistance, []), assumed(TERM.ratio, 0, "zero"))],
    ["quotient", () => reckon.quotient(TERM.ratio, notKnown(TERM.resistance, []), exactly(1))],
    ["largest", () => reckon.largest(TERM.resistance, exactly(1), notKnown(TERM.resistance, []))],
    ["smallest", () => reckon.smallest(TERM.resistance, exactly(1), notKnown(TERM.resistance, []))],
    ["in parallel", () => reckon.inParallel(TERM.resistance, [exactly(1), notKnown(TERM.resistance, [])])],
    ["look-up", () => reckon.lookedUp(TERM.resistance, undefined, notKnown(TERM.lineArea, []))],
  ])("is not swallowed by %s", (_, compute) => {
    expect(compute().kind).toBe("lacking");
  });
});

describe("keeping grounds", () => {
  test("changes no value, band, verdict or margin", () => {
    fc.assert(
      fc.property(band, band, fc.double({ min: 0.01, max: 1000, noNaN: true }), (a, b, limit) => {
        const run = (by: Reckoner) =>
          by.all(about, by.atMost(about, by.sum(TERM.resistance, a, b), exactly(limit)), by.agrees(about, a, b));
        const { from: kept, ...withGrounds } = run(reckon);
        const { from: dropped, ...without } = run(bare);
        expect(without).toEqual(withGrounds);
        expect(kept).toHaveLength(2);
        expect(dropped).toHaveLength(0);
      }),
    );
  });

  test("gives a tree that is frozen from top to bottom", () => {
    const judgement = reckon.all(
      about,
      reckon.atMost(about, reckon.sum(TERM.resistance, exactly(1), exactly(2)), exactly(4)),
    );
    for (const node of nodesOf(judgement)) {
      expect(Object.isFrozen(node)).toBe(true);
      if ("from" in node) expect(Object.isFrozen(node.from)).toBe(true);
    }
  });
});

describe("instrument accuracy", () => {
  test("becomes the band of a reading: part of reading and digits of the last place", () => {
    const accuracy = parseAccuracy("±(5 % + 3 digits)");
    const written = parseWritten("1.00 Ω", "ohm");
    if (accuracy === undefined || "code" in written) throw new Error("fault");
    const reading = measured(TERM.measuredZs, written, [], accuracy);
    // Contacts add up to 0.02 Ω to what a loop tester shows, and never take from it.
    expect(reading.low).toBeCloseTo(0.92 - 0.02, 12);
    expect(reading.high).toBeCloseTo(1.08, 12);
  });

  test.each(["5", "± five", "5 % + three digits", "", "500 %"])("is refused as %j", (text) => {
    expect(parseAccuracy(text)).toBeUndefined();
  });
});
