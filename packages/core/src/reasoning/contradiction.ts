import { smallest, smallestChanges } from "./changes.ts";
import type { Compiled } from "./compile.ts";
import { possibleLeaves } from "./survey.ts";

/** The leaf that stands for what cannot be; severities and states of layers have lower ones. */
export const CANNOT_BE = 7;

const GUARDED = new WeakMap<Compiled, Map<number, number>>();

/** A function of the subject with {@link CANNOT_BE} wherever statements would contradict each other; made once. */
export function whereItCanBe(compiled: Compiled, node: number): number {
  const { diagram, contradicted } = compiled;
  if (contradicted === 0) return node;
  const known = GUARDED.get(compiled) ?? new Map<number, number>();
  GUARDED.set(compiled, known);
  const made =
    known.get(node) ?? diagram.apply((leaf, cannot) => (cannot === 1 ? CANNOT_BE : leaf), node, contradicted);
  known.set(node, made);
  return made;
}

/** Whether no completion of what is known is free of contradiction. */
export function isContradicted(compiled: Compiled, masks: readonly number[]): boolean {
  return possibleLeaves(compiled, compiled.contradicted, masks) === 1 << 1;
}

/** Every cell of a variable, as a mask: nothing is said of it. */
export function everyCell({ variables }: Pick<Compiled, "variables">, variable: number): number {
  return 2 ** (variables[variable]?.cells.values.length ?? 1) - 1;
}

/** Facts that, taken as not known, leave statements that can all be true; nothing less is enough. */
export interface Withdrawn {
  /** Numbers of the variables. */
  readonly variables: readonly number[];
  /** What is known without them. */
  readonly masks: readonly number[];
}

/** Every smallest withdrawal that ends a contradiction; none where there is no contradiction. */
export function withdrawalsOf(compiled: Compiled, masks: readonly number[]): readonly Withdrawn[] {
  if (!isContradicted(compiled, masks)) return [];
  const changes = smallestChanges(
    compiled,
    compiled.contradicted,
    masks,
    (leaf) => leaf === 0,
    Number.POSITIVE_INFINITY,
  );
  const sets = changes.map((steps) => steps.map(({ variable }) => variable));
  return smallest(sets).map((variables) => ({
    variables,
    masks: masks.map((mask, i) => (variables.includes(i) ? everyCell(compiled, i) : mask)),
  }));
}
