import type { Topic } from "../topic.ts";
import { dangersIn } from "./dangers-in.ts";
import { notionsOfWord, type Term, termsOf } from "./notions.ts";
import { type TopicIndex, topicIndex } from "./topic-index.ts";
import { plainWords, saysNothing, stemOf } from "./words-of.ts";

/** What is left of a word's weight where it is one of a phrase, or the beginning of a longer word. */
const LESS = { ofPhrase: 0.6, beginning: 0.6, perhapsBeginning: 0.3 } as const;
/** How much more a topic counts whose whole title was typed. */
const WHOLE_TITLE = 0.3;
/** As many words as anybody types; the rest is left aside. */
const MOST_WORDS = 12;

/** Topics that people mean by these words, the best first: by state, thing and place, and by their own words. */
export function findTopics(text: string, topics: readonly Topic[]): readonly Topic[] {
  const index = topicIndex(topics);
  const typed = plainWords(text)
    .slice(0, MOST_WORDS)
    .map((word) => spelt(word, index));
  const terms = unlike(termsOf(typed));
  const said = new Set(terms.flatMap(({ stems }) => stems));
  const scores = terms.map((term, at) => scoresOf(term, at === terms.length - 1, index));
  const dangers = dangersIn(terms);
  return topics
    .map((topic, i) => {
      const each = scores.map((score) => score[i] ?? 0);
      // A topic that answers to all that was typed goes before one that answers to a part of it very well, and of two
      // with the words in their title the one that is about little else.
      const answered = each.filter((score) => score > 0).length / terms.length;
      const titled = index.titles[i] ?? said;
      const covered = [...titled].filter((word) => said.has(word)).length / titled.size;
      const sum = each.reduce((total, score) => total + score, 0);
      return { topic, score: sum * Math.sqrt(answered) * (1 + WHOLE_TITLE * covered) + (dangers.get(topic.id) ?? 0) };
    })
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score)
    .map(({ topic }) => topic);
}

/** Terms without those that say the same again. */
function unlike(terms: readonly Term[]): readonly Term[] {
  return [...new Map(terms.map((term) => [term.stems.join(" "), term])).values()];
}

/** The word as it was meant: itself where it is known or begins a known one, else the nearest in spelling. */
function spelt(word: string, { vocabulary, spelling }: TopicIndex): string {
  const stem = stemOf(word);
  if (saysNothing(word) || vocabulary.has(stem)) return word;
  if (word.length > 2) for (const one of vocabulary) if (one.startsWith(stem)) return word;
  return spelling.nearest(stem) ?? word;
}

/** How well each topic answers to one thing typed. */
function scoresOf({ stems, notions }: Term, last: boolean, index: TopicIndex): Float64Array {
  const best = new Float64Array(index.titles.length);
  const reach = (key: string, less: number) => {
    for (const [at, weight] of index.postings.get(key) ?? [])
      if (weight * less > (best[at] ?? 0)) best[at] = weight * less;
  };
  for (const stem of stems) reach(stem, stems.length > 1 ? LESS.ofPhrase : 1);
  for (const notion of notions) reach(`=${notion}`, 1);
  const [stem = ""] = stems;
  const known = index.vocabulary.has(stem);
  if (stems.length !== 1 || stem.length < 3 || (known && !last)) return best;
  const less = known ? LESS.perhapsBeginning : LESS.beginning;
  for (const one of index.vocabulary)
    if (one !== stem && one.startsWith(stem)) {
      reach(one, less);
      for (const notion of notionsOfWord(one)) reach(`=${notion}`, less);
    }
  return best;
}
