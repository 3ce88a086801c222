import type { Answer } from "@good-grounds/core";
import type { Topic } from "./topic.ts";

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
  // Names come from files: a map takes any of them as it is, "__proto__" too.
  const now = new Map<string, Answer>();
  const over = new Map<string, Answer>();
  for (const [name, answer] of Object.entries(facts)) {
    const ways = Object.hasOwn(formerly, name) ? formerly[name] : undefined;
    if (ways === undefined) now.set(name, answer);
    for (const { fact, says } of ways ?? []) {
      // What the subject itself says today is not asked any more.
      const read = Object.hasOwn(topic.facts, fact) ? readNow(answer, says) : undefined;
      if (read !== undefined) over.set(fact, read);
    }
  }
  return Object.fromEntries([...over, ...now]);
}

function readNow(answer: Answer, says: Readonly<Record<string, string>>): Answer | undefined {
  if (typeof answer === "object" || Object.keys(says).length === 0) return answer;
  const words = typeof answer === "boolean" ? [answer ? "yes" : "no"] : answer.split("|").map((one) => one.trim());
  const read = words.map((word) => (Object.hasOwn(says, word) ? says[word] : undefined));
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
