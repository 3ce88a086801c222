import { statementsIn } from "@good-grounds/core";
import { TOPICS } from "../gathered.ts";
import type { Topic } from "../topic.ts";
import { SITE_WORDS } from "./site-words.ts";
import { isWithin, plainWords, stemOf, wordsOf } from "./words-of.ts";

/** How much a word counts by where it stands. */
const WEIGHT = { title: 6, asks: 2, clauses: 1, client: 1 } as const;
/** What is left of a word's weight where it was reached in a roundabout way. */
const LESS = { siteWord: 0.9, beginning: 0.6, misspelt: 0.5 } as const;
/** How much more a topic counts whose whole title was typed. */
const WHOLE_TITLE = 0.3;
/** As many words as anybody types; the rest is left aside. */
const MOST_WORDS = 12;

/** Weight of each word in each topic, and how many topics have it. */
interface Index {
  readonly weights: readonly ReadonlyMap<string, number>[];
  readonly rarity: ReadonlyMap<string, number>;
  readonly vocabulary: readonly string[];
}

let made: Index | undefined;

function index(): Index {
  if (made !== undefined) return made;
  const weights = TOPICS.map(weightsOf);
  const count = new Map<string, number>();
  for (const words of weights) for (const word of words.keys()) count.set(word, (count.get(word) ?? 0) + 1);
  const rarity = new Map([...count].map(([word, n]) => [word, Math.log(1 + TOPICS.length / n)]));
  made = { weights, rarity, vocabulary: [...count.keys()] };
  return made;
}

function weightsOf({ id, title, facts, client }: Topic): ReadonlyMap<string, number> {
  const weights = new Map<string, number>();
  const add = (text: string, weight: number) => {
    for (const word of wordsOf(text)) weights.set(word, Math.max(weights.get(word) ?? 0, weight));
  };
  add(`${id} ${title}`, WEIGHT.title);
  for (const fact of Object.values(facts)) {
    add(fact.asks, WEIGHT.asks);
    if (fact.kind === "yes-no") add(`${fact.yes} ${fact.no}`, WEIGHT.clauses);
    if (fact.kind === "choice") add(Object.values(fact.values).join(" "), WEIGHT.clauses);
  }
  const told = Object.values(client).flatMap((one) => statementsIn(one).map(({ words }) => words));
  add(told.join(" "), WEIGHT.client);
  return weights;
}

/** Topics that people mean by these words, the best first: by title, by what they ask, by what is said on site. */
export function findTopics(text: string): readonly Topic[] {
  const typed = termsOf(text);
  const terms = typed.map(scoresOf);
  const said = new Set(typed.map(({ word }) => word));
  const scores = TOPICS.map(({ title }, i) => {
    const each = terms.map((term) => term[i] ?? 0);
    const titled = wordsOf(title);
    // A topic that answers to all that was typed goes before one that answers to a part of it very well, and of two
    // with the words in their title the one that is about little else.
    const answered = each.filter((score) => score > 0).length / terms.length;
    const covered = titled.filter((word) => said.has(word)).length / titled.length;
    return each.reduce((sum, score) => sum + score, 0) * answered * (1 + WHOLE_TITLE * covered);
  });
  return TOPICS.map((topic, i) => ({ topic, score: scores[i] ?? 0 }))
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score)
    .map(({ topic }) => topic);
}

/** One thing typed: a word, or two that mean one thing on site. */
interface Term {
  /** The word itself, stemmed; empty where it says nothing alone. */
  readonly word: string;
  readonly meant: readonly string[];
}

function termsOf(text: string): readonly Term[] {
  const typed = plainWords(text).slice(0, MOST_WORDS);
  const terms: Term[] = [];
  for (const [i, word] of typed.entries()) {
    const [stem = ""] = wordsOf(word);
    const meant = [meantBy(word), meantBy(`${word} ${typed[i + 1] ?? ""}`)].flat();
    if (stem !== "" || meant.length > 0) terms.push({ word: stem, meant });
  }
  return terms;
}

function meantBy(said: string): readonly string[] {
  return Object.hasOwn(SITE_WORDS, said) ? (SITE_WORDS[said] ?? "").split(" ") : [];
}

/** How well each topic answers to one thing typed. */
function scoresOf({ word, meant }: Term): Float64Array {
  const { weights, rarity } = index();
  const best = new Float64Array(TOPICS.length);
  const raise = (i: number, score: number) => {
    if (score > (best[i] ?? 0)) best[i] = score;
  };
  const reach = (reached: string, less: number) => {
    const rare = rarity.get(reached) ?? 0;
    for (const [i, words] of weights.entries()) raise(i, (words.get(reached) ?? 0) * rare * less);
  };
  if (word !== "") for (const [reached, less] of reachedFrom(word)) reach(reached, less);
  for (const [place, target] of meant.entries()) {
    const at = TOPICS.findIndex(({ id }) => id === target);
    // What is meant in the first place comes first; a topic named outright counts as a rare word of its title.
    if (at >= 0) raise(at, WEIGHT.title * Math.log(1 + TOPICS.length / (2 + place)) * LESS.siteWord);
    else for (const one of plainWords(target)) reach(stemOf(one), LESS.siteWord);
  }
  return best;
}

/** Words of the topics that a typed word stands for: itself, words that begin with it, else words spelt nearly so. */
function reachedFrom(word: string): readonly (readonly [string, number])[] {
  const { rarity, vocabulary } = index();
  const reached: (readonly [string, number])[] = rarity.has(word) ? [[word, 1]] : [];
  if (word.length > 2)
    for (const one of vocabulary) if (one !== word && one.startsWith(word)) reached.push([one, LESS.beginning]);
  const nearly = word.length < 4 ? 0 : word.length < 8 ? 1 : 2;
  if (reached.length === 0 && nearly > 0 && !/\d/.test(word))
    for (const one of vocabulary) if (one.length > 3 && isWithin(word, one, nearly)) reached.push([one, LESS.misspelt]);
  return reached;
}
