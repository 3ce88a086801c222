import type { Document, Spot } from "@good-grounds/topics/texts";

/** A word of a document where it stands, and by which members of the document it is reached. */
export interface Found {
  readonly text: string;
  readonly at: Spot;
  /** Members from the statement down: "statements.fact.values.name". */
  readonly path: string;
}

/** Every name and value written in a document. */
export function wordsIn(document: Document): readonly Found[] {
  const found: Found[] = [];
  walk(document, "", found);
  return found;
}

function walk(value: unknown, path: string, found: Found[]): void {
  if (Array.isArray(value)) {
    for (const one of value) walk(one, path, found);
    return;
  }
  if (typeof value !== "object" || value === null) return;
  if (isWord(value)) {
    found.push({ ...value, path });
    return;
  }
  const kind = "kind" in value && path === "statements" ? `.${String(value.kind)}` : "";
  for (const [name, one] of Object.entries(value)) walk(one, `${path}${kind}${path === "" ? "" : "."}${name}`, found);
}

function isWord(value: object): value is { readonly text: string; readonly at: Spot } {
  return "text" in value && "at" in value && Object.keys(value).length === 2 && typeof value.text === "string";
}

/** The same text with another word in this place. */
export function withWord(text: string, { at }: Pick<Found, "at">, word: string): string {
  const lines = text.split("\n");
  const line = lines[at.line - 1] ?? "";
  lines[at.line - 1] = line.slice(0, at.from - 1) + word + line.slice(at.to - 1);
  return lines.join("\n");
}

/** A word with one letter changed, with one dropped, and with two turned round. */
export function slipsOf(word: string): readonly string[] {
  const at = Math.floor(word.length / 2);
  const changed = word.slice(0, at) + (word[at] === "x" ? "q" : "x") + word.slice(at + 1);
  const dropped = word.slice(0, at) + word.slice(at + 1);
  const [a = "", b = ""] = word.slice(at - 1);
  const turned = word.slice(0, Math.max(0, at - 1)) + b + a + word.slice(at + 1);
  return [...new Set([changed, dropped, turned])].filter((one) => one !== word && /^[a-z0-9]/.test(one));
}
