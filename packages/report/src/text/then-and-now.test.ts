import { parseInspection, parseInspectionData, resolveInstallation } from "@good-grounds/inspection";
import { thenAndNow } from "@good-grounds/readings";
import { describe, expect, test } from "vitest";
import { changed, EXAMPLE, inputOf } from "../../../../outside/reports/example.ts";
import { writeReportPdf } from "../pdf/index.ts";
import { renderThenAndNow } from "./then-and-now.ts";
import { renderWeighing } from "./weighing.ts";

type Edit = (file: { boards: { name: string; circuits: Record<string, never>[] }[] } & Record<string, unknown>) => void;

/** The house of the example as it was in earlier years, told with other names; `edit` changes more. */
function earlier(day: string, edit: Edit = () => {}) {
  const file = JSON.parse(EXAMPLE.replaceAll("2026-10-06", day));
  Object.assign(file, { id: `old-${day}`, signatures: [], observations: [], inspected: [], photographs: [] });
  delete file.conclusion;
  file.boards[0].name = "Fuse board";
  file.boards[0].circuits[0].description = "Ring main downstairs";
  edit(file);
  const parsed = parseInspectionData(file);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return resolveInstallation(parsed.file);
}

const input = inputOf(EXAMPLE);
const reading =
  (name: string, shown: string, circuit: number): Edit =>
  ({ boards }) => {
    const readings = boards[0]?.circuits[circuit]?.readings as unknown as Record<string, { shown: string }>;
    Object.assign(readings[name] ?? {}, { shown });
  };
const garden = 8;
const both = [
  earlier("2016-09-30", reading("insulationLiveEarth", "210 MΩ", garden)),
  earlier("2021-09-30", reading("insulationLiveEarth", "18.0 MΩ", garden)),
];
const compared = { ...input, thenAndNow: thenAndNow(input.installation, both) };

describe("then and now", () => {
  test("is nowhere without an earlier file", () => {
    expect(renderWeighing(input, { all: true })).not.toContain("Then and now");
    expect(inputOf(EXAMPLE).thenAndNow).toBeUndefined();
  });

  test.each([40, 80, 100])("fits %i columns, with everything and without", (width) => {
    for (const all of [false, true]) {
      for (const line of renderThenAndNow(compared.thenAndNow, input.installation, { width, all, grounds: all }))
        expect([...line].length).toBeLessThanOrEqual(width);
    }
  });

  test("names the circuit that has changed by both of its names, and where it leads", () => {
    const text = renderWeighing(compared, { width: 100 }).replaceAll(/\s+/g, " ");
    expect(text).toContain("garden shed (was Fuse board, 9: garden shed), insulation to earth: 210 MΩ → 1.3");
    expect(text).toContain("9 circuits matched.");
    expect(text).toMatch(/210 MΩ \(2016\), 18\.0 MΩ \(2021\), 1\.3\d MΩ \(2026\)/);
    expect(text).toContain("The line reaches the limit of 1.00 MΩ about 202");
    expect(text).not.toContain("R1+R2:");
  });

  test("says with everything shown how circuits were matched and what could not be told", () => {
    const text = renderWeighing(compared, { width: 100, all: true }).replaceAll(/\s+/g, " ");
    expect(text).toContain(
      "Consumer unit, 1: sockets, ground floor was Fuse board, 1: Ring main downstairs (99 % sure: ",
    );
    expect(text).toContain("cannot say: where the display ended");
  });

  test("is a section of the printed report, and only then", () => {
    const has = (pdf: Uint8Array) => Buffer.from(pdf).toString("latin1").length;
    const [plain, longer] = [input, compared].map((one) => writeReportPdf(one, { json: EXAMPLE })) as [
      Uint8Array,
      Uint8Array,
    ];
    expect(has(longer)).toBeGreaterThan(has(plain));
    expect(Buffer.from(writeReportPdf(compared, { json: EXAMPLE })).equals(Buffer.from(longer))).toBe(true);
  });

  test("names of circuits are never markup or control characters", () => {
    const wicked = changed((file) => {
      const boards = file.boards as { name: string; circuits: { description: string }[] }[];
      if (boards[0]?.circuits[0] !== undefined) boards[0].circuits[0].description = '#panic() \u202e <b> "$x$"';
    });
    const parsed = parseInspection(wicked);
    if (!parsed.ok) throw new Error("refused");
    const again = inputOf(wicked);
    const result = { ...again, thenAndNow: thenAndNow(again.installation, both) };
    expect(renderWeighing(result, { all: true })).not.toContain("\u202e");
    expect(() => writeReportPdf(result, { json: wicked })).not.toThrow();
  });
});
