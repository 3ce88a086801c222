import type { Answer } from "@good-grounds/core";
import type { Word } from "../document/condition.ts";
import type { Example } from "../document/document.ts";
import type { TopicExample } from "../topic.ts";
import { type Draft, statements } from "./draft.ts";
import { checkValue } from "./fact.ts";

/** The worked cases of a topic. */
export function examplesOf(draft: Draft): readonly TopicExample[] {
  return statements(draft, "example").map((example) => exampleOf(example, draft));
}

function exampleOf(example: Example, draft: Draft): TopicExample {
  const within = [`example ${example.name}`];
  const { scope } = draft;
  const stated = example.facts.map(({ fact, values }) => [fact.text, answerOf(fact, values, draft, within)] as const);
  const limited = example.limited.map(({ fact, reason }) => {
    scope.find(fact, within);
    return [fact.text, { notKnown: "limited", reason } as const] as const;
  });
  for (const { point, position } of example.taking) {
    const found = scope.find(point, within);
    if (found?.kind === "contested" && !found.positions.some(({ name }) => name.text === position.text))
      scope.fault(
        position,
        `"${position.text}" is no position on "${point.text}"`,
        `one of ${found.positions.map(({ name }) => name.text).join(", ")}`,
        "write one of these",
        within,
      );
  }
  for (const fact of example.open) scope.find(fact, within);
  const positions = Object.fromEntries(example.taking.map(({ point, position }) => [point.text, position.text]));
  const possible = example.possible.filter((one) => one !== "FI");
  const [only] = possible;
  const follows = example.isFI ? "FI" : possible.length === 1 ? only : undefined;
  return {
    name: example.name,
    facts: Object.fromEntries([...stated, ...limited]),
    ...(example.taking.length === 0 ? {} : { positions }),
    possible,
    ...(follows === undefined ? {} : { classification: follows }),
    ...(example.open.length === 0 ? {} : { missing: example.open.map(({ text }) => text) }),
    source: example.source,
  };
}

function answerOf(fact: Word, values: readonly Word[], draft: Draft, within: readonly string[]): Answer {
  const found = draft.scope.find(fact, within);
  const text = values.map((value) => value.text).join(" | ");
  if (found === undefined) return text;
  if (found.kind === "amount") return text;
  if (found.kind !== "fact") {
    draft.scope.fault(
      fact,
      `"${fact.text}" is no fact`,
      "a fact and its value",
      found.kind === "contested" ? 'a position is written behind "taking"' : "a state is worked out, never stated",
      within,
    );
    return text;
  }
  if (draft.given.get(fact.text)?.length === 1)
    draft.scope.fault(
      fact,
      `"${fact.text}" is said by the subject itself`,
      "facts that are asked",
      "take it away here",
      within,
    );
  for (const value of values) checkValue(value, found, draft.scope, within);
  const asked = draft.facts[fact.text];
  return asked?.kind === "yes-no" && values.length === 1 ? text === "yes" : text;
}
