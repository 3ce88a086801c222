/** Words that say nothing about a subject. "no" stays: a missing thing is half of all observations. */
const EMPTY: ReadonlySet<string> = new Set(
  "a about all also am an and any are as at be been being but by can could customer did do does done for found from get gets got had has have he her him his how i if in is it its just like lot me my of off on or our own quite really she so some that the their them there these they this those to very was we were what when where which who will with would you your".split(
    " ",
  ),
);

export function saysNothing(word: string): boolean {
  return EMPTY.has(word);
}

/** A number of volts such as a supply has: 150 to 350. */
const OF_A_SUPPLY = /\b(1[5-9]\d|2\d\d|3[0-4]\d)(?:\.\d)? ?(?:v|volts?)\b/g;
/** What a supply of 230 V may lie between (Electricity Safety, Quality and Continuity Regulations 2002). */
const LEAST_VOLTS = 216.2;
const MOST_VOLTS = 253;

/** What a number of volts says where no supply ought to have it: high or low, as well as the number. */
function spoken(volts: string): string {
  const number = Number.parseFloat(volts);
  if (number > MOST_VOLTS) return `${volts} voltage high`;
  return number < LEAST_VOLTS ? `${volts} voltage low` : volts;
}

/** Sizes, ratings and powers, which are written with the unit apart or spoken out. */
const UNITS: readonly (readonly [said: RegExp, unit: string])[] = [
  [/(?<=\d) ?(?:mm2|mm|mils?|mills?|sq mm)(?![a-z])/g, "mm"],
  [/(?<=\d) ?(?:amps?|amperes?)(?![a-z])/g, "a"],
  [/(?<=\d) kw(?![a-z])/g, "kw"],
];

/** The words of a text in small letters. */
export function plainWords(text: string): readonly string[] {
  const written = UNITS.reduce((said, [spelt, unit]) => said.replaceAll(spelt, unit), text.toLowerCase());
  return written
    .replaceAll(/['’]/g, "")
    .replaceAll(OF_A_SUPPLY, spoken)
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
