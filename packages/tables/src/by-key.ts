/** A look-up by key. A key that stands twice is a fault of the data and stops the program at load. */
export function byKey<K, V>(entries: Iterable<readonly [K, V]>): ReadonlyMap<K, V> {
  const found = new Map<K, V>();
  for (const [key, value] of entries) {
    if (found.has(key)) throw new RangeError(`the table has two rows for ${String(key)}`);
    found.set(key, value);
  }
  return found;
}
