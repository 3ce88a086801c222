/** One line of a result. `ratio` is against the first line of its group; `target` is what was asked for. */
export interface Row {
  readonly what: string;
  readonly value: number;
  readonly unit: string;
  readonly ratio?: number;
  readonly target?: number;
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  const upper = sorted[middle] ?? Number.NaN;
  return sorted.length % 2 === 1 ? upper : (upper + (sorted[middle - 1] ?? Number.NaN)) / 2;
}
