import { forOthers, printInspection } from "@good-grounds/inspection";
import type { ReportInput } from "../input.ts";
import { renderWeighing } from "../text/weighing.ts";
import { fonts } from "./fonts.ts";
import { layOut } from "./layout.ts";
import { reportModel } from "./model.ts";
import { TEMPLATE } from "./template.ts";
import { visibleData, visibleDrawing } from "./visible.ts";

export { ReportRefused } from "./layout.ts";

/** Columns of the attached working. */
const WORKINGS_WIDTH = 100;

/**
 * Makes the condition report as PDF/A-3a, tagged, with two files attached: the inspection as it is in `source`, without
 * what the inspector wrote for themselves alone, and the full working of every calculation. The same input and source give
 * the same bytes, whatever fonts the machine has. Throws {@link ReportRefused} where the layout engine refuses the document.
 */
export function writeReportPdf(input: ReportInput, source: { readonly json: string }): Uint8Array {
  const { covers } = fonts();
  const { data, drawings } = reportModel(input);
  const workings = renderWeighing(input, { width: WORKINGS_WIDTH, all: true, grounds: true, misfits: false });
  return layOut(
    TEMPLATE,
    new Map([
      ...drawings.map(({ name, svg }) => [name, visibleDrawing(svg, covers)] as const),
      ["data.json", JSON.stringify(visibleData(data, covers))] as const,
      ["inspection.json", attachmentOf(input, source.json)] as const,
      ["workings.txt", workings] as const,
    ]),
  );
}

/** The original text, byte for byte; printed anew only where notes that are for the inspector alone have to stay out. */
function attachmentOf({ installation: { file } }: ReportInput, original: string): string {
  const shared = forOthers(file);
  return shared === file ? original : printInspection(shared);
}
