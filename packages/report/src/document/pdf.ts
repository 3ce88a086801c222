import { fonts } from "../pdf/fonts.ts";
import { layOut } from "../pdf/layout.ts";
import type { Document } from "./model.ts";
import { typstOf } from "./typst.ts";

/**
 * A document as PDF/A-3a, tagged, with its attachments inside. The same document gives the same bytes, whatever fonts the
 * machine has. Throws {@link ReportRefused} where the layout engine refuses it.
 */
export function pdfOf(document: Document): Uint8Array {
  const { template, files } = typstOf(document, fonts().covers);
  return layOut(template, files);
}
