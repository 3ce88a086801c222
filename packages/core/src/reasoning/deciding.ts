import type { Knowledge } from "./answers.ts";
import { smallestChanges } from "./changes.ts";
import type { Compiled } from "./compile.ts";
import { CANNOT_BE, whereItCanBe } from "./contradiction.ts";
import { possibleSeverities } from "./possible.ts";
import { bitsOf } from "./survey.ts";

/** A smallest set of facts whose change moves the severity; no part of it is enough. */
export interface Change {
  readonly facts: Readonly<Record<string, string>>;
  /** The severities possible after it, as a bit set. */
  readonly possible: number;
}

export interface Deciding {
  /** Changes that make something worse possible than anything possible now. */
  readonly up: readonly Change[];
  /** Changes that make something better possible than anything possible now. */
  readonly down: readonly Change[];
}

/** Changes are listed up to so many facts at once: a longer one describes another installation. */
export const MOST_CHANGED = 4;

/**
 * The smallest changes to what is known that would move the severity up or down. Facts not known may take any value that
 * contradicts nothing; positions on contested points stay as they are. Complete for changes of up to
 * {@link MOST_CHANGED} facts.
 */
export function decidingFacts(compiled: Compiled, { masks }: Knowledge): Deciding {
  const now = bitsOf(possibleSeverities(compiled, masks));
  const [least = 0] = now;
  const greatest = now[now.length - 1] ?? 0;
  return {
    up: changesTo(compiled, masks, (leaf) => leaf > greatest),
    down: changesTo(compiled, masks, (leaf) => leaf < least),
  };
}

function changesTo(compiled: Compiled, masks: readonly number[], wanted: (leaf: number) => boolean): readonly Change[] {
  const { variables, root } = compiled;
  const isWanted = (leaf: number) => leaf !== CANNOT_BE && wanted(leaf);
  return smallestChanges(compiled, whereItCanBe(compiled, root), masks, isWanted, MOST_CHANGED).map((steps) => {
    const after = [...masks];
    const facts: Record<string, string> = {};
    for (const { variable, value } of steps) {
      const { name, cells } = variables[variable] as Compiled["variables"][number];
      facts[name] = cells.values[value] as string;
      after[variable] = 1 << value;
    }
    return { facts, possible: possibleSeverities(compiled, after) };
  });
}
