import type { Compiled, Expression, Severity } from "@good-grounds/core";
import { SEVERITIES } from "@good-grounds/core";

/** Every assignment of a topic is tried up to so many; beyond, as many drawn at random. */
export const EXHAUSTIVE = 20_000;

/**
 * The rules of a subject read directly, one full assignment at a time, without the diagram: what the laws are held
 * against. Only laws, tests and measurements use it.
 */
export function severityAt(compiled: Compiled, values: readonly number[]): Severity {
  const { subject } = compiled;
  const holds = (rule: Expression): boolean => holdsAt(compiled, values, rule);
  let worst = 0;
  for (const path of subject.paths) {
    if (!holds(path.exists)) continue;
    let left = 0;
    for (const { gone, sound } of path.layers) left += holds(gone) ? 0 : holds(sound) ? 2 : 1;
    worst = Math.max(worst, left === 0 ? 3 : left === 1 ? 2 : 0);
  }
  if (subject.departures.some(({ when }) => holds(when))) worst = Math.max(worst, 1);
  for (const { when, least } of subject.dangers ?? []) if (holds(when)) worst = Math.max(worst, least === "C1" ? 3 : 2);
  return SEVERITIES[worst] as Severity;
}

/** Whether the statements of a full assignment can all be true, read directly. */
export function canBeAt(compiled: Compiled, values: readonly number[]): boolean {
  return !(compiled.subject.contradictions ?? []).some(({ when }) => holdsAt(compiled, values, when));
}

/** Whether a rule holds under a full assignment, read directly. */
export function holdsAt({ subject, variables, index }: Compiled, values: readonly number[], rule: Expression): boolean {
  const holds = (rule: Expression): boolean => {
    switch (rule.op) {
      case "always":
        return true;
      case "never":
        return false;
      case "all":
        return rule.of.every(holds);
      case "any":
        return rule.of.some(holds);
      case "not":
        return !holds(rule.of);
      case "state": {
        const about = subject.states?.[rule.state]?.values ?? {};
        const worstFirst = Object.entries(about).reverse();
        const [value = ""] = worstFirst.find(([, { when }]) => when === undefined || holds(when)) ?? [];
        return rule.values.includes(value);
      }
      default: {
        const number = index.get(rule.op === "held" ? `point ${rule.point}` : `fact ${rule.fact}`) as number;
        const cells = variables[number]?.cells;
        const value = values[number] as number;
        if ("limit" in rule) return cells?.beyond?.(rule.op, rule.limit).includes(value) ?? false;
        const word = cells?.values[value] as string;
        return rule.op === "held" ? word === rule.position : rule.values.includes(word);
      }
    }
  };
  return holds(rule);
}

/** Every way of giving the variables values within the masks. */
export function* assignments(masks: readonly number[], from = 0): Generator<number[]> {
  if (from === masks.length) {
    yield new Array<number>(masks.length).fill(0);
    return;
  }
  const mask = masks[from] as number;
  for (let value = 0; mask >> value > 0; value++)
    if (mask & (1 << value))
      for (const rest of assignments(masks, from + 1)) {
        rest[from] = value;
        yield rest;
      }
}

/** How many assignments there are within the masks. */
export function countOf(masks: readonly number[]): number {
  return masks.reduce((product, mask) => product * bits(mask), 1);
}

function bits(mask: number): number {
  let count = 0;
  for (let rest = mask; rest > 0; rest &= rest - 1) count++;
  return count;
}
