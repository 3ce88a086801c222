import {
  type Answer,
  type AnswerFault,
  type Classification,
  type Compiled,
  type EditionId,
  type Knowledge,
  possibleLeaves,
  type Reasoning,
  readAnswers,
  reason,
  type Severity,
  severitiesOf,
  statementThatHolds,
} from "@good-grounds/core";
import { compiledTopic } from "../topics/compiled.ts";
import type { Remedy, Topic } from "../topics/topic.ts";
import { type LayersBetween, layersBetween } from "./layers-between.ts";
import { completed, type WorkedFact } from "./worked-facts.ts";

/** A remedy and what would be possible once it is done. */
export interface RemedyEffect {
  readonly remedy: Remedy;
  readonly after: readonly Severity[];
}

/** Everything that follows for one topic. */
export interface TopicReasoning {
  readonly topic: Topic;
  readonly reasoning: Reasoning;
  readonly faults: readonly AnswerFault[];
  /**
   * What the person who ordered the report can be told under each classification; only what is known to be true. A fact
   * of which a computation says otherwise than what was stated counts as not known here.
   */
  readonly client: Readonly<Partial<Record<Classification, string>>>;
  /** Facts that computations answered. */
  readonly worked: readonly WorkedFact[];
  /** Computations that say otherwise than what was stated. */
  readonly against: readonly WorkedFact[];
  /** Remedies that lower what is possible, cheapest first; those that leave danger for certain come after the others. */
  readonly remedies: readonly RemedyEffect[];
  /** The layers between live metal and a person, where the topic asks what they rest on; to be drawn. */
  readonly between?: LayersBetween;
}

/** Reasons about a topic from what is said and what was worked out. */
export function reasonTopic(
  topic: Topic,
  edition: EditionId,
  said: Readonly<Record<string, Answer>>,
  positions: Readonly<Record<string, string>> = {},
  worked: readonly WorkedFact[] = [],
): TopicReasoning {
  const compiled = compiledTopic(topic, edition);
  const { facts, taken, against } = completed(said, worked);
  const { knowledge, faults } = readAnswers(compiled, { facts, positions });
  const reasoning = reason(compiled, knowledge);
  const between = layersBetween(compiled, knowledge);
  return {
    topic,
    reasoning,
    faults,
    client: toldOf(topic, compiled, withoutContradicted(knowledge, against, compiled)),
    worked: taken,
    against,
    remedies: topic.remedies
      .flatMap((remedy) => {
        const leaves = possibleLeaves(compiled, compiled.root, masksAfter(remedy, compiled, knowledge.masks));
        const after = severitiesOf(leaves);
        return isBetter(leaves, possibleLeaves(compiled, compiled.root, knowledge.masks)) ? [{ remedy, after }] : [];
      })
      .sort((a, b) => Number(leavesDanger(a)) - Number(leavesDanger(b))),
    ...(between === undefined ? {} : { between }),
  };
}

function toldOf({ client }: Topic, compiled: Compiled, knowledge: Knowledge): TopicReasoning["client"] {
  return Object.fromEntries(
    Object.entries(client).flatMap(([classification, statements]) => {
      const said = statementThatHolds(statements, classification as Classification, compiled, knowledge);
      return said === undefined ? [] : [[classification, said.words]];
    }),
  );
}

/** What is known without the facts that were stated one way and computed another. */
function withoutContradicted(knowledge: Knowledge, against: readonly WorkedFact[], compiled: Compiled): Knowledge {
  const open = new Set(against.map(({ fact }) => compiled.index.get(`fact ${fact}`)));
  if (open.size === 0) return knowledge;
  const { masks, beyond, grounds } = knowledge;
  return {
    masks: masks.map((mask, variable) =>
      open.has(variable) ? 2 ** (compiled.variables[variable]?.cells.values.length ?? 1) - 1 : mask,
    ),
    beyond: new Set([...beyond].filter((variable) => !open.has(variable))),
    grounds,
  };
}

function masksAfter({ changes }: Remedy, compiled: Compiled, masks: readonly number[]): readonly number[] {
  const { knowledge } = readAnswers(compiled, { facts: changes });
  const changed = new Set(Object.keys(changes).map((name) => compiled.index.get(`fact ${name}`)));
  return masks.map((mask, variable) => (changed.has(variable) ? (knowledge.masks[variable] as number) : mask));
}

/** Whether a remedy alone is not enough, whatever the open facts turn out to be. */
function leavesDanger({ after: [least] }: RemedyEffect): boolean {
  return least === "C2" || least === "C1";
}

/** Whether the worst that is possible is less, or the best is. */
function isBetter(after: number, before: number): boolean {
  return 31 - Math.clz32(after) < 31 - Math.clz32(before) || Math.clz32(after & -after) > Math.clz32(before & -before);
}
