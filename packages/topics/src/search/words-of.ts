/** Words that say nothing about a subject. "no" stays: a missing thing is half of all observations. */
const EMPTY: ReadonlySet<string> = new Set(
  "a about all also am an and any are as at be been being but by can could customer did do does done for found from get gets got had has have he her him his how i if in is it its just like lot me my of off on or our own quite really she so some that the their them there these they this those to very was we were what when where which who will with would you your".split(
    " ",
  ),
);

export function saysNothing(word: string): boolean {
  return EMPTY.has(word);
}

/** The words of a text in small letters. */
export function plainWords(text: string): readonly string[] {
  return text
    .toLowerCase()
    .replaceAll(/['’]/g, "")
    .split(/[^a-z0-9&+.-]+/)
    .flatMap((word) => (/^[a-z]-[a-z]$/.test(word) ? [word] : word.split("-")))
    .map((word) => word.replace(/^[.&+]+|[.&+]+$/g, ""))
    .filter((word) => word !== "");
}

const ENDINGS = /(?:ings?|edly|ed|ies|es|s)$/;

/** What is left of a word without its ending; at least three letters. */
export function stemOf(word: string): string {
  if (/\d/.test(word)) return word.replace(/(?<=..)s$/, "");
  if (word.length < 5) return word.replace(/(?<=[a-z]{3})s$/, "");
  const stem = word.replace(ENDINGS, "");
  if (stem.length < 3) return word;
  return stem.replace(/([bdfgmnprt])\1$/, "$1").replace(/e$/, "");
}
