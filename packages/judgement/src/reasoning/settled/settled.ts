import {
  type Answer,
  type AnswerFault,
  type Compiled,
  type FactGround,
  type Knowledge,
  readAnswers,
} from "@good-grounds/core";
import type { Differing, KnownFact, Otherwise } from "../results.ts";
import type { Agreed } from "./agreed.ts";
import { allValues, namesOf } from "./known-mask.ts";

/** What is known once what was said and what is known are brought together. */
export interface Settled {
  readonly knowledge: Knowledge;
  readonly faults: readonly AnswerFault[];
  /** What is known and was taken as the answer. */
  readonly taken: readonly KnownFact[];
  readonly against: readonly Otherwise[];
  readonly differing: readonly Differing[];
  /** The two readings of every fact of which statement and knowledge contradict each other, as bit sets. */
  readonly readings: readonly { readonly variable: number; readonly stated: number; readonly known: number }[];
}

/**
 * What is said, completed by what is known. What fits both is taken, so nothing that is known is asked again. Where
 * nothing fits both, neither is preferred: what either says stays possible until somebody settles it. A limitation stays
 * one: what is known stands beside it. Where the things spoken of differ, only what is said counts.
 */
export function settled(
  said: Readonly<Record<string, Answer>>,
  positions: Readonly<Record<string, string>>,
  known: ReadonlyMap<string, Agreed>,
  compiled: Compiled,
): Settled {
  const { knowledge, faults } = readAnswers(compiled, { facts: said, positions });
  const masks = [...knowledge.masks];
  const grounds = new Map(knowledge.grounds);
  const taken: KnownFact[] = [];
  const against: Otherwise[] = [];
  const differing: Differing[] = [];
  const readings: { variable: number; stated: number; known: number }[] = [];
  for (const [name, agreed] of known) {
    const variable = compiled.index.get(`fact ${name}`);
    if (variable === undefined) continue;
    if (agreed.differing !== undefined) differing.push(agreed.differing);
    if (agreed.answer === undefined) continue;
    const { known: one, values } = agreed.answer;
    if (knowledge.beyond.has(variable)) {
      against.push({ ...one, stated: null });
      continue;
    }
    const stated = masks[variable] ?? allValues(compiled, variable);
    const both = stated & values.mask;
    if (both === 0) {
      masks[variable] = stated | values.mask;
      against.push({ ...one, stated: namesOf(stated, compiled, variable) });
      readings.push({ variable, stated, known: values.mask });
    } else if (both !== stated) {
      masks[variable] = both;
      const ground = both === values.mask ? values.ground : narrowedGround(values.ground, both, compiled, variable);
      if (ground !== undefined) grounds.set(name, ground);
      taken.push(withValue(one, both, values.mask, compiled, variable));
    }
  }
  return { knowledge: { masks, beyond: knowledge.beyond, grounds }, faults, taken, against, differing, readings };
}

function withValue(one: KnownFact, mask: number, whole: number, compiled: Compiled, variable: number): KnownFact {
  return mask === whole ? one : { ...one, value: namesOf(mask, compiled, variable) };
}

/** The ground of an answer of which only some values fit what was said. */
function narrowedGround(
  ground: FactGround | undefined,
  mask: number,
  compiled: Compiled,
  variable: number,
): FactGround | undefined {
  if (ground?.kind !== "fact") return ground;
  const words = compiled.variables[variable]?.cells.words ?? [];
  const text = words.filter((_, cell) => (mask & (1 << cell)) !== 0).join(", or ");
  return { ...ground, word: namesOf(mask, compiled, variable), detail: { ...ground.detail, text } };
}
