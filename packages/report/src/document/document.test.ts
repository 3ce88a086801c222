import { describe, expect, test } from "vitest";
import { htmlOf } from "./html.ts";
import type { Block, Document } from "./model.ts";
import { pdfOf } from "./pdf.ts";
import { plainText } from "./plain-text.ts";

const SVG =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9" width="9" height="9" role="img"><title>t</title><desc>d</desc><rect width="9" height="9"/></svg>';
const drawn = { svg: SVG, alt: "a full square", width: 6 };

/** One block of every kind, each with words of its own. */
const BLOCKS: readonly Block[] = [
  { kind: "title", over: "over the title", words: "Title & <name>" },
  {
    kind: "facts",
    columns: 2,
    rows: [
      ["fact one", "value one"],
      ["fact two", [{ text: "not recorded", as: "gap" }]],
    ],
  },
  { kind: "frame", as: "stated", blocks: [{ kind: "paragraph", words: "stated words", as: "large" }] },
  { kind: "frame", as: "alert", blocks: [{ kind: "paragraph", words: "alert words" }] },
  { kind: "contents", title: "Contents" },
  { kind: "break" },
  { kind: "heading", level: 1, words: "Section one" },
  { kind: "heading", level: 2, words: "Part", mark: drawn, beside: "beside the part" },
  { kind: "list", entries: ["entry one", [{ kind: "paragraph", words: "entry two" }]] },
  { kind: "list", numbers: ["7", "9"], entries: ["entry seven", [{ kind: "paragraph", words: "entry nine" }]] },
  {
    kind: "table",
    caption: "What the table shows",
    columns: [
      { head: "Row", width: "1fr" },
      { head: [{ text: "Zs" }, { end: "line" }, { text: "Ω", as: "quiet" }], width: 20, align: "right" },
    ],
    rows: [
      ["row one", "0.35"],
      [[drawn], [{ kind: "paragraph", words: "cell of blocks" }]],
    ],
  },
  { kind: "figure", image: { svg: SVG }, alt: "figure alt", width: 30, caption: "figure caption" },
  {
    kind: "argument",
    lines: [
      { depth: 0, tag: "", words: "concluded" },
      { depth: 1, tag: "measured", words: "0.4 Ω" },
    ],
  },
  { kind: "signature", as: "Inspected by", rows: [["Name", "A Person"]], drawn: { svg: SVG, alt: "signature drawn" } },
  { kind: "signature", as: "Authorised by", rows: [["Name", "B Person"]], drawn: null },
  { kind: "columns", columns: [[{ kind: "paragraph", words: "left" }], [{ kind: "paragraph", words: "right" }]] },
  { kind: "group", as: "together", blocks: [{ kind: "paragraph", words: "kept together", as: "small" }] },
  {
    kind: "group",
    as: "turned",
    blocks: [
      { kind: "heading", level: 1, words: "Wide section" },
      { kind: "paragraph", words: "turned" },
    ],
  },
  { kind: "paragraph", words: [{ text: "of " }, { pages: ["", " pages"] }, { text: "last", as: "strong" }] },
];

const DOCUMENT: Document = {
  title: "Document title",
  description: "What it is",
  authors: ["A Person"],
  date: [2026, 10, 6],
  running: {
    head: "head words",
    foot: "foot words",
    page: ["Page ", " of "],
    draft: "",
    invented: "",
    skip: "Skip to the document",
  },
  blocks: BLOCKS,
  attachments: [{ name: "a.json", data: "{}", kind: "application/json", relationship: "source", description: "data" }],
};

describe("a document with a block of every kind", () => {
  test("is laid out as a tagged PDF", () => {
    const pdf = Buffer.from(pdfOf(DOCUMENT)).toString("latin1");
    expect(pdf.slice(0, 5)).toBe("%PDF-");
    for (const tag of ["/S /TH", "/S /L\n", "/S /Figure", "/S /H2", "a.json"]) expect(pdf).toContain(tag);
  });

  test("says in HTML every word it says in bare words", () => {
    const words = plainText(DOCUMENT)
      .split("\n")
      .flatMap((line) => line.split(" | "))
      .flatMap((line) => line.split(": "));
    const html = htmlOf(DOCUMENT).replaceAll("&amp;", "&").replaceAll("&lt;", "<").replaceAll("&gt;", ">");
    const bare = html.replaceAll(/ class="[^"]*"/g, "");
    expect(words.filter((word) => !bare.includes(word) && !/^(7|9|measured|of last|Part|beside)/.test(word))).toEqual(
      [],
    );
    for (const word of ["entry seven", "measured", "beside the part"]) expect(bare).toContain(word);
  });

  test("is HTML without a script, a request or markup of its words", () => {
    const html = htmlOf(DOCUMENT);
    expect(html).not.toMatch(/<script|<link|src="http|@import|url\(/);
    expect(html).toContain("Title &amp; &lt;name&gt;");
    expect(html).toContain('<th scope="row">row one</th>');
    expect(html).toContain('<th scope="col">Row</th>');
    expect(html).toContain('aria-label="figure alt"');
    expect(html).toContain('href="#said"');
    expect(html.match(/<h1>/g)).toHaveLength(1);
  });

  test("is marked as a draft and as invented in both writings", () => {
    const draft = { ...DOCUMENT, running: { ...DOCUMENT.running, draft: "DRAFT", invented: "Invented" } };
    expect(htmlOf(draft)).toMatch(/class="notice">DRAFT<.*class="notice">Invented</);
    expect(plainText(draft)).toContain("DRAFT");
  });
});
