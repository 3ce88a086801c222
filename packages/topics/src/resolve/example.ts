import type { Answer } from "@good-grounds/core";
import type { Word } from "../document/condition.ts";
import type { Example } from "../document/document.ts";
import { nearTo } from "../text/near.ts";
import type { TopicExample } from "../topic.ts";
import { type Draft, statements } from "./draft.ts";
import { checkValue } from "./fact.ts";
import type { Scope } from "./scope.ts";

/** The worked cases of a topic. */
export function examplesOf(draft: Draft): readonly TopicExample[] {
  return statements(draft, "example").map((example) => exampleOf(example, draft));
}

function exampleOf(example: Example, draft: Draft): TopicExample {
  const within = [`example ${example.name}`];
  const { scope } = draft;
  const stated = example.facts.map(({ fact, values }) => [fact.text, answerOf(fact, values, draft, within)] as const);
  checkOnce(
    [...example.facts, ...example.limited].map(({ fact }) => fact),
    scope,
    within,
  );
  checkOnce(
    example.taking.map(({ point }) => point),
    scope,
    within,
  );
  const limited = example.limited.map(({ fact, reason }) => {
    checkAsked(fact, draft, within);
    return [fact.text, { notKnown: "limited", reason } as const] as const;
  });
  for (const { point, position } of example.taking) checkPosition(point, position, scope, within);
  for (const fact of example.open) checkAsked(fact, draft, within);
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
  if (found.kind === "amount") {
    for (const value of values) checkValue(value, found, draft.scope, within);
    return text;
  }
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
  checkAsked(fact, draft, within);
  for (const value of values) checkValue(value, found, draft.scope, within);
  const asked = draft.facts[fact.text];
  return asked?.kind === "yes-no" && values.length === 1 ? text === "yes" : text;
}

/** Tells a name that is no fact, or one that the subject itself answers. */
function checkAsked(fact: Word, { scope, given }: Draft, within: readonly string[]): void {
  const found = scope.find(fact, within);
  if (found === undefined) return;
  if (found.kind === "contested" || found.kind === "state")
    scope.fault(fact, `"${fact.text}" is no fact`, "a fact", "only facts are asked", within);
  if (given.get(fact.text)?.length === 1)
    scope.fault(
      fact,
      `"${fact.text}" is said by the subject itself`,
      "facts that are asked",
      "take it away here",
      within,
    );
}

function checkPosition(point: Word, position: Word, scope: Scope, within: readonly string[]): void {
  const found = scope.find(point, within);
  if (found === undefined) return;
  if (found.kind !== "contested") {
    scope.fault(
      point,
      `"${point.text}" is no contested point`,
      "a contested point and the position taken",
      "state facts on a line of their own",
      within,
    );
    return;
  }
  const there = found.positions.map(({ name }) => name.text);
  if (there.includes(position.text)) return;
  const [near] = nearTo(position.text, there);
  scope.fault(
    position,
    `"${position.text}" is no position on "${point.text}"`,
    `one of ${there.join(", ")}`,
    near === undefined ? "write one of these" : `is it "${near}"?`,
    within,
  );
}

/** Tells what is stated twice in one place. */
export function checkOnce(words: readonly Word[], scope: Scope, within: readonly string[]): void {
  const seen = new Set<string>();
  for (const word of words) {
    if (seen.has(word.text))
      scope.fault(word, `"${word.text}" a second time`, "each once", "take one of the two away", within);
    seen.add(word.text);
  }
}
