import {
  type Block,
  type Column,
  type Document,
  type FigureBlock,
  type HeadingBlock,
  type Inline,
  type InlineDrawing,
  inlines,
  isBlocks,
  type ListBlock,
  type SignatureBlock,
  type TableBlock,
  type TableCell,
  type TitleBlock,
  type Words,
} from "../model.ts";
import { base64 } from "./base64.ts";

/** Text made safe to stand in an element or an attribute. */
export function escaped(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
}

/** Writes blocks as HTML; headings get their anchors in turn. */
export class Writer {
  readonly #contents: readonly { readonly words: Words; readonly id: string }[];
  #headings = 0;
  /** Levels of the headings under which the next one may stand. */
  #under: readonly number[] = [];

  constructor({ blocks }: Document) {
    const headings = headingsOf(blocks);
    this.#contents = headings.flatMap(({ level, words, unlisted }, i) =>
      level === 1 && unlisted === undefined ? [{ words, id: `h${i + 1}` }] : [],
    );
  }

  blocks(blocks: readonly Block[]): string {
    return blocks.map((block) => this.#block(block)).join("\n");
  }

  #block(block: Block): string {
    switch (block.kind) {
      case "title":
        return titleOf(block);
      case "heading":
        return this.#heading(block);
      case "paragraph":
        return `<p${block.as === undefined ? "" : ` class="${block.as}"`}>${said(block.words)}</p>`;
      case "list":
        return this.#list(block);
      case "facts":
        return `<dl class="facts${block.columns === 2 ? " two" : ""}">${block.rows.map(fact).join("")}</dl>`;
      case "table":
        return this.#table(block);
      case "figure":
        return this.#figure(block);
      case "argument":
        return `<ul class="argument">${block.lines.map(({ depth, tag, words }) => `<li class="d${Math.min(depth, 8)}">${tag === "" ? "" : `<span class="tag">${escaped(tag)}</span> `}${said(words)}</li>`).join("")}</ul>`;
      case "signature":
        return signatureOf(block);
      case "frame":
        return `<div class="frame ${block.as}">${this.blocks(block.blocks)}</div>`;
      case "group":
        return `<div class="${block.as}">${this.blocks(block.blocks)}</div>`;
      case "columns":
        return `<div class="columns">${block.columns.map((column) => `<div>${this.blocks(column)}</div>`).join("")}</div>`;
      case "contents":
        return `<nav aria-label="${escaped(block.title)}"><p class="small"><strong>${escaped(block.title)}</strong></p><ul>${this.#contents.map(({ words, id }) => `<li><a href="#${id}">${said(words)}</a></li>`).join("")}</ul></nav>`;
      case "break":
        return '<div class="break"></div>';
    }
  }

  /** The title is the first heading of the page; sections stand below it, and no step is left out on the way down. */
  #heading({ level, words, mark, beside }: HeadingBlock): string {
    this.#headings += 1;
    this.#under = [...this.#under.filter((one) => one < level), level];
    const name = `h${this.#under.length + 1}`;
    const before = mark === undefined ? "" : `${inlineDrawing(mark)} `;
    const after = beside === undefined ? "" : ` <span class="beside">${escaped(beside)}</span>`;
    return `<${name} id="h${this.#headings}">${before}${said(words)}${after}</${name}>`;
  }

  #list({ entries, numbers }: ListBlock): string {
    const own = numbers !== undefined;
    const items = entries.map((entry, i) => {
      const number = own ? `<span class="number">${escaped(numbers[i] ?? "")}</span> ` : "";
      return `<li>${number}${this.#cell(entry)}</li>`;
    });
    return own ? `<ol class="own" role="list">${items.join("")}</ol>` : `<ul>${items.join("")}</ul>`;
  }

  #cell(cell: TableCell): string {
    return isBlocks(cell) ? this.blocks(cell) : said(cell);
  }

  #table({ caption, columns, rows, rowHead = 0, rowHeight, size }: TableBlock): string {
    const height = rowHeight === undefined ? "" : ` style="height:${rowHeight}mm"`;
    const body = rows.map((row) => {
      const cells = row.map((cell, i) => {
        const side = sideOf(columns[i]);
        // A row that is left free to write in has no name yet.
        return i === rowHead && cell !== ""
          ? `<th scope="row"${side}>${this.#cell(cell)}</th>`
          : `<td${side}>${this.#cell(cell)}</td>`;
      });
      return `<tr${height}>${cells.join("")}</tr>`;
    });
    const head = columns.map((column) => `<th scope="col"${sideOf(column)}>${said(column.head)}</th>`).join("");
    const name = caption === undefined ? columns.map(({ head: words }) => bare(words)).join(", ") : caption;
    return [
      // A wide table is moved within its own frame, by keyboard too.
      `<div class="wide" role="region" tabindex="0" aria-label="${escaped(name)}">`,
      `<table${size !== undefined && size > 12 ? ' class="big"' : ""}>`,
      caption === undefined ? "" : `<caption>${escaped(caption)}</caption>`,
      `<thead><tr>${head}</tr></thead><tbody>${body.join("")}</tbody></table></div>`,
    ].join("");
  }

  #figure({ image, alt, width, caption, beside }: FigureBlock): string {
    const style = width === undefined ? "" : ` style="width:${width}mm"`;
    const shown =
      "svg" in image
        ? `<span class="drawn"${style}>${svgOf(image.svg, alt)}</span>`
        : `<img${style} alt="${escaped(alt)}" src="data:${image.type};base64,${base64(image.bytes)}">`;
    const words = caption === undefined ? "" : `<figcaption>${said(caption)}</figcaption>`;
    const figure = `<figure>${shown}${words}</figure>`;
    return beside === undefined ? figure : `<div class="beside">${figure}<div>${this.blocks(beside)}</div></div>`;
  }
}

