import { CLASSIFICATIONS, type Classification, type FleissKappa } from "@good-grounds/core";

/**
 * Fleiss' kappa from the ratings of each item. With r_i ratings of item i, of which n_ij fall in category j; means over N
 * items rated at least twice for agreement, and over all M rated items for shares:
 *
 *     agreement on item i   P_i = Σ_j n_ij (n_ij − 1) / (r_i (r_i − 1))
 *     share of category j   p_j = (1/M) Σ_i n_ij / r_i
 *     observed P = (1/N) Σ_i P_i      expected P_e = Σ_j p_j²      κ = (P − P_e) / (1 − P_e)
 *     category j alone      κ_j = 1 − (1/N) Σ_i n_ij (r_i − n_ij) / (r_i (r_i − 1)) / (p_j (1 − p_j))
 *
 * With the same r for all items this is J. L. Fleiss, Psychological Bulletin 76 (1971) 378–382. For an r_i that varies it
 * is the generalisation of K. L. Gwet, Handbook of Inter-Rater Reliability (4th edition, 2014): every item has the same
 * weight, however often it was rated, and one rated once counts in the shares only. Who gave a rating plays no part.
 *
 * Not defined without an item rated twice, and where only one category occurs: then P_e = 1 and κ is 0 / 0. A category
 * that was never chosen has no κ_j.
 */
export function fleissKappa(ratings: readonly (readonly Classification[])[]): FleissKappa {
  const rated = ratings.filter(({ length }) => length > 0);
  const again = rated.filter(({ length }) => length > 1);
  const items = again.length;
  const ratedOnce = rated.length - items;
  if (items === 0) return { defined: false, because: "no-items", items, ratedOnce };
  const chosen = new Set(rated.flat());
  if (chosen.size === 1) return { defined: false, because: "one-category-only", items, ratedOnce };

  const parts = CLASSIFICATIONS.map((classification) => {
    const countIn = (item: readonly Classification[]) => item.filter((one) => one === classification).length;
    const share = mean(rated.map((item) => countIn(item) / item.length));
    const agreed = mean(again.map((item) => (countIn(item) * (countIn(item) - 1)) / pairs(item)));
    const split = mean(again.map((item) => (countIn(item) * (item.length - countIn(item))) / pairs(item)));
    const alone = chosen.has(classification) ? 1 - split / (share * (1 - share)) : null;
    return { classification, share, agreed, alone };
  });
  const observed = parts.reduce((sum, { agreed }) => sum + agreed, 0);
  const expected = parts.reduce((sum, { share }) => sum + share ** 2, 0);
  return Object.freeze({
    defined: true,
    value: (observed - expected) / (1 - expected),
    observed,
    expected,
    items,
    ratedOnce,
    byClassification: Object.fromEntries(parts.map(({ classification, alone }) => [classification, alone])) as Record<
      Classification,
      number | null
    >,
  });
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Ordered pairs of ratings of one item. */
function pairs({ length }: readonly Classification[]): number {
  return length * (length - 1);
}
