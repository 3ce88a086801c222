import type { CohenKappa } from "@good-grounds/core";

/** The 97.5 % point of the normal distribution, for an interval of 95 %. */
const NORMAL_975 = 1.959963984540054;

/**
 * Kappa of a square table of counts: rows are the first judge's categories, columns the second's. With n items,
 * p_ij = count_ij / n, row sums r_i, column sums c_j and agreement weights w_ij (1 on the diagonal):
 *
 *     observed p_o = Σ w_ij p_ij        expected p_e = Σ w_ij r_i c_j        κ = (p_o − p_e) / (1 − p_e)
 *
 * Standard error for large samples, for use in an interval (not for a test of κ = 0), with u_i = Σ_j c_j w_ij and
 * v_j = Σ_i r_i w_ij:
 *
 *     SE² = { Σ p_ij [w_ij − (u_i + v_j)(1 − κ)]² − [κ − p_e (1 − κ)]² } / { n (1 − p_e)² }
 *
 * The second square is that of the mean of the first bracket, so the difference is worked out as the spread about that
 * mean, which rounding cannot make negative.
 *
 * Sources: J. Cohen, Educational and Psychological Measurement 20 (1960) 37–46, and Psychological Bulletin 70 (1968)
 * 213–220; J. L. Fleiss, J. Cohen, B. S. Everitt, Psychological Bulletin 72 (1969) 323–327 for the standard error.
 *
 * Not defined without items, and where both judges used one and the same category only: then p_e = 1 and κ is 0 / 0.
 */
export function kappaOfTable(
  counts: readonly (readonly number[])[],
  weight: (row: number, column: number) => number,
): CohenKappa {
  const cells = counts.flatMap((row, i) => row.map((count, j) => ({ i, j, count })).filter(({ count }) => count > 0));
  const items = cells.reduce((sum, { count }) => sum + count, 0);
  if (items === 0) return { defined: false, because: "no-items", items };
  const [only] = cells;
  if (cells.length === 1 && only !== undefined && only.i === only.j)
    return { defined: false, because: "one-category-only", items };

  const rows = counts.map((row) => row.reduce((sum, count) => sum + count, 0) / items);
  const columns = counts.map((_, j) => counts.reduce((sum, row) => sum + (row[j] ?? 0), 0) / items);
  const ofRow = rows.map((_, i) => columns.reduce((sum, share, j) => sum + share * weight(i, j), 0));
  const ofColumn = columns.map((_, j) => rows.reduce((sum, share, i) => sum + share * weight(i, j), 0));
  const observed = cells.reduce((sum, { i, j, count }) => sum + weight(i, j) * count, 0) / items;
  const expected = rows.reduce((sum, share, i) => sum + share * (ofRow[i] ?? 0), 0);
  const value = (observed - expected) / (1 - expected);

  const mean = value - expected * (1 - value);
  const spread = cells.reduce((sum, { i, j, count }) => {
    const distance = weight(i, j) - ((ofRow[i] ?? 0) + (ofColumn[j] ?? 0)) * (1 - value);
    return sum + (count / items) * (distance - mean) ** 2;
  }, 0);
  const standardError = Math.sqrt(spread / items) / (1 - expected);
  const reach = NORMAL_975 * standardError;
  const low = Math.max(-1, value - reach);
  const high = Math.min(1, value + reach);
  return Object.freeze({ defined: true, value, observed, expected, standardError, low, high, items });
}
