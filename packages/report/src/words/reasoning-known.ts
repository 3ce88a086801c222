import type { Subject } from "@good-grounds/core";
import { REASONING } from "../locales/reasoning-en.ts";
import type { KnownAnswer, Otherwise, ReasonedTopic, ReasoningLine } from "./reasoned-topic.ts";
import { clauseOf, plain } from "./reasoning-lines.ts";

/** What has to be settled before anything follows: statements against what is known, and answers that differ. */
export function toSettle(one: Pick<ReasonedTopic, "topic" | "against" | "differing">): readonly ReasoningLine[] {
  return [
    ...contradictionsOf(one).map((words) => plain(0, words)),
    ...one.differing.map(({ fact, answers }) => plain(0, differingWords(fact, answers, one.topic))),
  ];
}

/** Statements that contradict what is known, a sentence each. */
export function contradictionsOf({ against, topic }: Pick<ReasonedTopic, "topic" | "against">): readonly string[] {
  return against.filter(({ stated }) => stated !== null).map((other) => otherwiseWords(other, topic));
}

/** What is known beside what an observation states otherwise, or beside its limitation. */
export function otherwiseWords(other: Otherwise, topic: Pick<Subject, "facts">): string {
  const { fact, value, stated, given, askedBy = "" } = other;
  if (given !== undefined) {
    const says = (one: string) => clauseOf(fact, one, { facts: { [fact]: given } });
    return REASONING.againstSubject(sourceOf(other), says(value ?? ""), says(stated ?? ""), askedBy);
  }
  const known = clauseOf(fact, value ?? "", topic);
  if (stated === null) return REASONING.beside(sourceOf(other), known);
  return REASONING.contradiction(sourceOf(other), known, clauseOf(fact, stated, topic));
}

/** Answers to one fact that cannot all be so, with what says each. */
export function differingWords(fact: string, answers: readonly KnownAnswer[], topic: Pick<Subject, "facts">): string {
  const said = new Map<string, Set<string>>();
  for (const answer of answers) {
    const clause = clauseOf(fact, answer.value ?? "", topic);
    said.set(clause, (said.get(clause) ?? new Set()).add(sourceOf(answer)));
  }
  return REASONING.differing([...said].map(([clause, sources]) => REASONING.says([...sources], clause)));
}

function sourceOf(known: KnownAnswer): string {
  return "property" in known ? REASONING.byFile(known.words) : REASONING.byCheck(known.by);
}
