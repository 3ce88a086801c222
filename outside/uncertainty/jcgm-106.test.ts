import { assumed, type Evidence, matter, measured, type Quantity, Reckoner, TERM } from "@good-grounds/core";
import { normalCdf } from "@good-grounds/measurement";
import { comparedConformity } from "@good-grounds/readings";
import { describe, expect, test } from "vitest";

const RECKON = new Reckoner(true);
const QUESTION = matter("invented", "an invented comparison");

/** A value with a nearly normal error of the standard deviation asked for: the sum of 60 rectangular ones. */
function nearlyNormal(value: number, deviation: number): Evidence<"volt"> {
  const parts = 60;
  const half = deviation * Math.sqrt(3 / parts);
  const each = value / parts;
  const written = {
    text: "invented",
    value: each as Quantity<"volt">,
    resolution: half as Quantity<"volt">,
    bound: "exact" as const,
  };
  const oneDigit = { text: "±(0 % + 1 digits)", ofReading: 0, digits: 1 };
  return RECKON.sum(
    TERM.loopVoltage,
    ...Array.from({ length: parts }, () => measured(TERM.loopVoltage, written, [], oneDigit)),
  );
}

/** Worked figures of JCGM 106:2012, as far as they are known here; the document was not at hand. */
describe("worked examples of JCGM 106:2012", () => {
  test("breakdown voltage of a Zener diode: −5.47 V, u = 0.05 V, limit −5.40 V: 0.92 (7.3)", () => {
    // Held the other way up: 5.47 V at least 5.40 V.
    const limit = assumed(TERM.loopVoltage, 5.4, "tolerance limit");
    const found = comparedConformity(RECKON.atLeast(QUESTION, nearlyNormal(5.47, 0.05), limit));
    expect(found?.probability).toBeCloseTo(0.92, 2);
    expect(normalCdf((5.47 - 5.4) / 0.05)).toBeCloseTo(0.92, 2);
  });

  test.each([
    [0.8, 0.84],
    [0.9, 1.28],
    [0.95, 1.64],
    [0.99, 2.33],
    [0.999, 3.09],
  ])("Table 1: a conformance probability of %f is reached at z = %f", (chance, z) => {
    expect(normalCdf(z - 0.005)).toBeLessThan(chance);
    expect(normalCdf(z + 0.006)).toBeGreaterThan(chance);
  });

  test("speed limit 100 km/h, u = 2 %, certain to 99.9 %: from 107 km/h (guarded rejection, 8.3.3)", () => {
    const certain = (speed: number) => normalCdf((speed - 100) / (0.02 * speed));
    expect(certain(107)).toBeGreaterThanOrEqual(0.999);
    expect(certain(106)).toBeLessThan(0.999);
  });

  test("guard band w = U: at the acceptance limit at most 2.3 % are beyond the tolerance limit (8.3.2)", () => {
    const limit = assumed(TERM.loopVoltage, 10, "tolerance limit");
    const at = (value: number) => comparedConformity(RECKON.atMost(QUESTION, nearlyNormal(value, 0.05), limit));
    expect(1 - (at(9.9)?.probability ?? 0)).toBeCloseTo(0.0228, 3);
  });
});
