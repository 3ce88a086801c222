import { type Conclusion, DEVICE_STANDARDS, DEVICE_TYPES, Reckoner, type Verdict } from "@good-grounds/core";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { givenFromText } from "../../given.ts";
import { devicesGrade } from "./devices-grade.ts";

type Given = Readonly<Record<string, string>>;

const reckon = new Reckoner(true);

function conclude(given: Given): Conclusion {
  const made = givenFromText(devicesGrade.needs, given);
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  return devicesGrade.conclude(made.given, reckon);
}
const verdictOf = (given: Given): Verdict => conclude(given).judgement.verdict;

/** A current as one value, or as a range between two. */
const current = (values: readonly number[]) =>
  fc
    .tuple(fc.constantFrom(...values), fc.constantFrom(...values))
    .map(([a, b]) => (a === b ? `${a} A` : `${Math.min(a, b)} A to ${Math.max(a, b)} A`));
const rated = current([6, 16, 32, 40, 50, 63, 80, 100]);
const fault = current([100, 300, 450, 1000, 1600, 2000, 6000]);

const whole = fc.record({
  aheadStandard: fc.constantFrom(...DEVICE_STANDARDS),
  aheadType: fc.constantFrom(...DEVICE_TYPES),
  aheadRated: rated,
  standard: fc.constantFrom(...DEVICE_STANDARDS),
  type: fc.constantFrom(...DEVICE_TYPES),
  rated,
  faultCurrent: fault,
  makersLimit: fc.oneof(current([200, 430, 470, 2000, 4500]), fc.constant("430 A to 470 A")),
});
const NAMES = Object.keys(devicesGrade.needs);
const only = (given: Given, kept: readonly string[]): Given =>
  Object.fromEntries(kept.map((name) => [name, given[name] as string]));

/** A value or a range within another one, both as text. */
function within(text: string, from: number, to: number): string {
  const [a = Number.NaN, b = a] = text.split(" to ").map((end) => Number(end.replace(" A", "")));
  const [low, high] = [Math.min(a, b), Math.max(a, b)];
  const at = (part: number) => Math.round(low + part * (high - low));
  return from === to ? `${at(from)} A` : `${at(from)} A to ${at(to)} A`;
}

const CURRENTS = ["aheadRated", "rated", "faultCurrent", "makersLimit"] as const;
const RUNS = { numRuns: 20_000, seed: 20_261_130 };
const decided = (verdict: Verdict) => verdict === "met" || verdict === "not-met";

/**
 * The law: evidence is a word or a range for each need, or nothing. Other evidence is sharper where it answers a need
 * that was open or gives a range within the range. Met and not met stand under every sharper evidence; only what was
 * open (not known, too near) may change.
 */
describe("a verdict stands when more is known", () => {
  test("answering what was left out takes back neither met nor not met", () => {
    fc.assert(
      fc.property(whole, fc.subarray(NAMES), (all, kept) => {
        const part = only(all, kept);
        const before = verdictOf(part);
        if (decided(before)) expect(verdictOf(all), JSON.stringify({ part, all })).toBe(before);
      }),
      RUNS,
    );
  });

  test("nor does a narrower range, with or without an answer more", () => {
    const part = fc.tuple(fc.constantFrom(0, 0.5, 1), fc.constantFrom(0, 0.5, 1));
    fc.assert(
      fc.property(whole, fc.subarray(NAMES), fc.tuple(part, part, part, part), (all, kept, parts) => {
        const before = verdictOf(only(all, kept));
        if (!decided(before)) return;
        const sharper = { ...all };
        for (const [i, name] of CURRENTS.entries()) {
          const [a, b] = parts[i] ?? [0, 1];
          sharper[name] = within(all[name], Math.min(a, b), Math.max(a, b));
        }
        expect(verdictOf(sharper), JSON.stringify({ all, kept, sharper })).toBe(before);
      }),
      RUNS,
    );
  });

  test("fuses whose type was not read: nothing is met that the maker's limit can take back", () => {
    const unread = {
      aheadStandard: "BS 88-2",
      aheadRated: "100 A",
      standard: "BS 88-2",
      rated: "50 A",
      faultCurrent: "2 kA",
    };
    const limit = { makersLimit: "430 A to 470 A" };
    expect(verdictOf(unread)).toBe("not-known");
    expect(verdictOf({ ...unread, ...limit })).toBe("not-known");
    expect(verdictOf({ ...unread, ...limit, aheadType: "gM", type: "gG" })).toBe("not-met");
    expect(verdictOf({ ...unread, ...limit, aheadType: "gG", type: "gG" })).toBe("met");
  });

  test("the device ahead not seen: a fault current beyond the maker's limit alone does not decide", () => {
    const limit = { faultCurrent: "2 kA", makersLimit: "430 A to 470 A" };
    const fuses = { aheadStandard: "BS 88-2", aheadType: "gG", aheadRated: "100 A" } as const;
    expect(verdictOf(limit)).toBe("not-known");
    expect(verdictOf({ ...limit, ...fuses, standard: "BS 88-2", type: "gG", rated: "50 A" })).toBe("met");
  });
});
