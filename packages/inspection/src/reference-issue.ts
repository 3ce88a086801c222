import type { Issue, Path } from "@good-grounds/core";

/** An id that another of its kind has already. */
export function duplicate(id: string, path: Path, kind: string, earlier: string): Issue {
  return {
    code: "duplicate-id",
    path,
    found: id,
    expected: `an id that no other ${kind} has`,
    advice: `${earlier}; give one of them another`,
  };
}

/** Adds an issue where an id is not among those known. */
export function refer(issues: Issue[], known: ReadonlySet<string>, kind: string, id: string, path: Path): void {
  if (!known.has(id)) unknown(issues, known, kind, id, path);
}

export function unknown(issues: Issue[], known: ReadonlySet<string>, kind: string, id: string, path: Path): void {
  const some = [...known].slice(0, 8).join(", ");
  issues.push({
    code: "unknown-reference",
    path,
    found: id,
    expected: `the id of ${/^[aeiou]/.test(kind) ? "an" : "a"} ${kind} in this file`,
    advice: known.size === 0 ? `no ${kind} is recorded; add it or remove this reference` : `known: ${some}`,
  });
}
