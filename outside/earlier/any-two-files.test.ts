import { type InspectionFile, resolveInstallation } from "@good-grounds/inspection";
import { thenAndNow } from "@good-grounds/readings";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { renderThenAndNow } from "../../packages/report/src/text/then-and-now.ts";
import { arbitraryFile } from "../files/arbitrary-file.ts";
import { fileOfSchema } from "../files/schema-file.ts";

/** Half of them sensible, half of them anything the schema lets through. */
const anyFile = fc.oneof(arbitraryFile, fileOfSchema);

const on = (file: InspectionFile, day: string, next?: string) =>
  resolveInstallation({
    ...file,
    inspectedOn: day,
    ...(next === undefined ? {} : { conclusion: { nextInspection: { by: next, reason: "five years" } } }),
  });

describe("any files the schema allows", () => {
  test("are compared without a crash; every circuit is accounted for once, and no figure is made of nothing", () => {
    fc.assert(
      fc.property(anyFile, anyFile, anyFile, (a, b, c) => {
        const now = on(a, "2026-10-06", "2031-10-06");
        const past = [on(b, "2016-10-06"), on(c, "2021-10-06")];
        const result = thenAndNow(now, past);
        for (const [i, one] of result.earlier.entries()) {
          const present = [
            ...one.circuits.flatMap((pair) => pair.now),
            ...one.unsettled.flatMap((group) => group.now),
            ...one.onlyNow,
          ];
          const gone = [
            ...one.circuits.flatMap((pair) => pair.past),
            ...one.unsettled.flatMap((group) => group.past),
            ...one.onlyThen,
          ];
          expect(new Set(present.map(({ path }) => path)).size).toBe(present.length);
          expect(present.length).toBe(now.circuits.length);
          expect(new Set(gone.map(({ path }) => path)).size).toBe(gone.length);
          expect(gone.length).toBe(past[i]?.circuits.length);
          for (const { change, why, chance } of one.circuits.flatMap((pair) => pair.readings)) {
            expect(why === null).toBe(change !== "cannot-say");
            if (why === null) expect(chance).toBeGreaterThanOrEqual(0);
          }
        }
        for (const { projected, crossing } of result.trends) {
          for (const { value, low, high } of projected) {
            expect(low).toBeLessThanOrEqual(value);
            expect(value).toBeLessThanOrEqual(high);
          }
          if (crossing !== null && crossing.expected !== null)
            expect(crossing.earliest <= crossing.expected).toBe(true);
        }
        for (const line of renderThenAndNow(result, now, { width: 80, all: true, grounds: true }))
          expect(line).not.toMatch(/NaN|undefined|Infinity/);
      }),
      { numRuns: 50 },
    );
  });

  test("a file beside itself has no change, and what was matched is itself", () => {
    fc.assert(
      fc.property(anyFile, (file) => {
        const { earlier } = thenAndNow(on(file, "2026-10-06"), [on(file, "2021-10-06")]);
        for (const { circuits, supply } of earlier) {
          for (const { past, now, kind } of circuits) if (kind === "same") expect(past[0]?.path).toEqual(now[0]?.path);
          for (const { change } of [...supply, ...circuits.flatMap(({ readings }) => readings)])
            expect(["within", "cannot-say"]).toContain(change);
        }
      }),
      { numRuns: 50 },
    );
  });
});
