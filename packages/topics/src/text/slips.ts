/** Letters left out, put in, changed, or swapped with their neighbour, between two words. */
export function slipsBetween(one: string, other: string): number {
  let [before, row] = [[] as number[], Array.from({ length: other.length + 1 }, (_, i) => i)];
  for (let i = 1; i <= one.length; i += 1) {
    const next = [i];
    for (let k = 1; k <= other.length; k += 1) {
      const same = one[i - 1] === other[k - 1] ? 0 : 1;
      let cost = Math.min((row[k] ?? 0) + 1, (next[k - 1] ?? 0) + 1, (row[k - 1] ?? 0) + same);
      if (i > 1 && k > 1 && one[i - 1] === other[k - 2] && one[i - 2] === other[k - 1])
        cost = Math.min(cost, (before[k - 2] ?? 0) + 1);
      next.push(cost);
    }
    [before, row] = [row, next];
  }
  return row[other.length] ?? 0;
}
