import {
  type Compiled,
  classificationOf,
  endingOf,
  possibleSeverities,
  type Reasoning,
  readAnswers,
  SEVERITIES,
  type Severity,
  severitiesOf,
} from "@good-grounds/core";
import { compiledTopic, type Topic, topicById } from "@good-grounds/topics";
import type { ReasonRequest } from "./reason-about.ts";
import { answersFromRecord, type RecordedAnswer } from "./recorded/index.ts";
import type { Otherwise, RecordedFact, TopicReasoning } from "./results.ts";
import type { SpokenOf } from "./spoken-of/index.ts";

/** What a topic takes as given and the file records otherwise, and what follows where the file is right. */
export interface FileAgainstGiven {
  /** Contradictions to settle; none where the file only leaves more than the topic does. */
  readonly against: readonly Otherwise[];
  readonly facts: readonly string[];
  /** The topic that asks what this one takes as given, with what the file records. */
  readonly byFile: { readonly topic: Topic; readonly said: ReasonRequest["said"] };
}

/**
 * A topic says some of its facts itself, and nobody is asked about them. Where the file records otherwise of the thing
 * spoken of, neither is preferred: the topic that goes by the name of the state asks those facts, and what it makes of the
 * record stands beside what follows here. Undefined where nothing differs, or where it comes to the same.
 */
export function fileAgainstGiven(
  { topic, reasoning, recorded }: Pick<TopicReasoning, "topic" | "reasoning" | "recorded">,
  said: ReasonRequest["said"],
  spoken: SpokenOf,
): FileAgainstGiven | undefined {
  const owner = ownerOf(topic, reasoning);
  if (owner === undefined) return undefined;
  const given = Object.entries(topic.given ?? {}).filter(([fact]) => Object.hasOwn(owner.facts, fact));
  const base = {
    ...Object.fromEntries(recorded.map(({ fact, value }) => [fact, value])),
    ...said,
    ...Object.fromEntries(given.map(([fact, values]) => [fact, values.join(" | ")])),
  };
  const known = { ...ofOwner(base, owner) };
  const records = answersFromRecord(owner, spoken);
  const otherwise = given.flatMap(([fact, values]): RecordedFact[] => {
    const answers = records.filter((one) => one.fact === fact).filter(isAnswer);
    const [first] = answers;
    if (first === undefined || answers.some(({ value }) => fits(value, values))) return [];
    const compiled = compiledTopic(owner);
    const changes = comesTo({ ...known, [fact]: first.value }, compiled) !== comesTo(known, compiled);
    return changes ? [first] : [];
  });
  if (otherwise.length === 0) return undefined;
  return {
    against: otherwise.flatMap((one) => {
      const values = topic.given?.[one.fact] ?? [];
      const given = owner.facts[one.fact];
      if (given === undefined || partsOf(one.value).some((value) => values.includes(value))) return [];
      return [{ ...one, stated: values.join(" | "), given, askedBy: owner.id }];
    }),
    facts: otherwise.map(({ fact }) => fact),
    byFile: {
      topic: owner,
      said: { ...known, ...Object.fromEntries(otherwise.map(({ fact, value }) => [fact, value])) },
    },
  };
}

/** What follows while topic and file differ: everything that either gives, and nothing less than the worse of both. */
export function withBoth(
  here: TopicReasoning,
  { against, facts }: FileAgainstGiven,
  byFile: Pick<TopicReasoning, "reasoning" | "least">,
): TopicReasoning {
  const both = (a: readonly Severity[], b: readonly Severity[]) =>
    SEVERITIES.filter((one) => a.includes(one) || b.includes(one));
  const { reasoning } = here;
  const possible = both(reasoning.possible, byFile.reasoning.possible);
  const ending = endingOf(possible, true, reasoning.contradictions.length > 0);
  return {
    ...here,
    reasoning: {
      ...reasoning,
      possible,
      underAnyView: both(reasoning.underAnyView, byFile.reasoning.underAnyView),
      ending,
      classification: classificationOf(possible, ending),
      open: possible.length > 1 ? [...reasoning.open, ...facts] : reasoning.open,
    },
    least: SEVERITIES.indexOf(here.least) < SEVERITIES.indexOf(byFile.least) ? byFile.least : here.least,
    against: [...here.against, ...against],
  };
}

/** The topic that goes by the name of a state on which a route that is there, or may be, rests. */
function ownerOf({ given }: Topic, { paths }: Reasoning): Topic | undefined {
  if (given === undefined) return undefined;
  const states = paths.flatMap(({ exists, layers }) =>
    exists.truth === "false"
      ? []
      : layers.flatMap(({ layer: { gone, sound } }) =>
          [gone, sound].flatMap((rule) => (rule.op === "state" ? [rule.state] : [])),
        ),
  );
  return states.map(topicById).find((one) => one !== undefined);
}

/**
 * One value that a topic takes as given fits where the file leaves it possible. Of several, all that the file leaves have
 * to be among them: else the topic would say of the thing what the file does not.
 */
function fits(value: string, given: readonly string[]): boolean {
  const parts = partsOf(value);
  return given.length === 1 ? parts.some((one) => given.includes(one)) : parts.every((one) => given.includes(one));
}

function partsOf(value: string): readonly string[] {
  return value.split(" | ");
}

function isAnswer(one: RecordedAnswer): one is RecordedFact {
  return one.value !== null;
}

function ofOwner(said: ReasonRequest["said"], { facts }: Topic): ReasonRequest["said"] {
  return Object.fromEntries(Object.entries(said).filter(([name]) => Object.hasOwn(facts, name)));
}

function comesTo(facts: ReasonRequest["said"], compiled: Compiled): string {
  return severitiesOf(possibleSeverities(compiled, readAnswers(compiled, { facts }).knowledge.masks)).join();
}
