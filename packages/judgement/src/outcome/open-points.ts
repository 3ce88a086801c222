import type { ChoiceBelowFacts, Misfit, OpenPoint, Path, Weighing } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import type { Topics } from "@good-grounds/topics";
import type { ObservationReasoning } from "../reasoning/results.ts";
import type { Answers } from "./answered-findings.ts";
import { followsAtLeast } from "./choices-below-facts.ts";
import { contradictions, type OpenContradiction } from "./contradictions/index.ts";
import { dangersUntold } from "./dangers.ts";
import { defectiveSamples } from "./defective-samples.ts";
import { misfitPoints } from "./misfits.ts";
import { harm } from "./near-to-harm.ts";
import { openedSubjects } from "./opened/opened-subjects.ts";
import { unanswered } from "./unanswered.ts";
import { uninspected } from "./uninspected.ts";
import { untested } from "./untested.ts";

/** Everything the ledger is made from. */
export interface LedgerInput {
  readonly installation: Installation;
  readonly weighing: Weighing;
  readonly reasoned: readonly ObservationReasoning[];
  readonly misfits: readonly Misfit[];
  readonly below: readonly ChoiceBelowFacts[];
  readonly answers: Answers;
  readonly topics: Topics;
}

/**
 * The ledger of what decides and stands open, danger first; what shares a cause is one point. Findings that are not known
 * because a table or the route of a cable is not known are no points: with them no sound house would ever be satisfactory.
 */
export function openPoints(input: LedgerInput): readonly OpenPoint[] {
  const { installation, weighing, reasoned, misfits, below, answers, topics } = input;
  const opened = openedSubjects(installation, weighing, answers.findings, topics);
  const unspoken = { answered: answers.findings, opened, misfits: misfitPoints(installation, misfits) };
  const points: OpenPoint[] = [
    ...earthingOff(installation),
    ...dangersUntold(installation),
    ...below.flatMap(({ path, follows, chosen, reason }): OpenPoint[] =>
      reason === null ? [{ kind: "below-the-facts", places: [path], follows, chosen }] : [],
    ),
    ...unclassified(installation, reasoned),
    ...unanswered(weighing, installation, unspoken),
    ...defectiveSamples(installation),
    ...untested(installation, weighing),
    ...uninspected(installation),
  ];
  const checksTold = new Map(opened.flatMap(({ topic, findings }) => findings.map(({ check }) => [check, topic.id])));
  return joined(points, contradictions({ installation, weighing, reasoned, misfits }), checksTold)
    .map((point) => [rank(point), point] as const)
    .sort(([a], [b]) => a - b)
    .map(([, point]) => point);
}

/** Contradictions to the points of the checks they are with, where those stand open; the others by themselves. */
function joined(
  points: readonly OpenPoint[],
  found: readonly OpenContradiction[],
  checksTold: ReadonlyMap<string, string>,
): readonly OpenPoint[] {
  const all = [...points];
  for (const { point, check } of found) {
    const topic = check === undefined ? undefined : checksTold.get(check);
    const at = all.findIndex(
      (one) => (one.kind === "not-met" && one.check === check) || (one.kind === "opened" && one.topic === topic),
    );
    const with_ = all[at];
    if (check === undefined || with_ === undefined) all.push(point);
    else all[at] = { ...with_, follow: [...(with_.follow ?? []), point] };
  }
  return all;
}

function earthingOff({ earthingOff: times }: Installation): readonly OpenPoint[] {
  const places = times.flatMap(({ on }, i): Path[] => (on === undefined ? [["earthingOff", i]] : []));
  return places.length === 0 ? [] : [{ kind: "earthing-off", places }];
}

/** Observations without a classification, by what their facts already give. */
function unclassified({ observations }: Installation, reasoned: readonly ObservationReasoning[]): readonly OpenPoint[] {
  const places = new Map<"C1" | "C2" | null, Path[]>();
  for (const [i, { id, choice }] of observations.entries()) {
    if (choice !== undefined) continue;
    const one = reasoned.find(({ observation }) => observation === id);
    const least = one === undefined ? null : followsAtLeast(one);
    const follows = least === "FI" ? null : least;
    places.set(follows, [...(places.get(follows) ?? []), ["observations", i]]);
  }
  return [...places].map(([follows, at]) => ({ kind: "unclassified", follows, places: at }));
}

/** Smaller is nearer to harm. */
function rank(point: OpenPoint): number {
  switch (point.kind) {
    case "earthing-off":
      return 0;
    case "danger-untold":
      return 5;
    case "below-the-facts":
      return { C1: 10, C2: 40, FI: 70 }[point.follows];
    case "contradiction":
      return 71;
    case "unclassified":
      return point.follows === null ? 72 : { C1: 11, C2: 41 }[point.follows];
    case "not-met":
      return (point.check.endsWith("polarity") ? 20 : 42) + harm(point.check);
    case "past-limit":
      return 62 + harm(point.check) / 10;
    case "not-known":
      return 63 + harm(point.check) / 100;
    case "misfit":
      return 63.5;
    case "defective-sample":
      return 64.5;
    case "opened":
      return { C1: 12, C2: 41.5, C3: 64, none: 64 }[point.possible[0] ?? "none"];
    case "nothing-tested":
      return 65;
    case "not-tested":
      return 66;
    case "nothing-inspected":
      return 73;
    case "not-inspected":
      return point.answered === "not" ? 74 : 75;
  }
}
