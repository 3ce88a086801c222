import { forOthers, printInspection } from "@good-grounds/inspection";
import { htmlOf } from "../document/html.ts";
import type { Document } from "../document/model.ts";
import { type TypstDocument, typstOf } from "../document/typst.ts";
import type { ReportInput } from "../input.ts";
import { reportOf } from "../pages/report.ts";
import { workingsOf } from "../pages/workings.ts";
import { Drawings } from "./drawings.ts";
import { reportSections } from "./model.ts";

export { coverageOf } from "./coverage.ts";
export { fromMemory } from "./sections/workings.ts";

/** The report of an inspection whose file is `json` as text: what it says, in which order, with what is attached to it. */
export function reportAsDocument(input: ReportInput, json: string): Document {
  const drawings = new Drawings();
  const sections = reportSections(input, drawings);
  const [source, working] = sections.signatures.attachments;
  return reportOf(sections, drawings, [
    {
      name: source[0],
      data: attachmentOf(input, json),
      kind: "application/json",
      relationship: "source",
      description: source[1],
    },
    {
      name: working[0],
      data: htmlOf(workingsOf(input, { frame: sections, ...sections })),
      kind: "text/html",
      relationship: "supplement",
      description: working[1],
    },
  ]);
}

/**
 * The report before it is laid out; the same on every device. `json` is the inspection file as text, `covers` tells for
 * which characters the fonts have a glyph: others are printed as code points.
 */
export function reportDocument(input: ReportInput, json: string, covers: (point: number) => boolean): TypstDocument {
  return typstOf(reportAsDocument(input, json), covers);
}

/** The report as one HTML file that needs nothing beside it; evidence and workings stay with the PDF. */
export function reportHtml(input: ReportInput): string {
  const drawings = new Drawings();
  return htmlOf(reportOf(reportSections(input, drawings), drawings, []));
}

/** The original text, byte for byte; printed anew only where notes that are for the inspector alone have to stay out. */
function attachmentOf({ installation: { file } }: ReportInput, original: string): string {
  const shared = forOthers(file);
  return shared === file ? original : printInspection(shared);
}
