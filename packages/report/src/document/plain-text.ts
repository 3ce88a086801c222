import { type Block, type Document, type Inline, inlines, isBlocks, type TableCell, type Words } from "./model.ts";

/** A document in bare words, a line a paragraph, cells apart by " | ": alternative texts stand where a drawing does. */
export function plainText({ title, blocks, running }: Document): string {
  return [title, running.head, running.foot, running.draft, running.invented, ...blocks.flatMap(linesOf)]
    .filter((line) => line !== "")
    .join("\n");
}

/** What a document says in bare words, without what runs along every page: for a message. */
export function bareText({ blocks }: Document): string {
  return blocks
    .flatMap(linesOf)
    .filter((line) => line !== "")
    .join("\n");
}

/** The words of some blocks, a line each. */
export function linesOf(block: Block): readonly string[] {
  switch (block.kind) {
    case "title":
      return [block.over, block.words];
    case "heading":
      return [[said(block.words), block.beside ?? ""].filter((part) => part !== "").join(" ")];
    case "paragraph":
      return [said(block.words)];
    case "list":
      return block.entries.map((entry, i) =>
        [block.numbers?.[i] ?? "", inCell(entry)].filter((part) => part !== "").join(" "),
      );
    case "facts":
      return block.rows.map(pair);
    case "table":
      return [
        ...(block.caption === undefined ? [] : [block.caption]),
        block.columns.map(({ head }) => said(head)).join(" | "),
        ...block.rows.map((row) => row.map(inCell).join(" | ")),
      ];
    case "figure":
      return [
        block.alt,
        block.caption === undefined ? "" : said(block.caption),
        ...(block.beside ?? []).flatMap(linesOf),
      ];
    case "argument":
      return block.lines.map(({ tag, words }) => [tag, said(words)].filter((part) => part !== "").join(" "));
    case "signature":
      return [block.as, ...block.rows.map(pair), block.drawn?.alt ?? "", block.typed ?? ""];
    case "frame":
    case "group":
      return block.blocks.flatMap(linesOf);
    case "columns":
      return block.columns.flat().flatMap(linesOf);
    case "contents":
      return [block.title];
    case "break":
      return [];
  }
}

function pair([name, value]: readonly [Words, Words]): string {
  return `${said(name)}: ${said(value)}`;
}

function inCell(cell: TableCell): string {
  return isBlocks(cell) ? cell.flatMap(linesOf).join(" ") : said(cell);
}

function said(words: Words): string {
  return inlines(words).map(piece).join("");
}

function piece(one: Inline): string {
  if ("text" in one) return one.text;
  if ("svg" in one) return one.alt;
  if ("pages" in one) return "";
  return "\n";
}
