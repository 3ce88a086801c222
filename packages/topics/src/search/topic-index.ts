import { statementsIn } from "@good-grounds/core";
import { TOPICS } from "../gathered.ts";
import type { Topic } from "../topic.ts";
import { notionsOfWord, termsOf, wordsOfNotions } from "./notions.ts";
import { SITE_WORDS } from "./site-words.ts";
import { Spelling } from "./spelling.ts";
import { plainWords, stemOf } from "./words-of.ts";

/** How much a word counts by where it stands. */
const WEIGHT = { title: 6, site: 5, id: 2, asks: 1.5, clauses: 1, client: 0.5 } as const;
/** A notion behind a word counts less than the word itself. */
const NOTION = 0.7;

/** A topic by its place in the list, and how much a word or notion says of it. */
type Posting = readonly [topic: number, weight: number];

export interface TopicIndex {
  /** By word as it is stemmed, or by notion after an equals sign. */
  readonly postings: ReadonlyMap<string, readonly Posting[]>;
  /** What words of the tables and of the topics there are, stemmed. */
  readonly vocabulary: ReadonlySet<string>;
  readonly spelling: Spelling;
  /** The words of each title, stemmed. */
  readonly titles: readonly ReadonlySet<string>[];
}

let made: TopicIndex | undefined;

/** The index of all topics; made when first asked for. */
export function topicIndex(): TopicIndex {
  made ??= makeIndex();
  return made;
}

function makeIndex(): TopicIndex {
  const lists = new Map<string, Posting[]>();
  for (const [at, one] of TOPICS.entries())
    for (const [key, weight] of weightsOf(one)) {
      const list = lists.get(key);
      if (list === undefined) lists.set(key, [[at, weight]]);
      else list.push([at, weight]);
    }
  const postings = new Map(
    [...lists].map(([key, list]) => {
      const rarity = Math.log(1 + TOPICS.length / list.length);
      return [key, list.map(([at, weight]): Posting => [at, weight * rarity])];
    }),
  );
  const words = [...[...lists.keys()].filter((key) => !key.startsWith("=")), ...wordsOfNotions()];
  const uses = new Map(words.map((word) => [word, (lists.get(word)?.length ?? 0) + 3 * notionsOfWord(word).length]));
  return { postings, vocabulary: new Set(words), spelling: new Spelling(uses), titles: TOPICS.map(titleWords) };
}

function titleWords({ title }: Topic): ReadonlySet<string> {
  return new Set(termsOf(plainWords(title)).flatMap(({ stems }) => stems));
}

function weightsOf({ id, title, facts, shared, client }: Topic): ReadonlyMap<string, number> {
  const weights = new Map<string, number>();
  const raise = (key: string, weight: number) => {
    if (weight > (weights.get(key) ?? 0)) weights.set(key, weight);
  };
  const add = (text: string, weight: number) => {
    for (const { stems, notions } of termsOf(plainWords(text))) {
      for (const stem of stems) raise(stem, weight);
      for (const notion of notions) raise(`=${notion}`, weight * NOTION);
    }
  };
  add(title, WEIGHT.title);
  for (const word of id.split("-")) raise(stemOf(word), WEIGHT.id);
  for (const word of plainWords(SITE_WORDS[id] ?? "")) add(word, WEIGHT.site);
  for (const [name, fact] of Object.entries(facts)) {
    // What many topics ask in the same words tells none of them from the others.
    if (shared.includes(name)) continue;
    add(fact.asks, WEIGHT.asks);
    if (fact.kind === "yes-no") add(`${fact.yes}. ${fact.no}`, WEIGHT.clauses);
    if (fact.kind === "choice") add(Object.values(fact.values).join(" "), WEIGHT.clauses);
  }
  for (const told of Object.values(client)) for (const { words } of statementsIn(told)) add(words, WEIGHT.client);
  return weights;
}
