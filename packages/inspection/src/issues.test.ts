import { describe, expect, test } from "vitest";
import { smallestFile } from "../../../outside/files/arbitrary-file.ts";
import { show, valueAt } from "./issues.ts";
import { parseInspectionData } from "./parse.ts";

/** What is said about the smallest file with one member changed. */
function issuesOf(change: (file: ReturnType<typeof smallestFile>) => unknown) {
  const file = smallestFile();
  const parsed = parseInspectionData({ ...file, ...(change(file) as object) });
  if (parsed.ok) throw new Error("accepted");
  return parsed.issues.map(({ code, path, found, expected }) => ({ code, path: path.join("/"), found, expected }));
}
const circuit = (members: object) => ({
  boards: [
    {
      id: "b",
      name: "Board",
      fedFrom: "supply",
      circuits: [{ id: "c", designation: "1", description: "d", ...members }],
    },
  ],
});

describe("what an issue says it found", () => {
  test.each([
    [undefined, "nothing"],
    [null, "null"],
    ["a\u0007", '"a\\u0007"'],
    [1e308, "1e+308"],
    [[1, 2, 3], "a list of 3"],
    [{}, "an object with no members"],
    [{ a: 1, b: 2, c: 3, d: 4, e: 5, f: 6 }, "an object with a, b, c, d, e"],
  ])("%j is shown as %s", (value, words) => {
    expect(show(value)).toBe(words);
  });

  test("a long value is cut between characters, not inside one", () => {
    const shown = show("🙂".repeat(200));
    expect([...shown].length).toBe(81);
    expect(shown).toBe(`"${"🙂".repeat(79)}…`);
  });

  test("a value is looked up among own members only", () => {
    expect(valueAt({ a: [{ b: 5 }] }, ["a", 0, "b"])).toBe(5);
    expect(valueAt({}, ["constructor", "name"])).toBeUndefined();
    expect(valueAt("text", ["length"])).toBeUndefined();
  });
});

