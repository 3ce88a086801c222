import type { ChoiceBelowFacts, OpenPoint, Path, Weighing } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import type { Topics } from "@good-grounds/topics";
import type { ObservationReasoning } from "../reasoning/results.ts";
import { answeredFindings } from "./answered-findings.ts";
import { followsAtLeast } from "./choices-below-facts.ts";
import { contradictions } from "./contradictions.ts";
import { type OpenedSubject, openedSubjects } from "./opened/opened-subjects.ts";
import { unanswered } from "./unanswered.ts";
import { uninspected } from "./uninspected.ts";
import { untested } from "./untested.ts";

/**
 * The ledger of what decides and stands open, danger first. Findings that are not known because a table or the route of
 * a cable is not known are no points: with them no sound house would ever be satisfactory.
 */
export function openPoints(
  installation: Installation,
  weighing: Weighing,
  reasoned: readonly ObservationReasoning[],
  below: readonly ChoiceBelowFacts[],
  topics: Topics,
): readonly OpenPoint[] {
  const answered = answeredFindings(installation, weighing, reasoned);
  const opened = openedSubjects(installation, weighing, answered, topics);
  // A finding of which an opened subject speaks is told there, with what follows from it.
  const told = new Set([...answered, ...opened.flatMap(({ findings }) => findings)]);
  const points: OpenPoint[] = [
    ...earthingOff(installation),
    ...below.flatMap(({ path, follows, chosen, reason }): OpenPoint[] =>
      reason === null ? [{ kind: "below-the-facts", places: [path], follows, chosen }] : [],
    ),
    ...contradictions(installation, reasoned),
    ...unclassified(installation, reasoned),
    ...openedPoints(opened),
    ...unanswered(weighing, told),
    ...untested(installation, weighing),
    ...uninspected(installation),
  ];
  return points
    .map((point) => [rank(point), point] as const)
    .sort(([a], [b]) => a - b)
    .map(([, point]) => point);
}

/** Opened subjects, those of one topic that lead to the same together. */
function openedPoints(opened: readonly OpenedSubject[]): readonly OpenPoint[] {
  const points = new Map<string, OpenPoint & { readonly kind: "opened" }>();
  for (const { topic, possible, path } of opened) {
    const key = `${topic.id} ${possible.join(" ")}`;
    const places = [...(points.get(key)?.places ?? []), path];
    points.set(key, { kind: "opened", topic: topic.id, title: topic.title, possible, places });
  }
  return [...points.values()];
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

/** Checks whose failure is nearest to harm, worst first; the others follow. */
const NEAREST_TO_HARM = [
  "supply-polarity",
  "polarity",
  "cpc-continuity",
  "maximum-zs",
  "electrode",
  "rcd-time",
  "insulation-resistance",
  "bonding-continuity",
  "external-impedance",
  "additional-protection",
  "breaking-capacity",
  "supply-breaking-capacity",
  "ring-continuity",
  "cpc-adiabatic",
  "earthing-conductor-size",
  "cable-capacity",
];

/** Smaller is nearer to harm. */
function rank(point: OpenPoint): number {
  switch (point.kind) {
    case "earthing-off":
      return 0;
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

function harm(check: string): number {
  const at = NEAREST_TO_HARM.indexOf(check);
  return at < 0 ? NEAREST_TO_HARM.length : at;
}
