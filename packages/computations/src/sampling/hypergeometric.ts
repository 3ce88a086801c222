/**
 * Chances of the number of defective parts found when `inspected` of `population` parts are opened and `defective` of all
 * are bad: index k holds the chance of finding k, from 0 to `inspected`. Weights are built outwards from the most likely
 * number and divided by their sum, so that none is lost however small. All counts are whole numbers.
 * Source: the hypergeometric distribution, C(D,k)·C(N−D,n−k) ÷ C(N,n).
 */
export function chancesFound(population: number, defective: number, inspected: number): Float64Array {
  const [N, D, n] = [population, defective, inspected];
  if (![N, D, n].every((count) => Number.isInteger(count) && count >= 0) || D > N || n > N)
    throw new RangeError(`no sample of ${n} from ${N} with ${D} defective`);
  const chances = new Float64Array(n + 1);
  const [least, most] = [Math.max(0, n + D - N), Math.min(n, D)];
  const mode = Math.min(most, Math.max(least, Math.floor(((n + 1) * (D + 1)) / (N + 2))));
  chances[mode] = 1;
  for (let k = mode; k < most; k++)
    chances[k + 1] = ((chances[k] as number) * ((D - k) * (n - k))) / ((k + 1) * (N - D - n + k + 1));
  for (let k = mode; k > least; k--)
    chances[k - 1] = ((chances[k] as number) * (k * (N - D - n + k))) / ((D - k + 1) * (n - k + 1));
  const sum = chances.reduce((total, weight) => total + weight, 0);
  return chances.map((weight) => weight / sum);
}

/** Chance of finding at most `found` defective parts in the sample. */
export function chanceOfAtMost(found: number, population: number, defective: number, inspected: number): number {
  const chances = chancesFound(population, defective, inspected);
  // The smaller side is summed, so that a small chance keeps its digits.
  const below = chances.slice(0, found + 1).reduceRight((total, chance) => total + chance, 0);
  const above = chances.slice(found + 1).reduceRight((total, chance) => total + chance, 0);
  return below <= above ? below : 1 - above;
}
