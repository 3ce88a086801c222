import type { Finding, Judgement, Path, Weighing } from "@good-grounds/core";
import type { Installation, ObservationEntry as Observation } from "@good-grounds/inspection";
import { partsNamed } from "../reasoning/observation-reasoning.ts";
import type { ObservationReasoning } from "../reasoning/results.ts";
import { findingsAbout, findingsAt, spokenOf } from "../reasoning/spoken-of/index.ts";
import { judgementFor } from "../reasoning/worked/index.ts";
import { isAnswer, isDecisive } from "./is-answer.ts";
import { isNearToHarm } from "./near-to-harm.ts";
import { followFrom } from "./same-cause.ts";

type Named = NonNullable<Observation["answers"]>[number];

/** What observations answer, and which observations answer it. */
export interface Answers {
  readonly findings: ReadonlySet<Finding>;
  readonly by: ReadonlyMap<Finding, readonly Observation[]>;
}

/**
 * Findings that an observation with a classification speaks of, each with the parts of it that were spoken of where it
 * has parts. An observation speaks of a finding in two ways only, so that one about a faceplate says nothing of the loop
 * of the same circuit:
 * - it names the check under `answers`, at its own place or at one named there;
 * - its topic has a fact that rests on this check, the fact stands as the finding has it, and no other finding of the
 *   check about the things it speaks of is not met.
 * A classification that makes nothing unsatisfactory answers only with a written reason, and near to harm only with one
 * that stands by itself. One that makes it unsatisfactory answers what follows from the same cause as well.
 */
export function answeredFindings(
  installation: Installation,
  weighing: Weighing,
  reasoned: readonly ObservationReasoning[],
): Answers {
  const by = new Map<Finding, Observation[]>();
  const parts = new Map<Finding, Map<Judgement, Observation[]>>();
  const all = [...weighing.supply, ...weighing.boards.flat(), ...weighing.circuits.flat()];
  const add = (finding: Finding, observation: Observation) => {
    by.set(finding, [...(by.get(finding) ?? []), observation]);
    if (!isDecisive(observation)) return;
    for (const one of followFrom(finding, all, installation)) by.set(one, [...(by.get(one) ?? []), observation]);
  };
  for (const observation of installation.observations) {
    for (const named of observation.answers ?? [])
      for (const finding of namedFindings(named, observation, installation, weighing))
        if (isAnswer(observation, isNearToHarm(finding.check))) add(finding, observation);
    for (const [finding, part] of spokenByTopic(observation, installation, weighing, reasoned)) {
      if (!isAnswer(observation, isNearToHarm(finding.check))) continue;
      if (part === undefined) add(finding, observation);
      else {
        const spoken = parts.get(finding) ?? new Map<Judgement, Observation[]>();
        parts.set(finding, spoken.set(part, [...(spoken.get(part) ?? []), observation]));
      }
    }
  }
  for (const [finding, spoken] of parts)
    if ((finding.settles ?? []).every((part) => part.verdict !== "not-met" || spoken.has(part)))
      for (const observation of [...spoken.values()].flat()) add(finding, observation);
  return { findings: new Set(by.keys()), by };
}

/** A finding that is spoken of: a part of it, or the whole where there is none. */
type Spoken = readonly [finding: Finding, part: Judgement | undefined];

/** Findings that the topic of an observation speaks of, each whole or the part of it that a fact rests on. */
function spokenByTopic(
  observation: Observation,
  installation: Installation,
  weighing: Weighing,
  reasoned: readonly ObservationReasoning[],
): readonly Spoken[] {
  const one = reasoned.find((candidate) => candidate.observation === observation.id);
  if (one === undefined) return [];
  const { board, circuit } = observation;
  const about = findingsAbout(spokenOf(installation, weighing, { board, circuit, parts: partsNamed(observation) }));
  return Object.entries(one.topic.facts).flatMap(([fact, { worked }]): readonly Spoken[] => {
    const ground = one.reasoning.grounds.get(fact);
    if (worked === undefined || ground?.kind !== "fact" || wordOf(ground.word) !== worked.notMet) return [];
    const [finding, ...others] = about.filter(
      ({ check, judgement: { verdict, asRead } }) =>
        check === worked.by && (verdict === "not-met" || (verdict === "too-near" && asRead === "not-met")),
    );
    if (finding === undefined || others.length > 0) return [];
    if (worked.matter === undefined) return [[finding, undefined]];
    const part = judgementFor(worked, finding);
    return part?.verdict === "not-met" ? [[finding, part]] : [];
  });
}

/** The findings of a named check at the place named, or at that of the observation. */
function namedFindings(
  { check, board, circuit, part }: Named,
  observation: Observation,
  installation: Installation,
  weighing: Weighing,
): readonly Finding[] {
  const at = {
    board: board ?? observation.board,
    circuit: circuit ?? (board === undefined ? observation.circuit : undefined),
  };
  return findingsAt(at, installation, weighing).filter(
    (finding) => finding.check === check && (part === undefined || partId(finding.path, installation) === part),
  );
}

/** The id of the bonding conductor or the RCD a finding is about. */
function partId([head, i, kind, j]: Path, { supply, boards }: Installation): string | undefined {
  if (head === "supply" && i === "bonding" && typeof kind === "number") return supply.bonding[kind]?.id;
  return kind === "rcds" && typeof i === "number" && typeof j === "number" ? boards[i]?.rcds[j]?.id : undefined;
}

function wordOf(word: string | boolean): string {
  return word === true ? "yes" : word === false ? "no" : word;
}
