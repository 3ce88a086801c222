import { type Finding, SEVERITY } from "@good-grounds/core";

/** How near to harm a failure of a check is, 0 nearest; what is judged comes from elsewhere and is only ordered here. */
export interface Ranked {
  readonly id: string;
  readonly harm: number;
}

type Order = (a: Finding, b: Finding) => number;

/**
 * Worst first, the same wherever findings are listed: the verdict, then how near to harm a failure is, then the smaller
 * margin. What has no margin, or no rank, stands last among its equals.
 */
export function worstFirst(checks: readonly Ranked[]): Order {
  const ranks = new Map(checks.map(({ id, harm }) => [id, harm]));
  const rank = ({ check }: Finding) => ranks.get(check) ?? LAST;
  return (a, b) =>
    SEVERITY[b.judgement.verdict] - SEVERITY[a.judgement.verdict] ||
    rank(a) - rank(b) ||
    bounded(a.judgement.margin) - bounded(b.judgement.margin);
}

/** Places with their findings worst first, and the places by the worst of each; a place without findings comes last. */
export function placesWorstFirst<P extends { readonly findings: readonly Finding[] }>(
  places: readonly P[],
  checks: readonly Ranked[],
): readonly P[] {
  const order = worstFirst(checks);
  return places
    .map((place) => ({ ...place, findings: [...place.findings].sort(order) }))
    .sort(({ findings: [a] }, { findings: [b] }) => {
      if (a === undefined || b === undefined) return Number(a === undefined) - Number(b === undefined);
      return order(a, b);
    });
}

const LAST = 1e9;

/** Two that have no end are equal: their difference would be no number. */
function bounded(margin: number): number {
  return Number.isNaN(margin) ? LAST : Math.min(LAST, Math.max(-LAST, margin));
}
