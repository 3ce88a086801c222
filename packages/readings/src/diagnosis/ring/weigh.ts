import type { Fault, Hypothesis } from "./fault.ts";
import type { Fit, Problem } from "./fit.ts";

/** Explanations of one kind, over the legs the fault may lie in. */
export interface Ranked {
  readonly key: string;
  /** The best of them. */
  readonly best: Fit;
  /** Every one of them with its part of the kind's probability. */
  readonly members: readonly { readonly fit: Fit; readonly part: number }[];
  readonly probability: number;
  /** None of the explanations accounts for the readings; `best` is the nearest. */
  readonly none?: boolean;
}

/** How often what two faults in legs are in one and the same: one bad accessory or box. */
const IN_ONE_LEG = 0.5;

/**
 * Cost of a hypothesis beside its misfit, as −2 ln: ln n for each size that is fitted (Schwarz), 2 ln of the number of
 * legs among which the leg of each fault is chosen, and −2 ln of how common each is, by itself and by what was seen.
 * How common is experience of the trade, not a count; a factor of two moves no finding that the readings carry.
 */
function occam({ faults }: Hypothesis, { observed, legs, input }: Problem): number {
  const used = new Set<number>();
  return faults.reduce((sum, { sizes, leg, common, key }) => {
    const seen = input.seen?.get(key.split(" ")[0] as string) ?? 1;
    const own = sizes.length * Math.log(observed.length) - 2 * Math.log(Math.min(1, common * seen));
    return sum + own + (leg === undefined ? 0 : legCost(leg, legs, used));
  }, 0);
}

function legCost(leg: number, legs: number, used: Set<number>): number {
  const share = used.size === 0 ? 1 / legs : used.has(leg) ? IN_ONE_LEG : (1 - IN_ONE_LEG) / legs;
  used.add(leg);
  return -2 * Math.log(share);
}

/** Cost of a fit with everything that is to be weighed. */
export function weightOf(one: Fit, problem: Problem): number {
  return one.cost + occam(one.hypothesis, problem);
}

/** What makes explanations one kind: everything but the legs and the sizes, in whatever order it was found. */
export function keyOf({ faults }: Hypothesis): string {
  return faults
    .map(({ key }) => key)
    .sort()
    .join(" + ");
}

const isInLeg = ({ leg }: Fault) => leg !== undefined;

/** Kinds of explanation, most probable first. Probabilities are among the explanations tried and add up to 1. */
export function ranked(fits: readonly Fit[], problem: Problem): readonly Ranked[] {
  const costs = fits.map((one) => weightOf(one, problem));
  const unlisted = noneOf(fits, costs);
  const least = Math.min(...costs, unlisted.cost);
  const kinds = new Map<string, Map<string, { readonly fit: Fit; readonly weight: number }>>();
  for (const [i, fit] of fits.entries()) {
    const { faults } = fit.hypothesis;
    const key = keyOf(fit.hypothesis);
    const weight = Math.exp((least - (costs[i] as number)) / 2);
    const kind = kinds.get(key) ?? new Map();
    kinds.set(key, kind);
    // Refinements from different starts that end in one place are one explanation.
    const place = faults
      .filter(isInLeg)
      .map((one) => `${one.key} ${one.leg}`)
      .sort()
      .join();
    if (weight > (kind.get(place)?.weight ?? -1)) kind.set(place, { fit, weight });
  }
  const none = Math.exp((least - unlisted.cost) / 2);
  const all = [...kinds.values()].reduce(
    (sum, kind) => [...kind.values()].reduce((s, { weight }) => s + weight, sum),
    none,
  );
  const found = [...kinds].map(([key, kind]) => rankedKind(key, [...kind.values()], all));
  found.push({
    key: "none",
    best: unlisted.fit,
    members: [{ fit: unlisted.fit, part: 1 }],
    probability: none / all,
    none: true,
  });
  return found.sort((a, b) => b.probability - a.probability);
}

function rankedKind(key: string, members: { readonly fit: Fit; readonly weight: number }[], all: number): Ranked {
  const whole = members.reduce((sum, { weight }) => sum + weight, 0);
  const sorted = members.sort((a, b) => b.weight - a.weight);
  const [best] = sorted;
  if (best === undefined) throw new Error("a kind without an explanation");
  const parts = sorted.map(({ fit, weight }) => ({ fit, part: whole > 0 ? weight / whole : 0 }));
  return { key, best: best.fit, members: parts, probability: whole / all };
}

/** How common it is that something is so that no explanation of the list has. */
const UNLISTED = 0.005;

/**
 * None of these: what an explanation leaves over comes from something that is not listed, so that the readings scatter
 * about it by more than the meter's errors. By how much is fitted to what is left; the best explanation to start from is
 * the nearest.
 */
function noneOf(fits: readonly Fit[], costs: readonly number[]): { readonly cost: number; readonly fit: Fit } {
  let best: { cost: number; fit: Fit } | undefined;
  for (const [i, fit] of fits.entries()) {
    const count = fit.observed.reduce((sum, { bound }) => sum + (bound === "void" ? 0 : 1), 0);
    const { misfit } = fit;
    const scattered = misfit > count && count > 0 ? count + count * Math.log(misfit / count) : misfit;
    const cost = (costs[i] as number) - misfit + scattered - 2 * Math.log(UNLISTED);
    if (best === undefined || cost < best.cost) best = { cost, fit };
  }
  if (best === undefined) throw new Error("nothing to rank");
  return best;
}
