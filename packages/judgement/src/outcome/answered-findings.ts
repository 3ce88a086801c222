import type { Finding, Judgement, Path, Weighing } from "@good-grounds/core";
import type { Installation, ObservationEntry as Observation } from "@good-grounds/inspection";
import { partsNamed } from "../reasoning/observation-reasoning.ts";
import type { ObservationReasoning } from "../reasoning/results.ts";
import { findingsAbout, findingsAt, spokenOf } from "../reasoning/spoken-of/index.ts";
import { judgementFor } from "../reasoning/worked/index.ts";
import { isWrittenReason } from "./written-reason.ts";

type Named = NonNullable<Observation["answers"]>[number];

/**
 * Findings that an observation with a classification speaks of, each with the parts of it that were spoken of where it
 * has parts. An observation speaks of a finding in two ways only, so that one about a faceplate says nothing of the loop
 * of the same circuit:
 * - it names the check under `answers`, at its own place or at one named there;
 * - its topic has a fact that rests on this check, the fact stands as the finding has it, and no other finding of the
 *   check about the things it speaks of is not met.
 * A classification that makes nothing unsatisfactory answers only with a written reason.
 */
export function answeredFindings(
  installation: Installation,
  weighing: Weighing,
  reasoned: readonly ObservationReasoning[],
): ReadonlySet<Finding> {
  const whole = new Set<Finding>();
  const parts = new Map<Finding, Set<Judgement>>();
  for (const observation of installation.observations) {
    if (!isAnswer(observation)) continue;
    for (const named of observation.answers ?? [])
      for (const finding of namedFindings(named, observation, installation, weighing)) whole.add(finding);
    const one = reasoned.find((candidate) => candidate.observation === observation.id);
    if (one === undefined) continue;
    const { board, circuit } = observation;
    const place = { board, circuit, parts: partsNamed(observation) };
    const about = findingsAbout(spokenOf(installation, weighing, place));
    for (const [fact, { worked }] of Object.entries(one.topic.facts)) {
      const ground = one.reasoning.grounds.get(fact);
      if (worked === undefined || ground?.kind !== "fact" || wordOf(ground.word) !== worked.notMet) continue;
      const [finding, ...others] = about.filter(
        ({ check, judgement: { verdict, asRead } }) =>
          check === worked.by && (verdict === "not-met" || (verdict === "too-near" && asRead === "not-met")),
      );
      if (finding === undefined || others.length > 0) continue;
      const part = judgementFor(worked, finding);
      if (worked.matter === undefined) whole.add(finding);
      else if (part?.verdict === "not-met") parts.set(finding, (parts.get(finding) ?? new Set()).add(part));
    }
  }
  for (const [finding, spoken] of parts)
    if ((finding.settles ?? []).every((part) => part.verdict !== "not-met" || spoken.has(part))) whole.add(finding);
  return whole;
}

/** Whether an observation can answer anything: it is classified, and says why where that leaves the outcome as it is. */
function isAnswer({ choice }: Observation): boolean {
  if (choice === undefined) return false;
  return choice.classification === "C1" || choice.classification === "C2" || isWrittenReason(choice.reason);
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
