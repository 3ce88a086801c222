import type { ReportInput } from "../input.ts";
import { reportDocument } from "./document.ts";
import { fonts } from "./fonts.ts";
import { layOut } from "./layout.ts";

export { pdfOf } from "../document/pdf.ts";
export { ReportRefused } from "./layout.ts";

/**
 * Makes the condition report as PDF/A-3a, tagged, with two files attached: the inspection as it is in `source`, without
 * what the inspector wrote for themselves alone, and the full working of every calculation. The same input and source give
 * the same bytes, whatever fonts the machine has. Throws {@link ReportRefused} where the layout engine refuses the document.
 */
export function writeReportPdf(input: ReportInput, source: { readonly json: string }): Uint8Array {
  const { template, files } = reportDocument(input, source.json, fonts().covers);
  return layOut(template, files);
}
