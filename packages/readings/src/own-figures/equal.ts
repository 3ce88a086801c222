/** Figures with decimals are sums of decimals: equal within this part of a digit. */
const SLACK = 1e-6;

/** Whether two figures show the same, on a display of this resolution. */
export function sameShown(a: number, b: number, resolution: number): boolean {
  return Math.abs(a - b) < resolution * SLACK;
}

/** Whether a computed value, rounded for a display of this resolution, is what was read; a half may go either way. */
export function roundsTo(computed: number, shown: number, resolution: number): boolean {
  return Math.abs(computed - shown) <= resolution * (0.5 + SLACK);
}
