import { PLACES } from "./places.ts";
import { STATES } from "./states.ts";
import { THINGS } from "./things.ts";
import { plainWords, saysNothing, stemOf } from "./words-of.ts";

/** What the tables say, made ready. */
interface Tables {
  /** States, things and places by the phrase that names them; the words of a phrase are stemmed. */
  readonly notions: ReadonlyMap<string, readonly string[]>;
  /** How many words the longest phrase has that begins with a word. */
  readonly longest: ReadonlyMap<string, number>;
}

let made: Tables | undefined;

/** The tables, made when first searched: who names a topic by its id never needs them. */
function tables(): Tables {
  if (made !== undefined) return made;
  const notions = notionsOf(STATES, THINGS, PLACES);
  const longest = new Map<string, number>();
  for (const phrase of notions.keys()) {
    const words = phrase.split(" ");
    const [first = ""] = words;
    longest.set(first, Math.max(longest.get(first) ?? 0, words.length));
  }
  made = { notions, longest };
  return made;
}

function notionsOf(...tables: readonly Readonly<Record<string, string>>[]): ReadonlyMap<string, readonly string[]> {
  const notions = new Map<string, string[]>();
  for (const [notion, phrases] of tables.flatMap((table) => Object.entries(table)))
    for (const phrase of phrases.split(", ")) {
      const key = plainWords(phrase).map(stemOf).join(" ");
      notions.set(key, [...(notions.get(key) ?? []), notion]);
    }
  return notions;
}

/** One thing said: the words that name it, stemmed and without those that say nothing, and the notions it stands for. */
export interface Term {
  readonly stems: readonly string[];
  readonly notions: readonly string[];
}

/** What a text says, the longest phrases first; a number with its unit stands for what it measures. */
export function termsOf(words: readonly string[]): readonly Term[] {
  const stems = words.map(stemOf);
  const terms: Term[] = [];
  for (let at = 0; at < words.length; ) {
    const { length, notions } = longestAt(stems, at);
    const named = stems.slice(at, at + length).filter((_, i) => !saysNothing(words[at + i] ?? ""));
    if (named.length > 0 || notions.length > 0) terms.push({ stems: named, notions });
    at += length;
  }
  return terms;
}

function longestAt(stems: readonly string[], at: number): { length: number; notions: readonly string[] } {
  const { notions: known, longest } = tables();
  for (let length = Math.min(longest.get(stems[at] ?? "") ?? 0, stems.length - at); length > 0; length -= 1) {
    const notions = known.get(stems.slice(at, at + length).join(" "));
    if (notions !== undefined) return { length, notions };
  }
  return { length: 1, notions: [] };
}

/** The notions a single word stands for. */
export function notionsOfWord(stem: string): readonly string[] {
  return tables().notions.get(stem) ?? [];
}

/** Every word of the tables, stemmed. */
export function wordsOfNotions(): readonly string[] {
  return [...tables().notions.keys()].flatMap((phrase) => phrase.split(" "));
}
