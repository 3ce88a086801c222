import { resolveInstallation } from "@good-grounds/inspection";
import { lookAtOwnFigures } from "@good-grounds/readings";
import { renderOwnFigures } from "@good-grounds/report";
import fc from "fast-check";
import { expect, test } from "vitest";
import { fileOfSchema } from "../files/schema-file.ts";
import { alike } from "./alike.ts";

test("whatever file the published schema allows is looked at, against any other, and shown", () => {
  fc.assert(
    fc.property(fileOfSchema, fileOfSchema, (file, earlier) => {
      const installation = resolveInstallation(file);
      const figures = lookAtOwnFigures(installation, earlier);
      const text = renderOwnFigures(figures, installation, { width: 80, all: true, earlier: earlier.id, checks: 21 });
      expect(text.length).toBeGreaterThan(100);
      for (const { chance, weight, innocent } of figures.toConfirm) {
        expect(chance === null || (chance >= 0 && chance <= 1)).toBe(true);
        expect(Number.isFinite(weight)).toBe(true);
        expect(innocent.length).toBeGreaterThan(0);
      }
    }),
    { numRuns: 30 },
  );
});

test("very many circuits, all of them alike, come to an end", () => {
  // 8,000 circuits: what grows with their square would take hours. How long it takes is measured in `bench/`.
  const installation = alike(20);
  const { toConfirm } = lookAtOwnFigures(installation, { ...installation.file, id: "earlier" });
  expect(toConfirm.map(({ check }) => check)).toEqual(
    expect.arrayContaining(["identical-insulation", "little-spread", "copied-schedule"]),
  );
});
