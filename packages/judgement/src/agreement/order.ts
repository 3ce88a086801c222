import { type ChoiceMade, CLASSIFICATIONS } from "@good-grounds/core";

/** Order by code unit, the same on every machine. */
export function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** Of several ways to write the same, one that does not hang on which came first: the shortest, then by code unit. */
export function plainer(a: string, b: string): string {
  return a.length < b.length || (a.length === b.length && a < b) ? a : b;
}

/** Choices by classification, then oldest first; the order in which files were read plays no part. */
export function byChoice(a: ChoiceMade, b: ChoiceMade): number {
  return (
    CLASSIFICATIONS.indexOf(a.classification) - CLASSIFICATIONS.indexOf(b.classification) ||
    byText(a.date, b.date) ||
    byText(a.file, b.file) ||
    byText(a.observation, b.observation) ||
    byText(a.person, b.person) ||
    byText(a.by, b.by) ||
    byText(a.reason, b.reason) ||
    byText(a.edition, b.edition) ||
    byText(a.source, b.source)
  );
}

/** Whether there are two classifications among choices. */
export function differ(choices: Iterable<ChoiceMade>): boolean {
  let first: ChoiceMade | undefined;
  for (const choice of choices) {
    first ??= choice;
    if (choice.classification !== first.classification) return true;
  }
  return false;
}
