/** The names that a misspelt one most probably stands for, nearest first; names alike only by chance are left out. */
export function nearTo(name: string, names: readonly string[]): readonly string[] {
  const most = Math.max(1, Math.floor(name.length / 3));
  return names
    .map((one) => [one, distance(name, one)] as const)
    .filter(([one, far]) => far <= most || (name.length > 3 && one.split("-").includes(name)))
    .sort((a, b) => a[1] - b[1])
    .slice(0, 3)
    .map(([one]) => one);
}

/** Letters to add, drop, change or turn round until one word is the other. */
function distance(a: string, b: string): number {
  let before: number[] = [];
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let best = Math.min((next[j - 1] ?? 0) + 1, (row[j] ?? 0) + 1, (row[j - 1] ?? 0) + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        best = Math.min(best, (before[j - 2] ?? 0) + 1);
      next.push(best);
    }
    [before, row] = [row, next];
  }
  return row[b.length] ?? 0;
}
