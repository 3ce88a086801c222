import { measured, parseAccuracy, parseWritten, Reckoner, seenBetween, TERM } from "@good-grounds/core";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { COMPUTATIONS } from "../computations.ts";
import { givenFromText } from "../given.ts";
import {
  areOfOneMeter,
  withDoubtOfOneMeter,
  withInstrumentDoubt,
  withLastDigit,
  withUsualDoubt,
} from "./instrument-doubt.ts";

const reckon = new Reckoner(true);
const read = (text: string, accuracy?: string, instrument?: string) => {
  const written = parseWritten(text, "ohm");
  if ("code" in written) throw new Error(written.code);
  const stated = accuracy === undefined ? null : (parseAccuracy(accuracy) ?? null);
  return measured(TERM.measuredZs, written, [], stated, instrument === undefined ? {} : { instrument });
};
const band = ({ low, high }: { readonly low: number; readonly high: number }) => [
  Number(low.toFixed(6)),
  Number(high.toFixed(6)),
];

describe("the doubt of a reading", () => {
  test("without stated accuracy: the ceiling of the standard and a digit, or what usual instruments are out by", () => {
    const reading = read("0.71 Ω");
    expect(band(withInstrumentDoubt(TERM.loopReading, reading, reckon))).toEqual([0.487, 0.933]);
    expect(band(withUsualDoubt(TERM.loopReading, reading, "loop", reckon))).toEqual([0.6245, 0.7955]);
    expect(band(withUsualDoubt(TERM.loopReading, reading, "continuity", reckon))).toEqual([0.6658, 0.7542]);
    expect(band(withDoubtOfOneMeter(TERM.loopReading, reading, reckon))).toEqual([0.6658, 0.7542]);
    expect(band(withLastDigit(TERM.loopReading, reading, reckon))).toEqual([0.7, 0.72]);
  });

  test("does not reach below nothing, and leaves the ends of a range open", () => {
    expect(band(withInstrumentDoubt(TERM.loopReading, read("0.00 Ω"), reckon))).toEqual([0, 0.01]);
    expect(withInstrumentDoubt(TERM.loopReading, read(">99.9 Ω"), reckon).high).toBe(Number.POSITIVE_INFINITY);
    expect(withInstrumentDoubt(TERM.loopReading, read("<0.05 Ω"), reckon).low).toBe(0);
  });

  test("stays as stated or as typed; an accuracy in percent alone gets the rounding of the display", () => {
    const stated = read("0.71 Ω", "±(2 % + 2 digits)");
    expect(withInstrumentDoubt(TERM.loopReading, stated, reckon)).toBe(stated);
    const typed = seenBetween(TERM.measuredZs, read("0.70 Ω").value, read("0.72 Ω").value, "0.70 Ω to 0.72 Ω", []);
    expect(withInstrumentDoubt(TERM.loopReading, typed, reckon)).toBe(typed);
    expect(band(withInstrumentDoubt(TERM.loopReading, read("0.20 Ω", "2 %"), reckon))).toEqual([0.191, 0.209]);
  });

  test("one meter is one meter, whether it has a name or not", () => {
    expect(areOfOneMeter([read("1 Ω"), read("2 Ω")])).toBe(true);
    expect(areOfOneMeter([read("1 Ω", undefined, "a"), read("2 Ω", undefined, "a")])).toBe(true);
    expect(areOfOneMeter([read("1 Ω", undefined, "a"), read("2 Ω", undefined, "b")])).toBe(false);
  });
});

const verdictOf = (id: string, given: Readonly<Record<string, string | readonly string[]>>) => {
  const one = COMPUTATIONS.get(id);
  if (one === undefined || !("conclude" in one)) throw new Error(id);
  const made = givenFromText(one.needs, given);
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  return one.conclude(made.given, reckon).judgement.verdict;
};

describe("figures typed without a word on the instrument", () => {
  const hundredths = fc.integer({ min: 1, max: 400 });
  const ohms = (count: number) => `${(count / 100).toFixed(2)} Ω`;

  test("that come out to the printed digit, or one beside it, are met", () => {
    fc.assert(
      fc.property(hundredths, hundredths, fc.constantFrom(-1, 0, 1), (before, dead, off) => {
        const given = { zs: ohms(before + dead + off), zdb: ohms(before), r1r2: ohms(dead) };
        expect(verdictOf("zs-agreement", given)).toBe("met");
      }),
    );
    fc.assert(
      fc.property(hundredths, fc.constantFrom(-1, 0, 1), (end, off) => {
        const given = {
          r1: ohms(end),
          rn: ohms(Math.max(1, end + off)),
          line: "2.5 mm²",
          cpc: "2.5 mm²",
          material: "copper",
        };
        expect(verdictOf("ring-continuity", { ...given, r2: ohms(end) })).toBe("met");
      }),
    );
    expect(
      verdictOf("bonding-continuity", { resistance: "0.07 Ω", bond: "10 mm²", material: "copper", length: "9 m" }),
    ).toBe("met");
  });

  test("never read better the further apart they are", () => {
    const rank = ["met", "too-near", "not-met"];
    fc.assert(
      fc.property(hundredths, hundredths, hundredths, hundredths, (before, dead, more, evenMore) => {
        const verdict = (joint: number) =>
          rank.indexOf(
            verdictOf("zs-agreement", { zs: ohms(before + dead + joint), zdb: ohms(before), r1r2: ohms(dead) }),
          );
        expect(verdict(more + evenMore)).toBeGreaterThanOrEqual(verdict(more));
      }),
    );
  });
});
