import type { MatchTrait, TraitWeight } from "@good-grounds/core";
import type { Traits } from "./traits.ts";
import { excludeEachOther, type Vocabulary } from "./words.ts";

/**
 * How much a trait speaks for two circuits being one: natural logarithm of how much more often it is met between a
 * circuit and itself years later than between two circuits of a house. Judged from practice, not from counts; how well
 * the matching does is measured in outside/earlier.
 */
const LIKE = Object.freeze({
  words: [-1.5, 4] as const,
  excluded: -2,
  designation: [-0.4, 1] as const,
  load: [-3, 1.4] as const,
  shape: [-1.5, 0.7] as const,
  phases: [-3, 0.1] as const,
  standard: [-0.2, 0.2] as const,
  type: [-0.3, 0.3] as const,
  rated: [-0.8, 0.7] as const,
  line: [-2.5, 1] as const,
  cpc: [-0.9, 0.5] as const,
});

/** Spread of ln(ratio) of the same thing stated or read twice, and between different circuits; the ends of its weight. */
interface Closeness {
  readonly same: number;
  readonly different: number;
  readonly least: number;
  readonly most: number;
}

export const LENGTH: Closeness = Object.freeze({ same: 0.12, different: 0.7, least: -2.5, most: 1.8 });
export const POINTS: Closeness = Object.freeze({ same: 0.12, different: 0.7, least: -2.5, most: 1.8 });
const RESISTANCE: Closeness = Object.freeze({ same: 0.06, different: 0.8, least: -1.5, most: 2.4 });
/** A display shows hundredths of an ohm, and leads leave as much again. */
const OHMS_UNSURE = 0.02;
/** All readings together: they depend on each other, and a fault may have changed every one. */
const RESISTANCES: readonly [least: number, most: number] = [-2.5, 3.5];

/** The weight of every trait known of both circuits, for (above 0) and against. The same whichever is named first. */
export function traitWeights(a: Traits, b: Traits, vocabulary: Vocabulary): readonly TraitWeight[] {
  const weights: TraitWeight[] = [];
  const add = (trait: MatchTrait, weight: number) => weights.push({ trait, weight });
  const likeness = vocabulary.likeness(a.words, b.words);
  if (likeness !== undefined) {
    const [against, favour] = LIKE.words;
    add("words", against + (favour - against) * likeness + (excludeEachOther(a.words, b.words) ? LIKE.excluded : 0));
  }
  add("designation", LIKE.designation[a.designation === b.designation ? 1 : 0]);
  for (const trait of ["load", "shape", "phases", "standard", "type", "rated", "line", "cpc"] as const) {
    const [one, other] = [a[trait], b[trait]];
    if (one !== null && other !== null) add(trait, LIKE[trait][one === other ? 1 : 0]);
  }
  if (a.points !== null && b.points !== null) add("points", closeness(Math.log(a.points / b.points), POINTS));
  if (a.length !== null && b.length !== null) add("length", closeness(apart(a.length, b.length), LENGTH));
  const readings = resistances(a, b);
  if (readings !== null) add("readings", readings);
  return weights;
}

export function total(weights: readonly TraitWeight[]): number {
  return weights.reduce((sum, { weight }) => sum + weight, 0);
}

function resistances(a: Traits, b: Traits): number | null {
  const found: number[] = [];
  for (const name of ["r1r2", "r1", "rn", "r2"] as const) {
    const [one, other] = [a.resistances[name], b.resistances[name]];
    if (one === null || other === null) continue;
    const same = Math.hypot(RESISTANCE.same, OHMS_UNSURE / Math.min(one, other));
    if (same < RESISTANCE.different) found.push(closeness(Math.log(one / other), { ...RESISTANCE, same }));
  }
  if (found.length === 0) return null;
  const [least, most] = RESISTANCES;
  return Math.max(
    least,
    Math.min(
      most,
      found.reduce((sum, one) => sum + one, 0),
    ),
  );
}

/** ln of the ratio of two lengths known between limits; 0 where one may be the other. */
export function apart([low, high]: readonly [number, number], [from, to]: readonly [number, number]): number {
  if (low > to) return Math.log(low / to);
  return from > high ? Math.log(high / from) : 0;
}

/** ln of the ratio of two normal densities at `difference`. */
export function closeness(difference: number, { same, different, least, most }: Closeness): number {
  const weight = Math.log(different / same) - difference ** 2 / 2 / same ** 2 + difference ** 2 / 2 / different ** 2;
  return Math.max(least, Math.min(most, weight));
}
