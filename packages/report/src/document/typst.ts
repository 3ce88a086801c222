import { legibleWidth } from "../pdf/legible.ts";
import { visibleData, visibleDrawing } from "../pdf/visible.ts";
import type { Document, Photograph } from "./model.ts";
import { TEMPLATE } from "./typst/template.ts";

/** A document as the layout engine takes it: the template, and the files it reads and attaches, by name. */
export interface TypstDocument {
  readonly template: string;
  readonly files: ReadonlyMap<string, string | Uint8Array>;
}

/**
 * A document before it is laid out; the same on every device. `covers` tells for which characters the fonts have a glyph:
 * others are printed as code points. Words reach the layout as data and are never taken as markup.
 */
export function typstOf(document: Document, covers: (point: number) => boolean): TypstDocument {
  const { attachments = [], ...said } = document;
  const images = new Images(covers);
  const data = {
    ...(images.named(said) as object),
    attachments: attachments.map(({ name, kind, relationship, description }) => ({
      name,
      kind,
      relationship,
      description,
    })),
  };
  return {
    template: TEMPLATE,
    files: new Map<string, string | Uint8Array>([
      ...images.files,
      ["data.json", JSON.stringify(visibleData(data, covers))],
      ...attachments.map(({ name, data: content }) => [name, content] as const),
    ]),
  };
}

/** Takes drawings and photographs out of plain data and puts the name of a file in their place; the same one is kept once. */
class Images {
  readonly files = new Map<string, string | Uint8Array>();
  readonly #names = new Map<string | Uint8Array, string>();
  readonly #covers: (point: number) => boolean;

  constructor(covers: (point: number) => boolean) {
    this.#covers = covers;
  }

  named(data: unknown): unknown {
    if (Array.isArray(data)) return data.map((part) => this.named(part));
    if (data === null || typeof data !== "object") return data;
    if (isPhotograph(data)) return { file: this.#name(data.bytes, data.type === "image/png" ? "png" : "jpg") };
    const whole = "kind" in data && data.kind === "group" ? [["whole", roomOf(data) <= PAGE] as [string, unknown]] : [];
    const entries = Object.entries(data).flatMap(([key, part]): [string, unknown][] => {
      if (key !== "svg") return [[key, this.named(part)]];
      return [
        ["file", this.#name(part as string, "svg")],
        ["legible", legibleWidth(part as string)],
      ];
    });
    return Object.fromEntries([...entries, ...whole]);
  }

  #name(content: string | Uint8Array, ending: string): string {
    const held = this.#names.get(content);
    if (held !== undefined) return held;
    const name = `image-${this.#names.size}.${ending}`;
    this.#names.set(content, name);
    this.files.set(name, typeof content === "string" ? visibleDrawing(content, this.#covers) : content);
    return name;
  }
}

function isPhotograph(data: object): data is Photograph {
  return "bytes" in data;
}

/** Room of a page, in characters; with some of it kept back, for one unbreakable part that nearly fills a page empties the one before. */
const PAGE = 2600;
/** What a figure takes for each of its millimetres, in characters. */
const FIGURE = 16;
const WIDTH_OF_TEXT = 174;

/** About what blocks take on a page. One that took more than a page and could not be broken would be cut off. */
function roomOf(data: unknown): number {
  if (typeof data === "string") return data.length;
  if (data === null || typeof data !== "object") return 0;
  if ("kind" in data && data.kind === "figure") {
    const { width = WIDTH_OF_TEXT, ...said } = data as { readonly width?: number; readonly caption?: unknown };
    return width * FIGURE + roomOf(said.caption);
  }
  return Object.entries(data).reduce<number>(
    (sum, [key, part]) => (key === "svg" || key === "bytes" || key === "kind" ? sum : sum + roomOf(part)),
    0,
  );
}
