/** Where a share lies with 95 % confidence by Wilson's score, from so many of a number. */
export function wilson(count: number, of: number): readonly [low: number, high: number] {
  if (of === 0) return [0, 1];
  const z = 1.959964;
  const share = count / of;
  const middle = share + (z * z) / (2 * of);
  const half = z * Math.sqrt((share * (1 - share)) / of + (z * z) / (4 * of * of));
  const scale = 1 + (z * z) / of;
  return [Math.max(0, (middle - half) / scale), Math.min(1, (middle + half) / scale)];
}

/** "12 of 300, 4.0 % (2.3 to 6.9)". */
export function share(count: number, of: number): string {
  if (of === 0) return "0 of 0";
  const [low, high] = wilson(count, of).map((part) => (100 * part).toFixed(1));
  return `${count} of ${of}, ${((100 * count) / of).toFixed(1)} % (${low} to ${high})`;
}
