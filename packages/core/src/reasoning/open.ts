import type { Knowledge } from "./answers.ts";
import type { Compiled } from "./compile.ts";
import { CANNOT_BE, isContradicted, whereItCanBe, withdrawalsOf } from "./contradiction.ts";
import { LEAVES } from "./diagram.ts";
import { bitsOf, type Narrowed, narrowedTo, possibleLeaves } from "./survey.ts";

/** The severity as far as what is known leaves it open, in a diagram of its own. */
export function stillOpen(compiled: Compiled, { masks }: Knowledge): Narrowed {
  return narrowedTo(compiled, whereItCanBe(compiled, compiled.root), masks);
}

/** Bit set of the severities from a node on, without what cannot be. */
export function severitiesFrom(narrowed: Narrowed, node: number, masks: readonly number[]): number {
  return possibleLeaves(narrowed, node, masks) & ~(1 << CANNOT_BE);
}

/**
 * Facts that can be asked for and can change what is possible, by number: after some answers to other such facts, one of
 * the answers excludes a severity. A fact whose every answer leaves the same possible as long as another cannot be found
 * out is none of them. Where statements contradict each other: those of which one has to be withdrawn.
 */
export function openFacts(compiled: Compiled, knowledge: Knowledge): readonly number[] {
  const { masks, beyond } = knowledge;
  if (isContradicted(compiled, masks))
    return ascending(withdrawalsOf(compiled, masks).flatMap(({ variables }) => variables));
  const open = stillOpen(compiled, knowledge);
  return tellingFrom(open, masks, (variable) => !beyond.has(variable), compiled.contradicted !== 0);
}

/** Facts that could still change what is possible and cannot be settled within the agreed extent, by number. */
export function unsettledFacts(compiled: Compiled, knowledge: Knowledge): readonly number[] {
  const { masks, beyond } = knowledge;
  if (beyond.size === 0 || isContradicted(compiled, masks)) return [];
  const open = stillOpen(compiled, knowledge);
  return tellingFrom(open, masks, () => true, compiled.contradicted !== 0).filter((variable) => beyond.has(variable));
}

/** Variables that can exclude a severity once some of the others that may be asked were answered. */
function tellingFrom(
  open: Narrowed,
  masks: readonly number[],
  mayBeAsked: (variable: number) => boolean,
  hasContradictions: boolean,
): readonly number[] {
  const { diagram, root } = open;
  if (bitsOf(severitiesFrom(open, root, masks)).length < 2) return [];
  const candidates = diagram.support(root).filter(mayBeAsked);
  // Where everything can be asked and every completion can be, each variable of what is open tells once the rest is known.
  if (!hasContradictions && candidates.length === diagram.support(root).length) return candidates;
  const found = new Set<number>();
  const seen = new Set<number>();
  const go = (node: number): void => {
    if (node < LEAVES || seen.has(node) || found.size === candidates.length) return;
    seen.add(node);
    const now = severitiesFrom(open, node, masks);
    if (bitsOf(now).length < 2) return;
    for (const variable of diagram.support(node).filter(mayBeAsked)) {
      const after = bitsOf(masks[variable] as number).map((value) => diagram.restrict(node, variable, value));
      if (after.some((one) => ![0, now].includes(severitiesFrom(open, one, masks)))) found.add(variable);
      for (const one of after) go(one);
    }
  };
  go(root);
  return candidates.filter((variable) => found.has(variable));
}

function ascending(numbers: readonly number[]): readonly number[] {
  return [...new Set(numbers)].sort((a, b) => a - b);
}
