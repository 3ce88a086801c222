import { forOthers, printInspection } from "@good-grounds/inspection";
import type { Document } from "../document/model.ts";
import { type TypstDocument, typstOf } from "../document/typst.ts";
import type { ReportInput } from "../input.ts";
import { reportOf } from "../pages/report.ts";
import { renderWeighing } from "../text/weighing.ts";
import { Drawings } from "./drawings.ts";
import { reportSections } from "./model.ts";

export { coverageOf } from "./coverage.ts";

/** Columns of the attached working. */
const WORKINGS_WIDTH = 100;

/** The report of an inspection whose file is `json` as text: what it says, in which order, with what is attached to it. */
export function reportAsDocument(input: ReportInput, json: string): Document {
  const workings = renderWeighing(input, { width: WORKINGS_WIDTH, all: true, grounds: true, misfits: false });
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
    { name: working[0], data: workings, kind: "text/plain", relationship: "supplement", description: working[1] },
  ]);
}

/**
 * The report before it is laid out; the same on every device. `json` is the inspection file as text, `covers` tells for
 * which characters the fonts have a glyph: others are printed as code points.
 */
export function reportDocument(input: ReportInput, json: string, covers: (point: number) => boolean): TypstDocument {
  return typstOf(reportAsDocument(input, json), covers);
}

/** The original text, byte for byte; printed anew only where notes that are for the inspector alone have to stay out. */
function attachmentOf({ installation: { file } }: ReportInput, original: string): string {
  const shared = forOthers(file);
  return shared === file ? original : printInspection(shared);
}
