import type { Compiled } from "@good-grounds/core";
import { compiledTopic } from "../compiled.ts";
import type { Document } from "../document/document.ts";
import type { Topic } from "../topic.ts";
import { examplesComeOut } from "./examples.ts";
import type { LawBreak, LawSubject } from "./law.ts";
import { everythingMatters } from "./matters.ts";
import { noWorseningLowers } from "./monotone.ts";
import { remediesHelp } from "./remedies.ts";
import { sentencesArePlain } from "./sentences.ts";
import { sourcesAreNamed } from "./sources.ts";
import { valuesToldApart } from "./told-apart.ts";
import { possibleIsUnion } from "./union.ts";

/** The laws by name, with what each holds. */
export const LAWS = Object.freeze({
  compiles: "its contradictions leave something that can be true",
  examples: "every example comes out as stated",
  monotone: "no worsening of a fact lowers the class",
  matters: "every fact and every contested point matters",
  "told-apart": "every two values of a fact are told apart, or the text says why both are offered",
  remedies: "every remedy helps and none harms",
  sentences: "every class that can follow has a plain sentence",
  union: "what is possible is the union over what may be so",
  sources: "rules name regulations, and there are three examples or more",
});

/** Every law that a topic does not keep. */
export function lawBreaks(topic: Topic, document: Document, shared: readonly Document[] = []): readonly LawBreak[] {
  const compiled = compiledOr(topic);
  if (typeof compiled === "string")
    return [{ law: "compiles", topic: topic.id, found: compiled, expected: LAWS.compiles, at: document.at }];
  const subject: LawSubject = { topic, document, shared, compiled };
  return [
    ...examplesComeOut(subject),
    ...noWorseningLowers(subject),
    ...everythingMatters(subject),
    ...valuesToldApart(topic, document),
    ...remediesHelp(subject),
    ...sentencesArePlain(subject),
    ...possibleIsUnion(subject),
    ...sourcesAreNamed(subject),
  ];
}

function compiledOr(topic: Topic): Compiled | string {
  try {
    return compiledTopic(topic);
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}
