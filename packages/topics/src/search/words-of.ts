/** Words that say nothing about a subject. "no" stays: a missing thing is half of all observations. */
const EMPTY: ReadonlySet<string> = new Set(
  "a an and are as at be by do does for from has have how in is it its of off on or so that the there this to what where which with".split(
    " ",
  ),
);

/** The words of a text in small letters, as they are compared: without plural and the commonest endings. */
export function wordsOf(text: string): readonly string[] {
  return plainWords(text)
    .filter((word) => !EMPTY.has(word))
    .map(stemOf);
}

/** The words of a text in small letters. */
export function plainWords(text: string): readonly string[] {
  return text
    .toLowerCase()
    .replaceAll(/['’]/g, "")
    .split(/[^a-z0-9&.-]+/)
    .flatMap((word) => (/^[a-z]-[a-z]$/.test(word) ? [word] : word.split("-")))
    .map((word) => word.replace(/^[.&]+|[.&]+$/g, ""))
    .filter((word) => word !== "");
}

const ENDINGS = /(?:ings?|edly|ed|ies|es|s)$/;

/** What is left of a word without its ending; at least three letters. */
export function stemOf(word: string): string {
  if (word.length < 5 || /\d/.test(word)) return word.replace(/(?<=[a-z]{3})s$/, "");
  const stem = word.replace(ENDINGS, "");
  if (stem.length < 3) return word;
  return stem.replace(/([bdfgmnprt])\1$/, "$1").replace(/e$/, "");
}

/** Whether two words differ by at most this many letters left out, put in, changed or swapped with their neighbour. */
export function isWithin(one: string, other: string, most: number): boolean {
  if (Math.abs(one.length - other.length) > most) return false;
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
  return (row[other.length] ?? 0) <= most;
}
