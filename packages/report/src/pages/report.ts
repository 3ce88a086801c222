import type { Attachment, Block, Document } from "../document/model.ts";
import { REPORT } from "../locales/report-en.ts";
import type { Drawings } from "../pdf/drawings.ts";
import type { reportSections } from "../pdf/model.ts";
import {
  dutyBlocks,
  extentBlocks,
  instrumentBlocks,
  itemBlocks,
  photographBlocks,
  recipientBlocks,
  safetyBlocks,
  signatureBlocks,
} from "./back.ts";
import { curveBlocks, findingBlocks, misfitBlocks } from "./findings.ts";
import { firstBlocks } from "./first.ts";
import { boardBlocks, diagramBlocks, originBlocks, thingBlocks } from "./installation.ts";
import { ledgerBlocks, observationBlocks } from "./observations.ts";
import { pastBlocks } from "./past.ts";

/** The sections in the order of the pages: what decides in front, what it rests on behind. */
function reportBlocks(d: ReturnType<typeof reportSections>, drawings: Drawings): readonly Block[] {
  return [
    ...firstBlocks(d.first, drawings),
    ...ledgerBlocks(d.open),
    ...extentBlocks(d.extent),
    ...observationBlocks(d.observations, drawings),
    ...originBlocks(d.origin),
    ...findingBlocks(d.findings, drawings),
    ...misfitBlocks(d.misfits, drawings),
    ...boardBlocks(d.boards, drawings),
    ...thingBlocks(d.things),
    ...diagramBlocks(d.diagram, drawings),
    ...curveBlocks(d.curves, drawings),
    ...pastBlocks(d.past, drawings),
    ...itemBlocks(d.items),
    ...safetyBlocks(d.safety),
    ...instrumentBlocks(d.instruments),
    ...photographBlocks(d.photographs),
    ...dutyBlocks(d.duties),
    ...recipientBlocks(d.recipients),
    ...signatureBlocks(d.signatures, drawings),
  ];
}

/** The report as a document, with what is attached to it. */
export function reportOf(
  d: ReturnType<typeof reportSections>,
  drawings: Drawings,
  attachments: readonly Attachment[],
): Document {
  const [before = "", between = ""] = d.page;
  const [year = 0, month = 0, day = 0] = d.date;
  return {
    title: d.title,
    description: d.description,
    authors: d.authors,
    date: [year, month, day],
    running: {
      head: d.header,
      foot: d.footer,
      page: [before, between],
      draft: d.draft,
      invented: d.invented,
      skip: REPORT.skip,
    },
    blocks: reportBlocks(d, drawings),
    attachments,
  };
}
