import {
  type Measured,
  measured,
  parseAccuracy,
  parseWritten,
  rangeOf,
  type Taken,
  TERM,
  type Term,
  type Written,
} from "@good-grounds/core";
import { FIELDS_AT } from "@good-grounds/inspection";
import { describe, expect, test } from "vitest";
import { covarianceOf, doubtedReading, lessOf, standardOf, sumOf } from "./index.ts";

function reading(term: Term<"ohm">, text: string, accuracy: string | null, taken: Taken = { instrument: "m" }) {
  const stated = accuracy === null ? null : (parseAccuracy(accuracy) ?? null);
  return measured(term, parseWritten(text, "ohm") as Written<"ohm">, [], stated, taken);
}

const r1 = (text: string, accuracy: string | null, taken?: Taken) => reading(TERM.ringLine, text, accuracy, taken);
const zs = (text: string, accuracy: string | null, taken?: Taken) => reading(TERM.measuredZs, text, accuracy, taken);
const standard = (leaf: Measured<"ohm">) => standardOf(doubtedReading(leaf));

describe("one reading, one doubt", () => {
  test("0.44 Ω ±(2 % + 2 digits): 0.0288 Ω of the meter, 0.02 Ω of the leads, 0.01 Ω of contacts", () => {
    const leaf = r1("0.44 Ω", "±(2 % + 2 digits)");
    const limits = { meter: 0.02 * 0.44 + 0.02, leads: 0.02, contact: 0.01 };
    expect(leaf.high).toBeCloseTo(0.44 + limits.meter + limits.leads, 12);
    // Contacts only ever add to what is shown.
    expect(leaf.low).toBeCloseTo(0.44 - limits.meter - limits.leads - limits.contact, 12);
    expect(standard(leaf)).toBeCloseTo(Math.hypot(...Object.values(limits)) / Math.sqrt(3), 12);
    expect(leaf.detail.grade).toBe("stated");
  });

  test("an accuracy without digits leaves the rounding of what was written", () => {
    const leaf = zs("0.44 Ω", "2 %");
    expect(leaf.high).toBeCloseTo(0.44 + 0.0088 + 0.005, 12);
    expect(standard(leaf)).toBeCloseTo(Math.hypot(0.0088, 0.005, 0.02) / Math.sqrt(3), 12);
  });

  test("without stated accuracy a usual instrument stands in, and the reading says so", () => {
    const leaf = zs("0.44 Ω", null);
    expect(leaf.detail).toMatchObject({ grade: "usual", accuracy: null });
    expect(leaf.high).toBeCloseTo(0.44 + 0.05 * 0.44 + 0.05, 12);
  });

  test("what two readings of one meter and range share cancels in their difference, and adds up in their sum", () => {
    const [a, b] = [zs("1.20 Ω", "±(5 % + 3 digits)"), zs("0.35 Ω", "±(5 % + 3 digits)")].map((one) =>
      doubtedReading(one),
    );
    if (a === undefined || b === undefined) throw new Error("two readings were made");
    // Half the variance of the percentage is the gain of the meter on that range.
    expect(covarianceOf(a, b)).toBeCloseTo((0.5 * 0.06 * 0.0175) / 3, 12);
    const [plus, minus] = [standardOf(sumOf(a, b)) ** 2, standardOf(lessOf(a, b)) ** 2];
    expect(plus - minus).toBeCloseTo(4 * covarianceOf(a, b), 12);
    const other = doubtedReading(zs("0.35 Ω", "±(5 % + 3 digits)", { instrument: "another" }));
    expect(covarianceOf(a, other)).toBe(0);
  });

  test("leads are shared by continuity readings since one nulling, whatever their size", () => {
    const since = (name: string): Taken => ({ instrument: "m", leads: { since: name, half: 0.03 } });
    const [a, b, c] = ["1", "1", "2"].map((name) => doubtedReading(r1("0.44 Ω", "±(0 % + 2 digits)", since(name))));
    if (a === undefined || b === undefined || c === undefined) throw new Error("three readings were made");
    expect(covarianceOf(a, b)).toBeCloseTo(0.03 ** 2 / 3, 12);
    expect(covarianceOf(a, c)).toBe(0);
  });

  test("the gain of a meter goes with its serial number from job to job, all else stays with the job", () => {
    const of = (id: string, serial: string) => ({ id, serialOf: () => serial });
    const leaf = () => r1("0.44 Ω", "±(2 % + 2 digits)");
    const then = doubtedReading(leaf(), of("then", "77"));
    expect(covarianceOf(then, doubtedReading(leaf(), of("now", "77")))).toBeCloseTo((0.5 * 0.0088 ** 2) / 3, 12);
    expect(covarianceOf(then, doubtedReading(leaf(), of("now", "78")))).toBe(0);
  });
});

test("every field of the file is read on the range that its quantity is believed on", () => {
  const read = Object.entries(FIELDS_AT).flatMap(([place, fields]) =>
    Object.entries(fields).flatMap(([name, { about, range }]) =>
      range === undefined ? [] : [[`${place}/${name}`, range, "unit" in about ? rangeOf(about) : undefined] as const],
    ),
  );
  expect(read.length).toBeGreaterThan(20);
  expect(read.filter(([, range, believed]) => range !== believed)).toEqual([]);
});
