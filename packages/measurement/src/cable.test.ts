import {
  fact,
  factNotKnown,
  isKnown,
  notKnown,
  parseWritten,
  quantity,
  Reckoner,
  seen,
  seenBetween,
  TERM,
  type Term,
  type Unit,
  type Written,
} from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { describe, expect, test } from "vitest";
import {
  BETWEEN_CORES,
  CABLE_DOUBT,
  cableExpectation,
  covarianceOf,
  lengthOf,
  lengthWithin,
  lineAndCpc,
  materialHypotheses,
  operatingLoop,
  quotientOf,
  sizeHypotheses,
  standardOf,
} from "./index.ts";

const stated = <U extends Unit>(term: Term<U>, text: string) =>
  seen(term, parseWritten(text, term.unit) as Written<U>, [term.id]);
const found = (word: "taped" | "by-drawing" | "estimated" | "unknown") => fact(MATTER.lengthFound, word, []);
const UNSAID = factNotKnown(MATTER.lengthFound, []);

const cable = {
  line: stated(TERM.lineArea, "2.5 mm²"),
  cpc: stated(TERM.cpcArea, "1.5 mm²"),
  material: fact(MATTER.material, "copper" as const, []),
  length: stated(TERM.length, "20 m"),
  lengthFound: UNSAID,
  temperature: stated(TERM.testTemperature, "20 °C"),
};

describe("length", () => {
  test("says how far it is to be believed, and one that does not say was estimated", () => {
    const doubts = (["taped", "by-drawing", "estimated", "unknown"] as const).map((word) => {
      const length = lengthOf(cable.length, found(word));
      return length === undefined ? Number.NaN : standardOf(length);
    });
    expect(doubts).toEqual(doubts.toSorted((a, b) => a - b));
    expect(lengthOf(cable.length, UNSAID)).toEqual(lengthOf(cable.length, found("estimated")));
    expect(lengthWithin(cable.length, UNSAID)).toMatchObject({ value: 20, low: 16, high: 24 });
  });

  test("a range stays as it was given; nothing known stays nothing known", () => {
    const range = seenBetween(TERM.length, quantity(18, "metre"), quantity(22, "metre"), "18 m to 22 m", []);
    expect(lengthWithin(range, UNSAID)).toBe(range);
    expect(lengthOf(notKnown(TERM.length, []), UNSAID)).toBeUndefined();
  });
});

describe("cable", () => {
  test("2.5/1.5 mm² over 20 m is (7.41 + 12.1) mΩ/m of it, less 3 %", () => {
    const both = lineAndCpc(cableExpectation(cable));
    expect(both?.value).toBeCloseTo(0.01951 * 20 * 0.97, 9);
  });

  test("its conductors share the length: their ratio does not depend on it", () => {
    const ratioOf = (word: "taped" | "unknown") => {
      const { line, cpc } = cableExpectation({ ...cable, lengthFound: found(word) }).core;
      if (line?.whole === undefined || cpc?.whole === undefined) throw new Error("both are known");
      expect(covarianceOf(line.whole, cpc.whole)).toBeGreaterThan(0);
      const ratio = quotientOf(cpc.whole, line.whole);
      return standardOf(ratio) / ratio.value;
    };
    expect(ratioOf("unknown")).toBeCloseTo(ratioOf("taped"), 9);
    expect(ratioOf("taped")).toBeCloseTo((Math.SQRT2 * CABLE_DOUBT.core) / Math.sqrt(3), 9);
    expect(BETWEEN_CORES.high - 1).toBeCloseTo(Math.SQRT2 * CABLE_DOUBT.core, 9);
  });

  test("an armour is no conductor of the table; what is not known gives no expectation", () => {
    const armour = fact(MATTER.cpcArrangement, "armour" as const, []);
    expect(cableExpectation({ ...cable, cpcArrangement: armour }).core.cpc).toBeUndefined();
    expect(cableExpectation({ ...cable, material: factNotKnown(MATTER.material, []) }).core.line).toBeUndefined();
  });

  test("what was written down is the likeliest, and all that it may be comes to one", () => {
    for (const of of [sizeHypotheses(cable.cpc), materialHypotheses(cable.material)]) {
      expect(of.reduce((sum, { prior }) => sum + prior, 0)).toBeCloseTo(1, 12);
      expect(of.filter(({ asWritten }) => asWritten)).toEqual([of[0]]);
      expect(of.every(({ prior }) => prior <= (of[0]?.prior ?? 0))).toBe(true);
    }
    const [written, ...others] = sizeHypotheses(cable.cpc);
    expect(written?.value).toBe(1.5);
    expect(others.find(({ value }) => value === 1)?.prior).toBeGreaterThan(
      others.find(({ value }) => value === 6)?.prior ?? 1,
    );
  });
});

describe("loop from the source to a point", () => {
  const reckon = new Reckoner(true);
  const warm = {
    temperature: stated(TERM.testTemperature, "20 °C"),
    insulation: fact(MATTER.insulation, "70C-thermoplastic" as const, []),
    cpcArrangement: fact(MATTER.cpcArrangement, "in-cable" as const, []),
  };
  const ohms = (text: string) => stated(TERM.resistance, text);
  const none = notKnown(TERM.resistance, []);

  test("every section heats: 0.35 before, 0.30 of feeder and 0.60 of circuit by a fifth", () => {
    const hot = operatingLoop(
      {
        zs: ohms("1.25 Ω"),
        sections: [
          { ...warm, r1r2: ohms("0.60 Ω"), from: ohms("0.65 Ω") },
          { ...warm, r1r2: ohms("0.30 Ω"), from: ohms("0.35 Ω") },
        ],
      },
      reckon,
    );
    expect(hot.value).toBeCloseTo(1.25 + 0.2 * 0.9, 12);
  });

  test("a section that was not read is the difference of the loops at its ends", () => {
    const hot = operatingLoop(
      {
        zs: ohms("1.25 Ω"),
        sections: [
          { ...warm, r1r2: none, from: ohms("0.65 Ω") },
          { ...warm, r1r2: none, from: ohms("0.35 Ω") },
        ],
      },
      reckon,
    );
    expect(hot.value).toBeCloseTo(1.25 + 0.2 * 0.9, 12);
  });

  test("without either it is anything up to all that is left", () => {
    const section = { ...warm, r1r2: none, from: none };
    const hot = operatingLoop({ zs: ohms("1.00 Ω"), sections: [section, section] }, reckon);
    expect(isKnown(hot)).toBe(true);
    expect([hot.low, hot.high]).toEqual([expect.closeTo(1, 12), expect.closeTo(1.2, 12)]);
  });
});
