import type { Path } from "@good-grounds/core";
import { THING_LISTS } from "../record/document.ts";

/** Members of these lists are called by their id in a record. */
const NAMED: ReadonlySet<string> = new Set([
  "people",
  "instruments",
  "limitations",
  "bonding",
  "otherSources",
  "boards",
  "rcds",
  "circuits",
  "observations",
  ...THING_LISTS,
]);

/** A place of a document as the record calls it: ["boards", 0, "circuits", 3] as "boards/cu/circuits/c4". */
export function recordPath(path: Path, document: unknown): string {
  const steps: string[] = [];
  let value = document;
  for (const [i, step] of path.entries()) {
    value = typeof value === "object" && value !== null ? (value as Record<string | number, unknown>)[step] : undefined;
    const id = typeof value === "object" && value !== null ? (value as { readonly id?: unknown }).id : undefined;
    const isNamed = typeof step === "number" && NAMED.has(String(path[i - 1])) && typeof id === "string";
    steps.push(isNamed ? id : String(step));
  }
  return steps.join("/");
}
