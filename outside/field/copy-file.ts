import { readFileSync } from "node:fs";
import { strFromU8, unzipSync } from "fflate";

/** An entry of a copy, as far as the tests look at it. */
export interface CopiedEntry {
  readonly id: string;
  readonly value: unknown;
  readonly seen: object;
}

/** The entries of a saved copy, or of a record saved alone, by their ids. */
export function entriesIn(file: string): readonly CopiedEntry[] {
  const bytes = readFileSync(file);
  const text = bytes[0] === "{".charCodeAt(0) ? bytes.toString() : strFromU8(unzipSync(bytes)["record.json"] ?? bytes);
  const { record } = JSON.parse(text) as { readonly record: readonly CopiedEntry[] };
  return [...record].sort((a, b) => (a.id < b.id ? -1 : 1));
}
