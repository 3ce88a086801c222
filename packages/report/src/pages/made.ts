import { wordsOfCell } from "../document/cell-words.ts";
import type {
  Block,
  Column,
  FactsBlock,
  HeadingBlock,
  ListBlock,
  ParagraphBlock,
  Run,
  TableBlock,
  Words,
} from "../document/model.ts";
import type { Cell } from "../pdf/cell.ts";

/** Short ways to make blocks. */
export function heading(level: 1 | 2 | 3, words: Words, more: Partial<HeadingBlock> = {}): HeadingBlock {
  return { kind: "heading", level, words, ...more };
}

export function paragraph(words: Words, as?: ParagraphBlock["as"]): ParagraphBlock {
  return as === undefined ? { kind: "paragraph", words } : { kind: "paragraph", words, as };
}

/** A paragraph, or nothing where there are no words. */
export function paragraphIf(words: string | Cell, as?: ParagraphBlock["as"]): readonly Block[] {
  const bare = typeof words === "string" ? words : words.words;
  return bare === "" ? [] : [paragraph(said(words), as)];
}

export function bullets(entries: ListBlock["entries"]): readonly Block[] {
  return entries.length === 0 ? [] : [{ kind: "list", entries }];
}

export function facts(
  rows: readonly (readonly [string, string | Cell])[],
  more: Partial<FactsBlock> = {},
): readonly Block[] {
  if (rows.length === 0) return [];
  return [{ kind: "facts", rows: rows.map(([name, value]) => [name, said(value)] as const), ...more }];
}

export function together(...blocks: readonly Block[]): Block {
  return { kind: "group", as: "together", blocks };
}

/** A table of cells; `widths` stand for the columns in turn, in millimetres or shares. */
export function table(
  head: readonly (string | readonly string[])[],
  widths: readonly (number | `${number}fr`)[],
  rows: readonly (readonly (string | Cell)[])[],
  more: Partial<TableBlock> & { readonly right?: readonly number[] } = {},
): TableBlock {
  const { right = [], ...rest } = more;
  return {
    kind: "table",
    columns: head.map((one, i) => column(one, widths[i] ?? "1fr", right.includes(i))),
    rows: rows.map((row) => row.map(said)),
    ...rest,
  };
}

/** A column; one with a unit has it below its name. */
export function column(head: string | readonly string[], width: number | `${number}fr`, right: boolean): Column {
  const align = right ? ({ align: "right" } as const) : {};
  if (typeof head === "string") return { head, width, ...align };
  const [name = "", unit = ""] = head;
  if (unit === "") return { head: name, width, ...align };
  return { head: [{ text: name }, { end: "line" }, { text: unit, as: "quiet" }], width, ...align };
}

export function said(words: string | Cell): Words {
  return typeof words === "string" ? words : wordsOfCell(words);
}

export function strong(text: string): Run {
  return { text, as: "strong" };
}

export function quiet(text: string): Run {
  return { text, as: "quiet" };
}

export function alert(text: string): Run {
  return { text, as: "alert" };
}
