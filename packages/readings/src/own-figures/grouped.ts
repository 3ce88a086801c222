/** Things by a key, in the order in which they came; the groups in the order of their first. */
export function grouped<T, K>(things: readonly T[], keyOf: (thing: T) => K): ReadonlyMap<K, readonly T[]> {
  const groups = new Map<K, T[]>();
  for (const thing of things) {
    const key = keyOf(thing);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [thing]);
    else group.push(thing);
  }
  return groups;
}

/** The largest of some groups, the first of them where several are as large. */
export function largestOf<T>(groups: ReadonlyMap<unknown, readonly T[]>): readonly T[] {
  let largest: readonly T[] = [];
  for (const group of groups.values()) if (group.length > largest.length) largest = group;
  return largest;
}
