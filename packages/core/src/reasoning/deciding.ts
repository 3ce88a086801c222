import type { Knowledge } from "./answers.ts";
import type { Compiled } from "./compile.ts";
import { LEAVES } from "./diagram.ts";
import { bitsOf, possibleLeaves, reachable } from "./survey.ts";

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
 * The smallest changes to what is known that would move the severity up or down. Facts not known may take any value;
 * positions on contested points stay as they are. Complete for changes of up to {@link MOST_CHANGED} facts.
 */
export function decidingFacts(compiled: Compiled, knowledge: Knowledge): Deciding {
  const { masks } = knowledge;
  const now = bitsOf(possibleLeaves(compiled, compiled.root, masks));
  const [least = 0] = now;
  const greatest = now[now.length - 1] ?? 0;
  return {
    up: changesTo(compiled, masks, (leaf) => leaf > greatest),
    down: changesTo(compiled, masks, (leaf) => leaf < least),
  };
}

/** A change as numbers: variable × 32 + value, ascending. */
type Coded = readonly number[];

function changesTo(compiled: Compiled, masks: readonly number[], wanted: (leaf: number) => boolean): readonly Change[] {
  const { diagram, variables, root } = compiled;
  const done = new Map<number, readonly Coded[]>();
  const from = (node: number): readonly Coded[] =>
    node < LEAVES ? (wanted(node) ? [NOTHING] : []) : (done.get(node) as readonly Coded[]);
  for (const node of reachable(compiled, root)) {
    const variable = diagram.variableOf(node);
    const mask = masks[variable] as number;
    const isPoint = variables[variable]?.kind === "point";
    const found: Coded[] = [];
    for (const [value, child] of diagram.childrenOf(node).entries()) {
      const stays = (mask & (1 << value)) !== 0;
      if (!stays && isPoint) continue;
      for (const change of from(child))
        if (stays) found.push(change);
        else if (change.length < MOST_CHANGED) found.push([variable * 32 + value, ...change]);
    }
    done.set(node, smallest(found));
  }
  return from(root).map((change) => {
    const after = [...masks];
    const facts: Record<string, string> = {};
    for (const code of change) {
      const { name, cells } = variables[code >> 5] as Compiled["variables"][number];
      facts[name] = cells.values[code & 31] as string;
      after[code >> 5] = 1 << (code & 31);
    }
    return { facts, possible: possibleLeaves(compiled, root, after) };
  });
}

const NOTHING: Coded = Object.freeze([]);

/** The changes of which no other is a part, shortest first. */
function smallest(changes: readonly Coded[]): readonly Coded[] {
  const kept: Coded[] = [];
  for (const change of [...changes].sort((a, b) => a.length - b.length))
    if (!kept.some((one) => one.every((code) => change.includes(code)))) kept.push(change);
  return kept;
}
