import type { Fit, Problem } from "./fit.ts";
import type { Hypothesis } from "./ring-state.ts";
import { occam } from "./weights.ts";

/** Explanations of one kind, over the legs the fault may lie in. */
export interface Ranked {
  readonly key: string;
  /** The best of them. */
  readonly best: Fit;
  /** Every one of them with its part of the kind's probability. */
  readonly members: readonly { readonly fit: Fit; readonly part: number }[];
  readonly probability: number;
}

/** What makes explanations one kind: everything but the leg and the sizes. */
function keyOf({ ring, cpc, points }: Hypothesis): string {
  const { leg: _, ...state } = { leg: 0, ...ring };
  const sorted = [...points].sort((a, b) => a.point - b.point || (a.kind < b.kind ? -1 : 1));
  return JSON.stringify([state, cpc, sorted]);
}

/** Kinds of explanation, most probable first. Probabilities are among the explanations tried and add up to 1. */
export function ranked(fits: readonly Fit[], { observed, input }: Problem): readonly Ranked[] {
  const legs = input.orderKnown ? input.points.length + 1 : 1;
  const costs = fits.map((one) => one.cost + occam(one.hypothesis, observed.length, legs));
  const least = Math.min(...costs);
  const kinds = new Map<string, { readonly fit: Fit; readonly weight: number }[]>();
  for (const [i, one] of fits.entries()) {
    const key = keyOf(one.hypothesis);
    const weight = Math.exp((least - (costs[i] as number)) / 2);
    const kind = kinds.get(key) ?? [];
    // Refinements from different starts that end in one place are one explanation.
    if (!("leg" in one.hypothesis.ring) && kind[0] !== undefined) {
      if (weight > kind[0].weight) kind[0] = { fit: one, weight };
    } else kind.push({ fit: one, weight });
    kinds.set(key, kind);
  }
  const all = [...kinds.values()].flat().reduce((sum, { weight }) => sum + weight, 0);
  return [...kinds]
    .map(([key, members]): Ranked => {
      const whole = members.reduce((sum, { weight }) => sum + weight, 0);
      const sorted = [...members].sort((a, b) => b.weight - a.weight);
      const [best] = sorted;
      if (best === undefined) throw new Error("a kind without an explanation");
      const parts = sorted.map(({ fit, weight }) => ({ fit, part: whole > 0 ? weight / whole : 0 }));
      return { key, best: best.fit, members: parts, probability: whole / all };
    })
    .sort((a, b) => b.probability - a.probability);
}
