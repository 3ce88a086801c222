import { type Compiled, type FactGround, isKnown, readAnswers } from "@good-grounds/core";
import type { KnownFact } from "../results.ts";

/** The values of a fact as a bit set over the cells that the rules of its subject tell apart. */
export interface Values {
  readonly mask: number;
  readonly ground: FactGround | undefined;
}

/** The values that something known leaves possible, with the ground that is shown for them. */
export function valuesOfKnown(known: KnownFact, compiled: Compiled): Values | undefined {
  const variable = compiled.index.get(`fact ${known.fact}`);
  if (variable === undefined || known.value === null) return undefined;
  const { cells } = compiled.variables[variable] as Compiled["variables"][number];
  const leaf = "leaf" in known ? known.leaf : undefined;
  if (leaf !== undefined && leaf.kind !== "fact" && leaf.kind !== "fact-not-known" && cells.between !== undefined) {
    if (!isKnown(leaf)) return undefined;
    const mask = cells.between(leaf.low, leaf.high).reduce((bits, cell) => bits | (1 << cell), 0);
    return { mask, ground: leaf };
  }
  const { knowledge, faults } = readAnswers(compiled, { facts: { [known.fact]: known.value } });
  if (faults.length > 0) return undefined;
  const ground = knowledge.grounds.get(known.fact);
  return { mask: knowledge.masks[variable] as number, ground: placed(ground, leaf) };
}

/** What a recorded value says of the fact, at the place where it is recorded. */
function placed(ground: FactGround | undefined, leaf: FactGround | undefined): FactGround | undefined {
  if (ground?.kind !== "fact" || leaf?.kind !== "fact") return ground;
  return { ...ground, how: leaf.how, detail: { ...ground.detail, path: leaf.detail.path } };
}

/** Bit set of all values of a fact. */
export function allValues(compiled: Compiled, variable: number): number {
  return 2 ** (compiled.variables[variable]?.cells.values.length ?? 1) - 1;
}

/** The values of a bit set by name, "a | b". */
export function namesOf(mask: number, compiled: Compiled, variable: number): string {
  const values = compiled.variables[variable]?.cells.values ?? [];
  return values.filter((_, cell) => (mask & (1 << cell)) !== 0).join(" | ");
}