describe("each complaint of the schema in words a person can act on", () => {
  test.each([
    [
      "a date written out",
      () => ({ inspectedOn: "20 October 2026" }),
      "wrong-form inspectedOn",
      'a calendar date such as "2026-10-20"',
    ],
    [
      "a day that does not exist",
      () => ({ inspectedOn: "2026-02-30" }),
      "wrong-form inspectedOn",
      'a calendar date such as "2026-10-20"',
    ],
    [
      "a time without offset",
      () => ({ visits: [{ date: "2026-10-20", arrived: "2026-10-20T09:00:00" }] }),
      "wrong-form visits/0/arrived",
      'a date and time with its offset, such as "2026-10-20T10:45:00+01:00"',
    ],
    [
      "a control character",
      () => ({ title: "a\u0007" }),
      "wrong-form title",
      "one line of text without control characters",
    ],
    [
      "half a character",
      () => ({ title: "a\ud83d" }),
      "wrong-form title",
      "one line of text without control characters",
    ],
    [
      "an id with a space",
      () => ({ id: "a b" }),
      "wrong-form id",
      "up to 40 letters, digits, dots, underscores and hyphens, starting with a letter or digit",
    ],
    ["an empty text", () => ({ title: "" }), "too-small title", "at least 1 character"],
    ["a text too long", () => ({ title: "a".repeat(301) }), "too-big title", "at most 300 characters"],
    ["an empty list", () => ({ boards: [] }), "too-small boards", "at least 1 entry"],
    [
      "a number out of all proportion",
      () => circuit({ points: 1e308 }),
      "too-big boards/0/circuits/0/points",
      "at most 1000",
    ],
    ["half a point", () => circuit({ points: 1.5 }), "wrong-type boards/0/circuits/0/points", "an int"],
    ["a missing list", () => ({ visits: undefined }), "missing visits", "an array"],
    ["a missing word of a list", () => ({ edition: undefined }), "missing edition", "one of 2018+A2+A3, 2018+A4"],
    ["another kind of value", () => ({ people: "me" }), "wrong-type people", "an array"],
    [
      "a number where a reading belongs",
      ({ supply }: { supply: object }) => ({ supply: { ...supply, readings: { ze: 0.21 } } }),
      "wrong-form supply/readings/ze",
      'an object with what the display showed, such as {"shown": "1.25 Ω"}, or one that says why it was not taken, such as {"notTaken": "limited", "reason": "locked"}',
    ],
    [
      "a number without its unit",
      ({ supply }: { supply: object }) => ({ supply: { ...supply, nominalVoltage: 230 } }),
      "wrong-form supply/nominalVoltage",
      'text with a number and its unit, such as "1.25 V", or a range with "from" and "to", or an object that says why it is not known, such as {"notKnown": "limited", "reason": "locked"}',
    ],
    [
      "a word no form of the value knows",
      () => circuit({ rcd: "own" }),
      "not-in-list boards/0/circuits/0/rcd",
      "none, or an object",
    ],
    [
      "an object that lacks a part",
      () => ({ boards: [{ id: "b", name: "B", fedFrom: { board: "a" }, circuits: [] }] }),
      "missing boards/0/fedFrom/circuit",
      "a string",
    ],
    [
      "a missing member with several forms",
      () => ({ boards: [{ id: "b", name: "B", circuits: [] }] }),
      "missing boards/0/fedFrom",
      "supply, or an object",
    ],
    [
      "a fact with a name that is no identifier",
      () => ({ observations: [{ id: "o", place: "p", what: "w", facts: { "a b": true } }] }),
      "wrong-name observations/0/facts/a b",
      "up to 40 letters, digits, dots, underscores and hyphens, starting with a letter or digit",
    ],
    [
      "a photograph without a hash",
      () => ({ photographs: [{ sha256: "zz", name: "a", description: "b" }] }),
      "wrong-form photographs/0/sha256",
      "a SHA-256 as 64 digits 0 to 9 and a to f",
    ],
    [
      "an accuracy in other words",
      () => ({ instruments: [{ id: "m", kind: "k", serial: "1", accuracy: { loop: "good" } }] }),
      "not-an-accuracy instruments/0/accuracy/loop",
      'an accuracy such as "±(5 % + 3 digits)" or "2 %"',
    ],
  ])("%s", (_, change, place, expected) => {
    const issues = issuesOf(change);
    expect(issues.map(({ code, path }) => `${code} ${path}`)).toEqual([place]);
    expect(issues[0]?.expected).toBe(expected);
  });

  test.each([
    ["a minus sign", "-9 Ω", "negative"],
    ["a decimal comma", "0,35 Ω", "not-a-quantity"],
    ["not a number", "NaN Ω", "not-a-quantity"],
    ["an exponent", "1e308 Ω", "not-a-quantity"],
    ["no unit", "0.35", "unknown-unit"],
    ["another unit", "32 A", "unit-mismatch"],
  ])("an impedance with %s", (_, shown, code) => {
    const issues = issuesOf(({ supply }) => ({ supply: { ...supply, readings: { ze: { shown } } } }));
    expect(issues).toEqual([
      {
        code,
        path: "supply/readings/ze/shown",
        found: JSON.stringify(shown),
        expected: expect.stringContaining("zero or more, and one of the units Ω, "),
      },
    ]);
  });

  test("of a long list, the words that begin like the one found are named", () => {
    const [issue] = issuesOf(() => ({ inspected: [{ item: "bathrooms.bond", outcome: "in-order" }] }));
    expect(issue?.code).toBe("not-in-list");
    expect(issue?.expected).toMatch(/^one of \d\d words, such as bathrooms\.bonding, bathrooms\./);
    expect(issue?.expected.length).toBeLessThan(250);
  });

  test("an object is held against the form it is nearest to", () => {
    const ze = { notTaken: "limited", reasn: "locked" };
    const issues = issuesOf(({ supply }) => ({ supply: { ...supply, readings: { ze } } }));
    expect(issues.map(({ code, path }) => `${code} ${path}`)).toEqual([
      "missing supply/readings/ze/reason",
      "unknown-member supply/readings/ze/reasn",
    ]);
  });

  test("a temperature below zero is a temperature", () => {
    const file = { ...smallestFile(), conditions: { conductorTemperature: { shown: "-3 °C" } } };
    expect(parseInspectionData(file).ok).toBe(true);
  });

  test("the limits of a range have no open end", () => {
    const cable = { length: { from: ">12 m", to: "20 m" } };
    expect(issuesOf(() => circuit({ cable })).map(({ code, path }) => `${code} ${path}`)).toEqual([
      "open-limit boards/0/circuits/0/cable/length/from",
    ]);
  });
});
