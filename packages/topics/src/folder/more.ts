import type { Document } from "../document/document.ts";

/** A topic's text with what a firm adds to it. Everything added keeps the file it stands in. */
export function withMore(base: Document, more: readonly Document[]): Document {
  const added = more.map((one) => inFile(one, one.file));
  return {
    ...base,
    uses: [
      ...base.uses,
      ...added.flatMap(({ uses }) => uses.filter(({ text }) => base.uses.every((one) => one.text !== text))),
    ],
    statements: [...base.statements, ...added.flatMap(({ statements }) => statements)],
  };
}

/** The same with the file noted at every place. */
function inFile<T>(value: T, file: string): T {
  if (Array.isArray(value)) return value.map((one) => inFile(one, file)) as T;
  if (typeof value !== "object" || value === null) return value;
  const isPlace = "line" in value && "from" in value && "to" in value;
  const entries = Object.entries(value).map(([name, one]) => [name, inFile(one, file)] as const);
  return Object.fromEntries([...entries, ...(isPlace ? [["file", file] as const] : [])]) as T;
}
