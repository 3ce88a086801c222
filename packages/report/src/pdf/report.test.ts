import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseInspection, parseInspectionData, printInspection, resolveInstallation } from "@good-grounds/inspection";
import { CHECKS, outcomeOf, weigh } from "@good-grounds/judgement";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { needTool } from "../../../../checks/tools.ts";
import type { ReportInput } from "../input.ts";
import { writeReportPdf } from "./index.ts";

function inputOf(text: string): ReportInput {
  const parsed = parseInspection(text);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  const installation = resolveInstallation(parsed.file);
  return {
    installation,
    weighing: weigh(installation),
    outcome: outcomeOf(parsed.file),
    checks: CHECKS.map(({ id, title, formula, regulations }) => ({ id, title, formula, regulations })),
    edition: { id: parsed.file.edition, label: "BS 7671:2018+A4:2026", notes: [] },
    curves: [],
  };
}

const example = readFileSync(new URL("../../../../examples/terraced-house.json", import.meta.url), "utf8");
const hasTools = needTool("qpdf") && needTool("pdfinfo");

let folder = "";
let pdf = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "good-grounds-report-"));
  pdf = join(folder, "report.pdf");
  writeFileSync(pdf, writeReportPdf(inputOf(example), { json: example }));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const tool = (command: string, ...args: string[]) =>
  execFileSync(command, args, { encoding: "utf8", stdio: ["ignore", "pipe", "ignore"] });

describe("the printed report", () => {
  test("is byte for byte the same for the same input", () => {
    expect(Buffer.from(writeReportPdf(inputOf(example), { json: example })).equals(readFileSync(pdf))).toBe(true);
  });

  test.skipIf(!hasTools)("is a sound PDF file", () => {
    expect(tool("qpdf", "--check", pdf)).toContain("No syntax or stream encoding errors found");
  });

  test.skipIf(!hasTools)("says that it is PDF/A-3a, has an output intent and a title", () => {
    const meta = tool("pdfinfo", "-meta", pdf);
    expect(meta).toMatch(/pdfaid:part>3</);
    expect(meta).toMatch(/pdfaid:conformance>A</i);
    expect(readFileSync(pdf, "latin1")).toContain("/OutputIntents");
    expect(tool("pdfinfo", pdf)).toMatch(/Title:\s+Electrical condition report, 12 Example Terrace/);
    expect(tool("pdfinfo", pdf)).toMatch(/Tagged:\s+yes/);
  });

  test.skipIf(!hasTools)("has its headings, tables and alternative texts in the structure", () => {
    const structure = tool("pdfinfo", "-struct-text", pdf);
    for (const heading of [
      "Observations and their reasons",
      "Circuits and readings",
      "Instruments",
      "Sources of the figures",
    ]) {
      expect(structure).toContain(heading);
    }
    expect(structure).toMatch(/\bH1\b/);
    expect(structure).toMatch(/\bTH\b/);
    expect(structure).toMatch(/Figure/);
  });

  test.skipIf(!hasTools)("carries the inspection file unchanged", () => {
    tool("pdfdetach", "-saveall", "-o", folder, pdf);
    expect(readFileSync(join(folder, "inspection.json"), "utf8")).toBe(example);
    expect(tool("pdfdetach", "-list", pdf)).toContain("1 embedded files");
  });

  test.skipIf(!hasTools)("embeds every font", () => {
    const rows = tool("pdffonts", pdf).trim().split("\n").slice(2);
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) expect(row).toMatch(/\s(yes)\s+(yes)\s+(yes)\s+\d+\s+0$/);
  });

  test.skipIf(!hasTools)("shows on its first page what a landlord needs", () => {
    const first = tool("pdftotext", "-l", "1", "-layout", pdf, "-");
    for (const words of [
      "Unsatisfactory",
      "INVENTED EXAMPLE",
      "What was not seen",
      "By 2031-10-05",
      "Made safe on the day",
      "FI",
    ]) {
      expect(first).toContain(words);
    }
  });
});

describe("hostile and empty input", () => {
  const change = (edit: (file: Record<string, unknown>) => void) => {
    const file = JSON.parse(example);
    edit(file);
    const parsed = parseInspectionData(file);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
    return printInspection(parsed.file);
  };

  test.skipIf(!hasTools)("text that looks like markup stays text", () => {
    const nasty =
      '#import "x": * $sum$ [*bold*] _it_ `raw` @ref <label> \\ // /* */ "quoted" #{panic()} 🙂 שלום مرحبا 灯';
    const text = change((file) => {
      const [first] = file.observations as Record<string, unknown>[];
      Object.assign(first as object, { what: nasty, place: nasty });
    });
    const path = join(folder, "hostile.pdf");
    writeFileSync(path, writeReportPdf(inputOf(text), { json: text }));
    const words = tool("pdftotext", "-layout", path, "-").replaceAll(/\s+/g, " ");
    expect(words).toContain('#import "x": * $sum$ [*bold*] _it_ `raw` @ref <label>');
    expect(words).toContain("#{panic()}");
    expect(words).toContain("[U+1F642]");
  });

  test("an inspection of which next to nothing is known still makes a report", () => {
    const text = change((file) => {
      Object.assign(file, {
        supply: { bonding: [] },
        boards: [
          { id: "b", name: "Board", fedFrom: "supply", circuits: [{ id: "c", designation: "1", description: "?" }] },
        ],
        observations: [],
        inspected: [],
        limitations: [],
        instruments: [],
        conditions: {},
        signatures: [],
        photographs: [],
      });
      delete file.conclusion;
      file.extent = { covered: "x", sampling: [] };
    });
    expect(writeReportPdf(inputOf(text), { json: text }).length).toBeGreaterThan(20_000);
  });

  test("very long words and paragraphs are laid out", () => {
    const text = change((file) => {
      const [first] = file.observations as Record<string, unknown>[];
      Object.assign(first as object, { what: `${"x".repeat(1500)} ${"word ".repeat(400)}`.slice(0, 4000).trim() });
    });
    expect(writeReportPdf(inputOf(text), { json: text }).length).toBeGreaterThan(100_000);
  });
});
