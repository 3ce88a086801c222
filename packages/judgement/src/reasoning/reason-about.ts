import {
  type Answer,
  type Classification,
  type Compiled,
  type Finding,
  factsThatMatter,
  type Knowledge,
  reason,
  statementThatHolds,
  type Weighing,
} from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import type { Topic } from "@good-grounds/topics";
import { compiledTopic, formerFaults, withFormerFacts, withFormerPositions } from "@good-grounds/topics";
import { fileAgainstGiven, withBoth } from "./given-against-file.ts";
import { layersBetween } from "./layers-between.ts";
import { openingSection } from "./opening-section.ts";
import { answersFromRecord } from "./recorded/index.ts";
import { remediesThatHelp } from "./remedies.ts";
import type { TopicReasoning, WorkedFact } from "./results.ts";
import { type Agreed, type Answered, agreed, agreedByBoth, leastThatStands, settled } from "./settled/index.ts";
import { findingsAbout, type Place, type SpokenOf, spokenOf } from "./spoken-of/index.ts";
import {
  answersFromFindings,
  answersFromSections,
  factsFromFigures,
  partedSaid,
  unfinishedOf,
} from "./worked/index.ts";

/** What is asked: a topic, what was said of it, and what the observation speaks of. */
export interface ReasonRequest {
  readonly topic: Topic;
  /** Answers to the topic's facts, and figures of the computations behind them, by name, as an observation has them. */
  readonly said: Readonly<Record<string, Answer>>;
  /** Positions by contested point; the more usual one is taken where none is named. */
  readonly positions?: Readonly<Record<string, string>>;
  /** The inspection and the place in it; without it nothing is known but what is said. */
  readonly at?: ReasonPlace;
}

/** A place in a weighed inspection. */
export interface ReasonPlace extends Place {
  readonly installation: Installation;
  readonly weighing: Weighing;
}

/**
 * Everything that follows for a topic from what is said, from figures given with it, from what the inspection records
 * and from the findings about the same things. The one way in, for app, command and report.
 */
export function reasonAbout(request: ReasonRequest): TopicReasoning {
  const here = reasonHere(request);
  const spoken = spokenOfAt(request.at);
  const differs = spoken === undefined ? undefined : fileAgainstGiven(here, request.said, spoken);
  if (differs === undefined) return here;
  const { topic, said } = differs.byFile;
  const positions = Object.entries(request.positions ?? {}).filter(([point]) => Object.hasOwn(topic.contested, point));
  return withBoth(here, differs, reasonHere({ ...request, topic, said, positions: Object.fromEntries(positions) }));
}

/** What follows for a topic as it stands, whatever the file records of what it takes as given. */
function reasonHere({ topic, said, positions = {}, at }: ReasonRequest): TopicReasoning {
  const compiled = compiledTopic(topic);
  const { facts, figures } = partedSaid(topic, withFormerFacts(topic, said));
  const byHand = factsFromFigures(topic, figures);
  const made = settled(
    facts,
    withFormerPositions(topic, positions),
    knownOf(topic, byHand.worked, at, compiled),
    compiled,
  );
  const { knowledge, faults, taken, against, differing } = made;
  const opening = openingSection(topic, figures, byHand.worked);
  const unfinished = unfinishedOf(topic, byHand.worked).filter(({ fact }) => !Object.hasOwn(facts, fact));
  const between = layersBetween(compiled, knowledge);
  let client: TopicReasoning["client"] | undefined;
  let notFoundOut: readonly string[] | undefined;
  let remedies: TopicReasoning["remedies"] | undefined;
  return {
    topic,
    reasoning: reason(compiled, knowledge),
    least: leastThatStands(made, compiled),
    faults: [...formerFaults(topic, said), ...faults],
    issues: byHand.issues,
    // What only a page shows is worked out when it is first asked for.
    get client() {
      client ??= toldOf(topic, compiled, knowledge);
      return client;
    },
    get notFoundOut() {
      notFoundOut ??= notFoundOutOf(topic, compiled, knowledge);
      return notFoundOut;
    },
    worked: taken.flatMap((one) => ("judgement" in one ? [one] : [])),
    recorded: taken.flatMap((one) => ("judgement" in one ? [] : [one])),
    against,
    differing,
    get remedies() {
      remedies ??= remediesThatHelp(topic, compiled, knowledge);
      return remedies;
    },
    ...(unfinished.length === 0 ? {} : { unfinished }),
    ...(opening === undefined ? {} : { opening }),
    ...(between === undefined ? {} : { between }),
  };
}

/**
 * What is known of each fact. Figures given with the observation are of the thing itself and go before what the file
 * says of its place; so does what follows for a length of conductors that it names.
 */
function knownOf(
  topic: Topic,
  byHand: readonly WorkedFact[],
  at: ReasonPlace | undefined,
  compiled: Compiled,
): ReadonlyMap<string, Agreed> {
  const given = agreedByFact(topic, byHand, compiled);
  const spoken = spokenOfAt(at);
  if (spoken === undefined) return given;
  const recorded = agreedByFact(topic, answersFromRecord(topic, spoken), compiled);
  const found = knownFromFindings(topic, findingsAbout(spoken), compiled);
  const ofSections = answersFromSections(topic, spoken);
  const bySection = agreedByFact(topic, ofSections, compiled);
  const isOfSection = new Set(ofSections.map(({ fact }) => fact));
  const isGiven = new Set(byHand.map(({ fact }) => fact));
  return new Map(
    Object.keys(topic.facts).map((fact) => [
      fact,
      isGiven.has(fact)
        ? (given.get(fact) ?? {})
        : agreedByBoth((isOfSection.has(fact) ? bySection : found).get(fact) ?? {}, recorded.get(fact) ?? {}),
    ]),
  );
}

function spokenOfAt(at: ReasonPlace | undefined): SpokenOf | undefined {
  return at === undefined ? undefined : spokenOf(at.installation, at.weighing, at);
}

/** What findings say of each fact of a topic, where those of the same check about several things agree. */
export function knownFromFindings(
  topic: Topic,
  findings: readonly Finding[],
  compiled: Compiled,
): ReadonlyMap<string, Agreed> {
  return agreedByFact(topic, answersFromFindings(topic, findings), compiled);
}

function agreedByFact({ facts }: Topic, answers: readonly Answered[], compiled: Compiled): ReadonlyMap<string, Agreed> {
  const of = (fact: string) => answers.filter((one) => one.fact === fact);
  return new Map(Object.keys(facts).map((fact) => [fact, agreed(fact, of(fact), compiled)]));
}

function toldOf({ client }: Topic, compiled: Compiled, knowledge: Knowledge): TopicReasoning["client"] {
  return Object.fromEntries(
    Object.entries(client).flatMap(([classification, statements]) => {
      const said = statementThatHolds(statements, classification as Classification, compiled, knowledge);
      return said === undefined ? [] : [[classification, said.words]];
    }),
  );
}

function notFoundOutOf({ client, facts, plain }: Topic, compiled: Compiled, knowledge: Knowledge): readonly string[] {
  const said = client.FI === undefined ? undefined : statementThatHolds(client.FI, "FI", compiled, knowledge);
  if (said === undefined || said.unsettled !== undefined) return [];
  const open = factsThatMatter(compiled, knowledge);
  return Object.keys(facts).flatMap((name) => {
    const words = open.includes(name) ? plain.facts[name] : undefined;
    return words === undefined ? [] : [words];
  });
}
