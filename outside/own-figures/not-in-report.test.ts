import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseInspection, resolveInstallation } from "@good-grounds/inspection";
import { lookAtOwnFigures, OWN_FIGURES_LOOKS } from "@good-grounds/readings";
import { renderWeighing } from "@good-grounds/report";
import { writeReportPdf } from "@good-grounds/report/pdf";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { changed, inputOf } from "../reports/example.ts";
import { needTool } from "../tools.ts";

const NOTE = "Quagga: the dead tests were typed in on the train.";

/** The example with rows that changed places, readings after leaving, and a note to it. */
const TEXT = changed((file) => {
  const [board] = file.boards as { circuits: { readings: unknown }[] }[];
  const [a, b] = [board?.circuits[2], board?.circuits[8]];
  if (a !== undefined && b !== undefined) [a.readings, b.readings] = [b.readings, a.readings];
  for (const visit of file.visits as { left: string }[]) visit.left = "2026-10-06T11:00:00+01:00";
  file.ownFigures = [{ check: "swapped-rows", note: NOTE }];
});

/** Words that stand in what is shown to the inspector, and nowhere else. */
function privateWords(): readonly string[] {
  const parsed = parseInspection(TEXT);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  const { toConfirm } = lookAtOwnFigures(resolveInstallation(parsed.file));
  expect(toConfirm.map(({ check }) => check)).toEqual(expect.arrayContaining(["swapped-rows", "outside-visit"]));
  return [
    "Quagga",
    "ownFigures",
    ...OWN_FIGURES_LOOKS.map(({ title }) => title),
    ...toConfirm.flatMap(({ words, check }) => [words, check]),
  ];
}

const tool = (command: string, ...args: readonly string[]) =>
  execFileSync(command, args, { maxBuffer: 1e9, stdio: ["ignore", "pipe", "ignore"] });
const flat = (text: string) => text.replaceAll("\u200b", "").replaceAll(/\s+/g, " ");

describe("what is for the inspector alone", () => {
  let folder = "";
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "good-grounds-private-"));
    writeFileSync(join(folder, "report.pdf"), writeReportPdf(inputOf(TEXT), { json: TEXT }));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  test("stands in the inspection file", () => {
    expect(TEXT).toContain("Quagga");
  });

  test("is not in the weighing, its workings included", () => {
    const words = flat(renderWeighing(inputOf(TEXT), { width: 100, all: true, grounds: true }));
    for (const word of privateWords()) expect(words, word).not.toContain(flat(word));
  });

  test.skipIf(!needTool("pdfinfo"))("is neither on the pages of the report nor in anything attached to it", () => {
    const path = join(folder, "report.pdf");
    const pages = flat(tool("pdftotext", "-layout", path, "-").toString("utf8"));
    expect(pages).toContain("Electrical");
    tool("pdfdetach", "-saveall", "-o", folder, path);
    const attached = readdirSync(folder).filter((name) => name !== "report.pdf");
    expect(attached.sort()).toEqual(["inspection.json", "workings.html"]);
    const all = [pages, ...attached.map((name) => flat(readFileSync(join(folder, name), "utf8")))];
    for (const word of privateWords()) for (const text of all) expect(text, word).not.toContain(flat(word));
  });

  test.skipIf(!needTool("pdfinfo"))("is all that the attached file lacks", () => {
    const { ownFigures, ...rest } = JSON.parse(TEXT);
    expect(ownFigures.length).toBe(1);
    expect(JSON.parse(readFileSync(join(folder, "inspection.json"), "utf8"))).toEqual(rest);
  });

  test.skipIf(!needTool("qpdf"))("is not left in the bytes of the document, however they are packed", () => {
    const plain = tool("qpdf", "--qdf", "--object-streams=disable", join(folder, "report.pdf"), "-");
    expect(plain.includes("Quagga")).toBe(false);
    expect(plain.includes("ownFigures")).toBe(false);
    // The attachment itself can be read there: what is looked for would be found.
    expect(plain.includes("GG-2026-0417")).toBe(true);
  });
});
