import type { Evidence, FactGround, FactOf, Severity, Subject, Unit } from "@good-grounds/core";
import { SILENCE } from "../locales/labels.ts";
import { REASONING, SEVERITY_WORDS } from "../locales/reasoning-en.ts";
import { valueWords } from "./figure.ts";
import type { ReasonedTopic, ReasoningLine } from "./reasoned-topic.ts";

/** Severities as a phrase. */
export function severityWords(severities: readonly Severity[]): string {
  return REASONING.list(
    severities.map((one) => SEVERITY_WORDS[one]),
    "or",
  );
}

/** Whether something is known of a fact; a position always is. */
export function isKnown(name: string, { reasoning }: ReasonedTopic): boolean {
  return (
    name.startsWith("point ") ||
    (reasoning.grounds.get(name.replace(/^fact /, ""))?.kind ?? "fact-not-known") !== "fact-not-known"
  );
}

/** A fact or a position as a leaf of an argument; `name` is "fact NAME" or "point NAME", or a bare fact name. */
export function factLine(name: string, one: ReasonedTopic, depth: number): ReasoningLine {
  const { topic, reasoning, worked } = one;
  if (name.startsWith("point ")) {
    const point = name.slice(6);
    const about = topic.contested[point];
    const taken = about?.positions[reasoning.taken.get(point) ?? ""]?.words ?? "";
    return { depth, tag: REASONING.position, words: REASONING.held(about?.question ?? point, taken) };
  }
  const fact = name.startsWith("fact ") ? name.slice(5) : name;
  const ground = reasoning.grounds.get(fact);
  const asks = topic.facts[fact]?.asks ?? fact;
  if (ground === undefined) return { depth, tag: REASONING.notAsked, words: asks };
  const { tag, words } = groundWords(ground, asks);
  const isContradicted = one.against.some((other) => other.fact === fact && other.stated !== null);
  if (isContradicted) return { depth, tag: REASONING.stated, words: `${words}, ${REASONING.seeToSettle}` };
  const record = one.recorded.find((answer) => answer.fact === fact);
  if (record !== undefined) return { depth, tag, words: `${words}, ${REASONING.recordedAs(record.words)}` };
  const by = worked.find((answer) => answer.fact === fact)?.by;
  return by === undefined
    ? { depth, tag, words }
    : { depth, tag: REASONING.computed, words: `${words}, ${REASONING.workedBy(by)}` };
}

function groundWords(ground: FactGround, asks: string): { readonly tag: string; readonly words: string } {
  if (ground.kind === "fact") return { tag: REASONING[ground.how], words: ground.detail.text };
  if (ground.kind === "fact-not-known") {
    const { silence, reason } = ground.detail;
    return {
      tag: REASONING.notKnown,
      words: `${asks} (${[SILENCE[silence], reason].filter((part) => part !== "").join(": ")})`,
    };
  }
  return {
    tag: REASONING[ground.kind === "measured" ? "measured" : "seen"],
    words: `${ground.term.name} ${valueWords(ground as Evidence<Unit>)}`,
  };
}

/** What a value of a fact says, as a clause. */
export function clauseOf(name: string, value: string, { facts }: Pick<Subject, "facts">): string {
  const fact: FactOf | undefined = facts[name];
  if (fact === undefined) return `${name} ${value}`;
  if (fact.kind === "yes-no") return value === "yes" ? fact.yes : fact.no;
  if (fact.kind === "choice")
    return value
      .split(" | ")
      .map((one) => fact.values[one] ?? one)
      .join(", or ");
  return `${fact.name} is ${value}`;
}

/** A line without a tag. */
export function plain(depth: number, words: string): ReasoningLine {
  return { depth, tag: "", words };
}

export function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
