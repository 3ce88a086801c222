import type { Compiled } from "./compile.ts";
import { LEAVES } from "./diagram.ts";
import { reachable } from "./survey.ts";

/** One fact given a value that it is not known to have. */
interface Step {
  readonly variable: number;
  readonly value: number;
}

/** Facts given other values, at once. */
export type Steps = readonly Step[];

/** Steps as numbers: variable × 32 + value, ascending. */
type Coded = readonly number[];

const NOTHING: Coded = Object.freeze([]);

/**
 * The smallest changes of facts after which a function can take a leaf that is wanted, shortest first; no part of one is
 * enough. Facts keep what is known of them or take another value; positions on contested points stay as they are.
 * Complete for changes of up to `most` facts.
 */
export function smallestChanges(
  { diagram, variables }: Pick<Compiled, "diagram" | "variables">,
  root: number,
  masks: readonly number[],
  wanted: (leaf: number) => boolean,
  most: number,
): readonly Steps[] {
  const done = new Map<number, readonly Coded[]>();
  const from = (node: number): readonly Coded[] =>
    node < LEAVES ? (wanted(node) ? [NOTHING] : []) : (done.get(node) as readonly Coded[]);
  for (const node of reachable({ diagram }, root)) {
    const variable = diagram.variableOf(node);
    const mask = masks[variable] as number;
    const isPoint = variables[variable]?.kind === "point";
    const found: Coded[] = [];
    for (const [value, child] of diagram.childrenOf(node).entries()) {
      const stays = (mask & (1 << value)) !== 0;
      if (!stays && isPoint) continue;
      for (const change of from(child))
        if (stays) found.push(change);
        else if (change.length < most) found.push([variable * 32 + value, ...change]);
    }
    done.set(node, smallest(found));
  }
  return from(root).map((change) => change.map((code) => ({ variable: code >> 5, value: code & 31 })));
}

/** The sets of numbers of which no other is a part, shortest first. */
export function smallest(sets: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const kept: (readonly number[])[] = [];
  for (const set of [...sets].sort((a, b) => a.length - b.length))
    if (!kept.some((one) => one.every((number) => set.includes(number)))) kept.push(set);
  return kept;
}
