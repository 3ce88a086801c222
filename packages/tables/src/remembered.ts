/**
 * The answers of a look-up that works by a number, each made once. Numbers come from files, so no more than `most`
 * answers are kept; further ones are made anew.
 */
export function remembered<V>(make: (key: number) => V, most = 2000): (key: number) => V {
  const answers = new Map<number, V>();
  return (key) => {
    const held = answers.get(key);
    if (held !== undefined) return held;
    const answer = make(key);
    if (answers.size < most) answers.set(key, answer);
    return answer;
  };
}
