import { readFileSync } from "node:fs";
import { assemble, draftWhereOpen } from "@good-grounds/assembly";
import { parseInspectionData } from "@good-grounds/inspection";
import type { ReportInput } from "@good-grounds/report";
import { plainText } from "@good-grounds/report/document";
import { type PaperKind, paperOf } from "@good-grounds/report/papers";

export const EXAMPLES = ["terraced-house", "farmhouse", "workshop"] as const;
type Example = (typeof EXAMPLES)[number];

/** Data of an inspection file that a test may change before it is read. */
// biome-ignore lint/suspicious/noExplicitAny: a test changes the data as somebody with a text editor would
export type Data = any;

/** The data of an example, changed and without its signatures, which would not stand any more. */
export function dataOf(name: Example, change: (data: Data) => void = () => undefined): Data {
  const data = JSON.parse(readFileSync(new URL(`../../examples/${name}.json`, import.meta.url), "utf8"));
  change(data);
  return data;
}

/** An inspection file from data that a test made; the data has to be sound. */
export function inputOf(data: Data): ReportInput {
  const parsed = parseInspectionData(data);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues.slice(0, 5), null, 1));
  return draftWhereOpen(assemble(parsed.file));
}

/** Everything a paper says. */
export function said(kind: PaperKind, input: ReportInput): string {
  return plainText(paperOf(kind, input));
}

/** Nothing was looked at and nothing was read. */
export function nothingInspected(data: Data): void {
  data.signatures = [];
  data.inspected = [];
  data.observations = [];
  data.photographs = [];
  delete data.conclusion;
  delete data.things;
  delete data.supply.readings;
  for (const board of data.boards) {
    delete board.readings;
    for (const rcd of board.rcds ?? []) delete rcd.readings;
    for (const circuit of board.circuits) {
      delete circuit.readings;
      delete circuit.rcd?.own?.readings;
    }
  }
}
