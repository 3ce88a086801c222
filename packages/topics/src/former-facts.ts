import type { Answer, AnswerFault, FactOf } from "@good-grounds/core";
import type { FormerFact, Topic } from "./topic.ts";

/**
 * Answers with the names and values of today. What an earlier file says under a former name counts as far as it can be
 * told today; what is stated under the name of today stands. A limitation goes over with its reason.
 */
export function withFormerFacts(
  topic: Topic,
  facts: Readonly<Record<string, Answer>>,
): Readonly<Record<string, Answer>> {
  const { formerly } = topic;
  if (formerly === undefined) return facts;
  const wrong = new Set(formerFaults(topic, facts).map(({ name }) => name));
  // Names come from files: a map takes any of them as it is, "__proto__" too.
  const now = new Map<string, Answer>();
  const over = new Map<string, Answer>();
  for (const [name, answer] of Object.entries(facts)) {
    const ways = Object.hasOwn(formerly, name) ? formerly[name] : undefined;
    if (ways === undefined) now.set(name, answer);
    if (ways !== undefined && wrong.has(name)) continue;
    for (const { fact, says } of ways ?? []) {
      // What the subject itself says today is not asked any more.
      const read = Object.hasOwn(topic.facts, fact) ? readNow(answer, says) : undefined;
      if (read !== undefined) over.set(fact, read);
    }
  }
  return Object.fromEntries([...over, ...now]);
}

/** Answers under former names with values that they never had: told, since nothing can be read from them. */
export function formerFaults(topic: Topic, facts: Readonly<Record<string, Answer>>): readonly AnswerFault[] {
  const { formerly = {} } = topic;
  return Object.entries(facts).flatMap(([name, answer]): AnswerFault[] => {
    if (typeof answer === "object" || !Object.hasOwn(formerly, name)) return [];
    const expected = [...new Set((formerly[name] ?? []).flatMap((way) => valuesThen(way, topic)))];
    // Of a fact that is no longer asked nothing is read, whatever it says.
    if (expected.length === 0 || wordsOf(answer).every((word) => expected.includes(word))) return [];
    return [{ code: "not-a-value", name, found: String(answer).slice(0, 80), expected }];
  });
}

/** The values that a former name had; where it alone changed, those of the fact today. */
function valuesThen({ fact, says }: FormerFact, { facts }: Topic): readonly string[] {
  const listed = Object.keys(says);
  const about = Object.hasOwn(facts, fact) ? facts[fact] : undefined;
  return listed.length > 0 || about === undefined ? listed : valuesOf(about);
}

function valuesOf(about: FactOf): readonly string[] {
  if (about.kind === "yes-no") return ["yes", "no"];
  return about.kind === "choice" ? [...Object.keys(about.values), ...Object.keys(about.formerly ?? {})] : [];
}

function wordsOf(answer: boolean | string): readonly string[] {
  return typeof answer === "boolean"
    ? [answer ? "yes" : "no"]
    : answer.split("|").map((one) => one.trim().toLowerCase());
}

function readNow(answer: Answer, says: Readonly<Record<string, string>>): Answer | undefined {
  if (typeof answer === "object" || Object.keys(says).length === 0) return answer;
  const read = wordsOf(answer).map((word) => (Object.hasOwn(says, word) ? says[word] : undefined));
  return read.includes(undefined)
    ? undefined
    : [...new Set(read.flatMap((one) => (one ?? "").split(" | ")))].join(" | ");
}

/** Positions on the contested points of today; those on points that are gone are left out, renamed ones go over. */
export function withFormerPositions<T>(
  topic: Topic,
  positions: Readonly<Record<string, T>>,
): Readonly<Record<string, T>> {
  const { formerly } = topic;
  if (formerly === undefined) return positions;
  return Object.fromEntries(
    Object.entries(positions).flatMap(([name, position]) => {
      if (!Object.hasOwn(formerly, name)) return [[name, position] as const];
      return (formerly[name] ?? []).flatMap(({ fact }) =>
        Object.hasOwn(topic.contested, fact) ? [[fact, position] as const] : [],
      );
    }),
  );
}
