/** Ways of writing one thing on a circuit chart, each list under the word it is known by here. */
const SYNONYMS: Readonly<Record<string, readonly string[]>> = {
  socket: ["outlet", "skt", "sock", "so", "power", "ring", "rfc", "rfc1", "plug", "13a"],
  light: ["lighting", "ltg", "lt", "lamp", "luminaire"],
  cooker: ["oven", "hob", "cook", "range"],
  shower: ["shwr"],
  immersion: ["cylinder", "ih"],
  waterheater: ["wh"],
  boiler: ["ch", "heating", "control"],
  alarm: ["smoke", "detector", "detection"],
  vehicle: ["ev", "evse", "charger", "charging", "chargepoint", "car"],
  feed: ["submain", "sub", "distribution", "db", "sdb", "distributor"],
  ground: ["gf", "downstair", "grd", "gnd"],
  first: ["ff", "upstair", "1st"],
  second: ["sf", "2nd"],
  loft: ["attic"],
  basement: ["cellar"],
  kitchen: ["kit"],
  living: ["lounge", "sitting"],
  bathroom: ["bath", "ensuite"],
  bedroom: ["bed"],
  outdoor: ["outside", "external", "exterior", "garden", "ext"],
  shed: ["outbuilding"],
  garage: ["gge"],
  rear: ["back"],
  front: [],
  utility: ["util"],
  workshop: ["wkshop"],
  office: [],
  storage: ["nsh"],
};

/** Words that tell nothing of which circuit it is. */
const EMPTY: ReadonlySet<string> = new Set(
  "a an and at for from in into of on the to with circuit final main floor radial supply way new old existing kw".split(
    " ",
  ),
);

/** Words of which a circuit has at most one in earnest: two of a list on two circuits speak against their being one. */
const APART: readonly ReadonlySet<string>[] = [
  new Set(["ground", "first", "second", "loft", "basement"]),
  new Set(["front", "rear"]),
];

const CANONICAL: ReadonlyMap<string, string> = new Map(
  Object.entries(SYNONYMS).flatMap(
    ([word, others]) => [[word, word], ...others.map((other) => [other, word] as const)] as [string, string][],
  ),
);

/** Two words merged into one before the text is taken apart. */
const PHRASES: readonly (readonly [RegExp, string])[] = [
  [/\bsocket[\s-]?outlets?\b/g, "socket"],
  [/\bring (?:main|final)s?\b/g, "socket"],
  [/\bwater heater\b/g, "waterheater"],
  [/\ben[\s-]suite\b/g, "ensuite"],
  [/\bnight storage\b/g, "storage"],
];

/** A slip of the pen is sought in words of at least this length. */
const LONG_ENOUGH = 5;

/** The words of a description that tell which circuit it is, each in the form it is known by. */
export function wordsOf(description: string): ReadonlySet<string> {
  let text = description.normalize("NFKC").toLowerCase();
  for (const [phrase, word] of PHRASES) text = text.replaceAll(phrase, word);
  const found = new Set<string>();
  for (const raw of text.match(/[\p{L}\p{N}]+/gu) ?? []) {
    const word = canonical(raw);
    if (!EMPTY.has(word)) found.add(word);
  }
  return found;
}

/** Pairs of words that exclude each other: one circuit upstairs, the other downstairs. */
export function excludeEachOther(a: ReadonlySet<string>, b: ReadonlySet<string>): boolean {
  return APART.some((list) => {
    const [here, there] = [[...list].filter((word) => a.has(word)), [...list].filter((word) => b.has(word))];
    return here.length > 0 && there.length > 0 && !here.some((word) => there.includes(word));
  });
}

function canonical(raw: string): string {
  for (const word of [raw, raw.replace(/s$/, "")]) {
    const known = CANONICAL.get(word);
    if (known !== undefined) return known;
  }
  const single = raw.length > 3 ? raw.replace(/s$/, "") : raw;
  return slipOf(single) ?? single;
}

/** The one known word a misspelt one is a single letter away from, if there is exactly one. */
function slipOf(word: string): string | undefined {
  if (word.length < LONG_ENOUGH || word.length > 20) return undefined;
  let found: string | undefined;
  for (const [known, means] of CANONICAL) {
    if (known.length < LONG_ENOUGH || !oneApart(word, known)) continue;
    if (found !== undefined && found !== means) return undefined;
    found = means;
  }
  return found;
}

/** Whether one letter put in, left out or changed makes one word of the other. */
function oneApart(a: string, b: string): boolean {
  if (a.length > b.length) return oneApart(b, a);
  if (b.length - a.length > 1) return false;
  let i = 0;
  while (i < a.length && a[i] === b[i]) i++;
  return a.slice(a.length === b.length ? i + 1 : i) === b.slice(i + 1);
}

/** How much each word tells: rare ones more, counted over the circuits of both files. */
export class Vocabulary {
  readonly #count = new Map<string, number>();
  readonly #circuits: number;

  constructor(descriptions: readonly ReadonlySet<string>[]) {
    this.#circuits = descriptions.length;
    for (const words of descriptions) for (const word of words) this.#count.set(word, (this.#count.get(word) ?? 0) + 1);
  }

  /** What two descriptions share as a part of what they say together, 0 to 1; undefined where one says nothing. */
  likeness(a: ReadonlySet<string>, b: ReadonlySet<string>): number | undefined {
    if (a.size === 0 || b.size === 0) return undefined;
    let [shared, all] = [0, 0];
    // In alphabetical order: sums of the same numbers in another order differ in the last digit.
    for (const word of [...new Set([...a, ...b])].sort()) {
      const weight = Math.log(1 + this.#circuits / (this.#count.get(word) ?? 1));
      all += weight;
      if (a.has(word) && b.has(word)) shared += weight;
    }
    return shared / all;
  }
}
