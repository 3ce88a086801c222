import { REASONING } from "../locales/reasoning-en.ts";
import {
  clientSentence,
  headline,
  type ReasonedObservation,
  type ReasonedTopic,
  reasoningParts,
} from "../words/reasoning.ts";
import { wrapped } from "./wrap.ts";

/** A line of reasoning for a terminal: what follows, the plain sentence, then the argument in parts. */
export function renderReasoning(one: ReasonedTopic | ReasonedObservation, width: number, indent = ""): string[] {
  const lines = [
    ...wrapped(headline(one), width, indent, `${indent}  `),
    ...wrapped(`(${REASONING.derived})`, width, indent, `${indent} `),
  ];
  const sentence = clientSentence(one);
  if (sentence !== "") lines.push("", ...wrapped(`${REASONING.client}: ${sentence}`, width, indent, `${indent}  `));
  for (const { heading, lines: part } of reasoningParts(one)) {
    lines.push("", `${indent}${heading}`);
    for (const { depth, tag, words } of part) {
      const lead = `${indent}  ${"  ".repeat(depth)}`;
      lines.push(...wrapped(tag === "" ? words : `[${tag}] ${words}`, width, lead, `${lead}  `));
    }
  }
  return lines;
}
