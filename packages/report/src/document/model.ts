/**
 * A document as plain data: what it says, in which order and of what kind each part is. It knows nothing of a page or a
 * screen; {@link typstOf} and {@link htmlOf} write it, and {@link plainText} says it in bare words.
 */
export interface Document {
  readonly title: string;
  /** One or two sentences for whoever looks the file up. */
  readonly description: string;
  readonly authors: readonly string[];
  /** The day the document bears: year, month, day. */
  readonly date: readonly [year: number, month: number, day: number];
  /** What stands at the head and the foot of every page, and the words around the number of a page and of all pages. */
  readonly running: Running;
  /** Letters of the text in points; 9.5 where it is left out. */
  readonly size?: number;
  readonly blocks: readonly Block[];
  /** Files inside the PDF. */
  readonly attachments?: readonly Attachment[];
}

export interface Running {
  readonly head: string;
  readonly foot: string;
  /** Before the number of a page, between it and the number of all pages. */
  readonly page: readonly [before: string, between: string];
  /** Said on every page while the document is not issued; empty where it is. */
  readonly draft: string;
  /** Said on every page of an invented example; empty where it is none. */
  readonly invented: string;
  /** Words that lead past the running head of a screen to what is said. */
  readonly skip: string;
}

export interface Attachment {
  readonly name: string;
  readonly data: string | Uint8Array;
  readonly kind: string;
  readonly relationship: "source" | "data" | "supplement";
  readonly description: string;
}

/** A stretch of words; `as` is what it is, not how it looks. A gap is what is not known: it never looks like an answer. */
export interface Run {
  readonly text: string;
  readonly as?: "strong" | "quiet" | "gap" | "alert" | "tag" | "small";
}

/** A drawing on the line of the text, so many millimetres wide. */
export interface InlineDrawing {
  readonly svg: string;
  /** What the drawing shows, with its result. */
  readonly alt: string;
  readonly width: number;
}

/** The number of all pages with the words around it; only where there are pages. */
export interface PageCount {
  readonly pages: readonly [before: string, after: string];
}

/** The end of a line. */
export interface LineEnd {
  readonly end: "line";
}

export type Inline = Run | InlineDrawing | PageCount | LineEnd;

/** What stands on a line: bare words, or pieces in turn. */
export type Words = string | readonly Inline[];

export type Block =
  | TitleBlock
  | HeadingBlock
  | ParagraphBlock
  | ListBlock
  | FactsBlock
  | TableBlock
  | FigureBlock
  | ArgumentBlock
  | SignatureBlock
  | FrameBlock
  | ColumnsBlock
  | GroupBlock
  | ContentsBlock
  | BreakBlock;

/** The name of the document at its beginning: one in a document, before every heading. */
export interface TitleBlock {
  readonly kind: "title";
  /** What kind of document it is, above the title. */
  readonly over: string;
  readonly words: string;
}

export interface HeadingBlock {
  readonly kind: "heading";
  /** 1 are the sections below the title; no level is skipped. */
  readonly level: 1 | 2 | 3;
  readonly words: Words;
  /** A mark before the heading, such as that of a classification. */
  readonly mark?: InlineDrawing;
  /** What stands at the end of its line. */
  readonly beside?: string;
  /** Left out of the list of contents. */
  readonly unlisted?: true;
}

export interface ParagraphBlock {
  readonly kind: "paragraph";
  readonly words: Words;
  /** Plain where it is left out; `small` for notes, `lead` for what decides, `large` for a figure of the first page. */
  readonly as?: "small" | "lead" | "large";
}

export interface ListBlock {
  readonly kind: "list";
  /** The number or letter of each entry, where they have any of their own. */
  readonly numbers?: readonly string[];
  readonly entries: readonly (readonly Block[] | Words)[];
}

/** Names with what is to be said of each. */
export interface FactsBlock {
  readonly kind: "facts";
  readonly rows: readonly (readonly [name: Words, value: Words])[];
  /** In how many columns they stand where there is room. */
  readonly columns?: 1 | 2;
  /** Millimetres kept for the names. */
  readonly names?: number;
}

export interface Column {
  readonly head: Words;
  /** Millimetres, or a share of what the others leave: "2fr". */
  readonly width: number | `${number}fr`;
  readonly align?: "left" | "right" | "centre";
}

export type TableCell = Words | readonly Block[];

export interface TableBlock {
  readonly kind: "table";
  /** What the table shows; seen above it, and its name for a reader who does not see it. */
  readonly caption?: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly TableCell[])[];
  /** The column whose cells name their row; the first where it is left out, none where it is null. */
  readonly rowHead?: number | null;
  /** Letters in points. */
  readonly size?: number;
  /** Least height of a row in millimetres: room to write in. */
  readonly rowHeight?: number;
}

export interface FigureBlock {
  readonly kind: "figure";
  /** A drawing, or a photograph as JPEG or PNG. */
  readonly image: { readonly svg: string } | Photograph;
  /** What it shows, with its result. */
  readonly alt: string;
  /** Millimetres; as wide as the text where it is left out. */
  readonly width?: number;
  readonly caption?: Words;
  /** Set beside the figure. */
  readonly beside?: readonly Block[];
}

export interface Photograph {
  readonly bytes: Uint8Array;
  readonly type: "image/jpeg" | "image/png";
}

/** The lines of an argument, the conclusion first; `depth` says what bears what. */
export interface ArgumentBlock {
  readonly kind: "argument";
  readonly lines: readonly ArgumentEntry[];
}

export interface ArgumentEntry {
  readonly depth: number;
  /** "measured", "published" and so on; empty where the line is none of these. */
  readonly tag: string;
  readonly words: Words;
}

export interface SignatureBlock {
  readonly kind: "signature";
  /** In which capacity. */
  readonly as: string;
  readonly rows: readonly (readonly [name: Words, value: Words])[];
  /** The signature as it was drawn; a line to sign on where it is null. */
  readonly drawn: { readonly svg: string; readonly alt: string } | null;
  /** A name that was written instead of drawn; it stands on the line. */
  readonly typed?: string;
}

/** Blocks set apart: `stated` by a bar of ink, `alert` by a frame that cannot be missed, `aside` by a fine bar. */
export interface FrameBlock {
  readonly kind: "frame";
  readonly as: "stated" | "alert" | "aside";
  readonly blocks: readonly Block[];
}

export interface ColumnsBlock {
  readonly kind: "columns";
  readonly columns: readonly (readonly Block[])[];
  /** Shares of the width; equal where they are left out. */
  readonly shares?: readonly number[];
}

/** Blocks that stay on one page where they fit on one. */
export interface GroupBlock {
  readonly kind: "group";
  /** `turned` for what needs the long side of the paper. */
  readonly as: "together" | "turned";
  readonly blocks: readonly Block[];
}

/** The sections with their pages. */
export interface ContentsBlock {
  readonly kind: "contents";
  readonly title: string;
}

/** The rest of the page stays free. */
export interface BreakBlock {
  readonly kind: "break";
}

/** The pieces of words. */
export function inlines(words: Words): readonly Inline[] {
  return typeof words === "string" ? [{ text: words }] : words;
}

/** Whether a cell or an entry is a list of blocks and not of pieces. */
export function isBlocks(cell: Words | readonly Block[]): cell is readonly Block[] {
  return typeof cell !== "string" && cell.length > 0 && cell.every((part) => "kind" in part);
}
