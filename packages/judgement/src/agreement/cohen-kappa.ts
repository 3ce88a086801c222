import { CLASSIFICATIONS, type Classification, type CohenKappa, SEVERITIES } from "@good-grounds/core";
import { kappaOfTable } from "./kappa-of-table.ts";

/**
 * How a difference counts. `unweighted`: any difference is a whole one, and FI is a category like the others. `linear`
 * and `quadratic`: by the steps along none, C3, C2, C1; weight 1 − d/3 or 1 − (d/3)² for d steps.
 */
export type Weighting = "unweighted" | "linear" | "quadratic";

const LAST_STEP = SEVERITIES.length - 1;

const WEIGHT: Readonly<Record<Weighting, (i: number, j: number) => number>> = {
  unweighted: (i, j) => (i === j ? 1 : 0),
  linear: (i, j) => 1 - Math.abs(i - j) / LAST_STEP,
  quadratic: (i, j) => 1 - ((i - j) / LAST_STEP) ** 2,
};

/**
 * Cohen's kappa of two judges from their choices on the same items: the agreement left after taking off what chance
 * would bring, as a part of what chance leaves open. 1 is full agreement, 0 what chance brings. Formulae and sources at
 * {@link kappaOfTable}. FI has no place in the order, so with weights an item on which either chose FI is left out;
 * `items` says how many are left.
 */
export function cohenKappa(
  pairs: readonly (readonly [Classification, Classification])[],
  weighting: Weighting = "unweighted",
): CohenKappa {
  const categories: readonly Classification[] = weighting === "unweighted" ? CLASSIFICATIONS : SEVERITIES;
  const counts = categories.map(() => categories.map(() => 0));
  for (const [first, second] of pairs) {
    const row = counts[categories.indexOf(first)];
    const column = categories.indexOf(second);
    if (row !== undefined && column >= 0) row[column] = (row[column] ?? 0) + 1;
  }
  return kappaOfTable(counts, WEIGHT[weighting]);
}
