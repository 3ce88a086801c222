import { forOthers, printInspection } from "@good-grounds/inspection";
import type { ReportInput } from "../input.ts";
import { renderWeighing } from "../text/weighing.ts";
import { reportModel } from "./model.ts";
import { TEMPLATE } from "./template.ts";
import { visibleData, visibleDrawing } from "./visible.ts";

export { coverageOf } from "./coverage.ts";

/** Columns of the attached working. */
const WORKINGS_WIDTH = 100;

/** A report as a layout engine takes it: the template, and the files it reads and attaches, by name. */
export interface ReportDocument {
  readonly template: string;
  readonly files: ReadonlyMap<string, string>;
}

/**
 * The report before it is laid out; the same on every device. `json` is the inspection file as text, `covers` tells for
 * which characters the fonts have a glyph: others are printed as code points.
 */
export function reportDocument(input: ReportInput, json: string, covers: (point: number) => boolean): ReportDocument {
  const { data, drawings } = reportModel(input);
  const workings = renderWeighing(input, { width: WORKINGS_WIDTH, all: true, grounds: true, misfits: false });
  return {
    template: TEMPLATE,
    files: new Map([
      ...drawings.map(({ name, svg }) => [name, visibleDrawing(svg, covers)] as const),
      ["data.json", JSON.stringify(visibleData(data, covers))] as const,
      ["inspection.json", attachmentOf(input, json)] as const,
      ["workings.txt", workings] as const,
    ]),
  };
}

/** The original text, byte for byte; printed anew only where notes that are for the inspector alone have to stay out. */
function attachmentOf({ installation: { file } }: ReportInput, original: string): string {
  const shared = forOthers(file);
  return shared === file ? original : printInspection(shared);
}
