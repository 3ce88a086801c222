import type { Document } from "@good-grounds/topics/texts";

/** A document without where anything stands in its text: what two spellings of one meaning have in common. */
export function meaningOf(document: Document | undefined): unknown {
  return withoutPlaces(document);
}

function withoutPlaces(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutPlaces);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([name]) => name !== "at")
      .map(([name, one]) => [name, withoutPlaces(one)]),
  );
}
