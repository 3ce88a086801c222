import { WORDS } from "./en.ts";
import { SILENCE } from "./labels.ts";
import { REPORT } from "./report-en.ts";

/** Words that all papers for one reader share. */
export const PAPERS = Object.freeze({
  notRecorded: SILENCE.absent,
  deviceType: (type: string) => (/^[A-D1-4]$/.test(type) ? `type ${type}` : type),
  rcdType: (type: string) => `type ${type}`,
  noRcd: "none in this board",
  none: "none",
  ahead: "ahead of the board:",
  ownRcd: "of its own",
  boardRcd: (id: string) => `RCD ${id}`,
  cableKind: "cable",
  liveSize: "size of the live conductors",
  cpcSize: "size of the cpc",
  live: "live",
  cpc: "cpc",
  invented: WORDS.invented,
  inventedShort: REPORT.inventedShort,
  draft: "Something that decides is still open in the report: this is a draft.",
  unsigned: "Nobody has signed for the inspection as it is written here: this is a draft.",
  documentTitle: (name: string, address: string) => `${name} – ${address}`,
  documentDescription: (name: string, id: string) => `${name}; from the evidence of report ${id}`,
  foot: (id: string, on: string) => `Goes with report ${id}, inspected ${REPORT.day(on)}`,
  page: ["page ", " of "] as const,
  skip: "To the text",
});
