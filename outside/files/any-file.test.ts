import { missingOf } from "@good-grounds/core";
import { resolveInstallation } from "@good-grounds/inspection";
import { outcomeOf, reasonObservations, weigh } from "@good-grounds/judgement";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fileOfSchema } from "./schema-file.ts";

const findingsOf = (installation: ReturnType<typeof resolveInstallation>, grounds: boolean) => {
  const { supply, boards, circuits } = weigh(installation, grounds);
  return [...supply, ...boards.flat(), ...circuits.flat()];
};

describe("whatever file the published schema allows", () => {
  test("is weighed without an error, the same with and without grounds, and what is open names what is missing", () => {
    fc.assert(
      fc.property(fileOfSchema, (file) => {
        const installation = resolveInstallation(file);
        const findings = findingsOf(installation, true);
        expect(findingsOf(installation, false).map(({ judgement }) => judgement.verdict)).toEqual(
          findings.map(({ judgement }) => judgement.verdict),
        );
        for (const { judgement, check } of findings) {
          if (judgement.verdict !== "not-known") continue;
          expect(missingOf(judgement).length, check).toBeGreaterThan(0);
        }
        const weighing = weigh(installation, false);
        const outcome = outcomeOf(installation, weighing, reasonObservations(installation, weighing), []);
        expect(outcome.open.length).toBeLessThanOrEqual(file.observations.length);
        expect(outcome.outcome === "satisfactory").toBe(outcome.because.length + outcome.points.length === 0);
      }),
      { numRuns: 200 },
    );
  });
});
