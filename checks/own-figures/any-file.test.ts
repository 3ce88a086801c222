import { parseInspectionData, resolveInstallation } from "@good-grounds/inspection";
import { lookAtOwnFigures } from "@good-grounds/judgement";
import { renderOwnFigures } from "@good-grounds/report";
import fc from "fast-check";
import { expect, test } from "vitest";
import { smallestFile } from "../files/arbitrary-file.ts";
import { fileOfSchema } from "../files/schema-file.ts";

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
    { numRuns: 100 },
  );
});

test("very many circuits, all of them alike, come to an end", { timeout: 60_000 }, () => {
  const circuit = (i: number) => ({
    id: `c${i}`,
    designation: String(i),
    description: "lights",
    shape: "radial",
    cable: { material: "copper", line: "1.5 mm²", cpc: "1 mm²", length: "20 m" },
    readings: {
      r1r2: { shown: "0.58 Ω" },
      zs: { shown: "0.79 Ω" },
      insulationLiveLive: { shown: "612 MΩ" },
      insulationLiveEarth: { shown: "612 MΩ" },
    },
  });
  const data = {
    ...smallestFile(),
    boards: Array.from({ length: 20 }, (_, i) => ({
      id: `b${i}`,
      name: `Board ${i}`,
      fedFrom: "supply",
      readings: { zdb: { shown: "0.20 Ω" } },
      circuits: Array.from({ length: 400 }, (__, j) => circuit(j)),
    })),
  };
  const parsed = parseInspectionData(data);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues.slice(0, 3)));
  const started = performance.now();
  const { toConfirm } = lookAtOwnFigures(resolveInstallation(parsed.file), { ...parsed.file, id: "earlier" });
  // 8,000 circuits; what grows with their square would take hours.
  expect(performance.now() - started).toBeLessThan(30_000);
  expect(toConfirm.map(({ check }) => check)).toEqual(
    expect.arrayContaining(["identical-insulation", "little-spread", "copied-schedule"]),
  );
});
