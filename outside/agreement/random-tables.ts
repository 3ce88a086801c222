/** Random whole numbers from 0 to `most`, the same on every run. */
export function wholeNumbers(seed: number): (most: number) => number {
  let state = seed;
  return (most) => {
    state = (Math.imul(state, 1103515245) + 12345) >>> 0;
    // The upper bits are the random ones.
    return Math.floor((state / 2 ** 32) * (most + 1));
  };
}

/** Counts of `size` by `size` cells: some empty, some with much agreement, at least one pair that differs. */
export function squareTable(size: number, next: (most: number) => number): number[][] {
  const agreement = next(20);
  const largest = 1 + next(8);
  const table = Array.from({ length: size }, (_, i) =>
    Array.from({ length: size }, (_, j) => (next(3) === 0 ? 0 : next(largest)) + (i === j ? next(agreement) : 0)),
  );
  const [first = []] = table;
  first[1] = (first[1] ?? 0) + 1;
  return table;
}

/** Items a row, categories a column: each item with the same number of ratings, not all in one category. */
export function ratingTable(categories: number, next: (most: number) => number): number[][] {
  const ratings = 2 + next(8);
  const items = 2 + next(20);
  return Array.from({ length: items }, (_, item) => {
    const row = Array.from({ length: categories }, () => 0);
    const usual = item < 2 ? item : next(categories - 1);
    for (let i = 0; i < ratings; i++) {
      const category = next(2) === 0 ? next(categories - 1) : usual;
      row[category] = (row[category] ?? 0) + 1;
    }
    return row;
  });
}
