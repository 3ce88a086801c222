import { assemble } from "@good-grounds/assembly";
import { parseInspectionData, printInspection } from "@good-grounds/inspection";
import { plainText } from "@good-grounds/report/document";
import { writeReportPdf } from "@good-grounds/report/pdf";
import { reportAsDocument } from "@good-grounds/report/pdf/document";
import { describe, expect, test } from "vitest";
import { BOARDS, CIRCUITS, largeJob, OBSERVATIONS } from "./large-job.ts";

describe("a large job", () => {
  const { file, photographs } = largeJob();
  const input = { ...assemble(file, true), photographs };
  const json = printInspection(file);

  test("is a sound file of the size that is asked for", () => {
    expect(parseInspectionData(file).ok).toBe(true);
    expect(file.boards.length).toBe(BOARDS);
    expect(file.boards.flatMap(({ circuits }) => circuits).length).toBe(CIRCUITS);
    expect(file.observations.length).toBe(OBSERVATIONS);
  });

  test("loses no board, no circuit, no observation and no photograph", () => {
    const words = plainText(reportAsDocument(input, json));
    for (const { name, location, circuits } of file.boards) {
      expect(words).toContain(`${name}\n`);
      expect(words).toContain(location);
      for (const { description } of circuits) expect(words).toContain(description);
    }
    for (const { place, choice } of file.observations) {
      expect(words).toContain(place.slice(1));
      expect(words).toContain(choice?.reason);
    }
    for (const { description, name } of file.photographs)
      expect(words).toContain(`${description}\n${description} (${name})`);
  });

  test("is a document that can be sent", () => {
    expect(writeReportPdf(input, { json }).length).toBeLessThan(25e6);
  });
});
