import type { Block, Document } from "../document/model.ts";
import type { ReportInput } from "../input.ts";
import { PAPERS } from "../locales/papers-en.ts";
import { REPORT } from "../locales/report-en.ts";
import { shortened } from "../pdf/sections/shortened.ts";
import { headOf } from "./head.ts";

/** What makes one paper differ from the others. */
export interface PaperParts {
  /** What kind of paper it is: "Works to be done". */
  readonly name: string;
  /** Letters of the text in points. */
  readonly size?: number;
  readonly blocks: readonly Block[];
  /** Holds whether the report is issued or not: no page of it says that it is a draft. */
  readonly holds?: true;
}

/** A paper with what all of them carry: its name and place, the report it belongs to, and whether that was issued. */
export function paper(input: ReportInput, { name, size, blocks, holds }: PaperParts): Document {
  const head = headOf(input);
  const [year = 1, month = 1, day = 1] = head.day.split("-").map(Number);
  return {
    title: PAPERS.documentTitle(name, head.address),
    description: PAPERS.documentDescription(name, head.id),
    authors: head.signed,
    date: [year, month, day],
    running: {
      head: PAPERS.documentTitle(name, shortened(head.address, 80)),
      foot: PAPERS.foot(head.id, head.inspectedOn),
      page: PAPERS.page,
      draft: head.draft === "" || holds === true ? "" : REPORT.draft,
      invented: head.invented === "" ? "" : REPORT.inventedShort,
      skip: PAPERS.skip,
    },
    ...(size === undefined ? {} : { size }),
    blocks,
  };
}

/** That the paper is a draft or an invented example, in its own words on the first page. */
export function notices(input: ReportInput, draft = headOf(input).draft): readonly Block[] {
  return [draft, headOf(input).invented]
    .filter((words) => words !== "")
    .map((words) => ({ kind: "paragraph", words: [{ text: words, as: "alert" }] }));
}
