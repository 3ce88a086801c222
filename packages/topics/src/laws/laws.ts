import { type Compiled, EDITIONS, type EditionId } from "@good-grounds/core";
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

const EDITION: EditionId = "2018+A4";

/** Every law that a topic does not keep. */
export function lawBreaks(topic: Topic, document: Document, shared: readonly Document[] = []): readonly LawBreak[] {
  const compiled = EDITIONS.map((edition) => compiledOr(topic, edition));
  const failed = compiled.find((one) => typeof one === "string");
  if (failed !== undefined)
    return [{ law: "compiles", topic: topic.id, found: failed, expected: LAWS.compiles, at: document.at }];
  const subjects = compiled
    .filter((one): one is Compiled => typeof one !== "string")
    .map((one): LawSubject => ({ topic, document, shared, compiled: one }));
  const subject = subjects.find((one) => one.compiled.edition === EDITION);
  if (subject === undefined) return [];
  return [
    ...examplesComeOut(subject),
    ...once(subjects.flatMap(noWorseningLowers)),
    ...everythingMatters(subjects),
    ...valuesToldApart(topic, document),
    ...remediesHelp(subject),
    ...sentencesArePlain(subject),
    ...possibleIsUnion(subject),
    ...sourcesAreNamed(subject),
  ];
}

function compiledOr(topic: Topic, edition: EditionId): Compiled | string {
  try {
    return compiledTopic(topic, edition);
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

/** What is so under both editions is told once. */
function once(breaks: readonly LawBreak[]): readonly LawBreak[] {
  return [...new Map(breaks.map((one) => [one.found, one])).values()];
}