/** Headings in the order in which they are written. */
function headingsOf(blocks: readonly Block[]): readonly HeadingBlock[] {
  return blocks.flatMap((block): readonly HeadingBlock[] => {
    switch (block.kind) {
      case "heading":
        return [block];
      case "frame":
      case "group":
        return headingsOf(block.blocks);
      case "columns":
        return headingsOf(block.columns.flat());
      case "list":
        return headingsOf(block.entries.filter(isBlocks).flat());
      case "table":
        return headingsOf(block.rows.flat().filter(isBlocks).flat());
      case "figure":
        return headingsOf(block.beside ?? []);
      default:
        return [];
    }
  });
}

function titleOf({ over, words }: TitleBlock): string {
  return `<p class="over">${escaped(over)}</p><h1>${escaped(words)}</h1>`;
}

function fact([name, value]: readonly [Words, Words]): string {
  return `<div><dt>${said(name)}</dt><dd>${said(value)}</dd></div>`;
}

function signatureOf({ as, rows, drawn, typed = "" }: SignatureBlock): string {
  const ink =
    drawn === null
      ? `<span class="line">${escaped(typed)}</span>`
      : `<span class="drawn">${svgOf(drawn.svg, drawn.alt)}</span>`;
  return `<div class="signature"><p><strong>${escaped(as)}</strong></p>${ink}<dl class="facts">${rows.map(fact).join("")}</dl></div>`;
}

function said(words: Words): string {
  return inlines(words).map(inline).join("");
}

const ELEMENT = { strong: "strong", quiet: "span", gap: "em", alert: "strong", tag: "span", small: "small" } as const;

function inline(piece: Inline): string {
  if ("svg" in piece) return inlineDrawing(piece);
  if ("pages" in piece) return "";
  if ("end" in piece) return "<br>";
  const text = escaped(piece.text).replaceAll("\n", "<br>");
  if (piece.as === undefined) return text;
  const name = ELEMENT[piece.as];
  return `<${name} class="${piece.as}">${text}</${name}>`;
}

function inlineDrawing({ svg, alt, width }: InlineDrawing): string {
  return `<span class="inline" style="width:${width}mm">${svgOf(svg, alt)}</span>`;
}

/** A drawing within the page, named by its alternative text alone. */
function svgOf(svg: string, alt: string): string {
  const inner = svg.replace(/<title>.*?<\/title>/s, "").replace(/<desc>.*?<\/desc>/s, "");
  return inner.replace(/^<svg ([^>]*)>/, (_, attributes: string) => {
    const kept = attributes.replace(/ ?(?:width|height|role|aria-label)="[^"]*"/g, "");
    return `<svg ${kept} role="img" aria-label="${escaped(alt)}">`;
  });
}

function bare(words: Words): string {
  return inlines(words)
    .map((piece) => ("text" in piece ? piece.text : " "))
    .join("")
    .trim();
}

function sideOf(column: Column | undefined): string {
  return column?.align === undefined || column.align === "left" ? "" : ` class="${column.align}"`;
}
