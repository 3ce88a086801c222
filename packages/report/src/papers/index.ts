import type { Document } from "../document/model.ts";
import type { ReportInput } from "../input.ts";
import { circuitChart } from "./circuit-chart/circuit-chart.ts";
import { dangerNotice } from "./danger-notice/danger-notice.ts";
import { letter } from "./letter/letter.ts";
import { tenantNote } from "./tenant-note/tenant-note.ts";
import { worksList } from "./works-list/document.ts";

/** Papers made from one inspection beside the report, each for one reader. */
export const PAPER_KINDS = ["letter", "works", "notice", "chart", "tenant"] as const;
export type PaperKind = (typeof PAPER_KINDS)[number];

const PAPER: Readonly<Record<PaperKind, (input: ReportInput) => Document>> = Object.freeze({
  letter,
  works: worksList,
  notice: dangerNotice,
  chart: circuitChart,
  tenant: tenantNote,
});

/** A paper for one reader, from the same evidence as the report; nothing is judged anew. */
export function paperOf(kind: PaperKind, input: ReportInput): Document {
  return PAPER[kind](input);
}
