import type { Finding, Path, Severity, Weighing } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import type { Topic, Topics } from "@good-grounds/topics";
import { partsNamed, positionsHeld } from "../../reasoning/observation-reasoning.ts";
import { reasonAbout } from "../../reasoning/reason-about.ts";
import { recordedProperty } from "../../reasoning/recorded/index.ts";
import type { TopicReasoning } from "../../reasoning/results.ts";
import { findingsAbout, keyOf, type Place, type SpokenOf, spokenOf } from "../../reasoning/spoken-of/index.ts";
import { OPENED_ROWS, type OpenedOn, type OpenedRow } from "./rows.ts";

/** A subject that the recorded installation asks for by itself. */
export interface OpenedSubject {
  readonly topic: Topic;
  /** Where it arises. */
  readonly path: Path;
  /** What is possible by the file alone, from least to most; never nothing. */
  readonly possible: readonly Severity[];
  /** Findings that are not met and of which the subject speaks. */
  readonly findings: readonly Finding[];
}

interface Subject {
  readonly path: Path;
  readonly place: Place;
  readonly spoken: SpokenOf;
}

/**
 * The subjects that the recorded installation opens by itself and of which no observation speaks. One is opened where its
 * row's conditions are known to hold and what is recorded leads to a class or a departure whatever the open facts turn
 * out to be; so nothing is opened on what is not known. An observation of the same topic at the same place, or at one
 * around it, speaks of it, and so does whatever answers every finding it rests on.
 */
export function openedSubjects(
  installation: Installation,
  weighing: Weighing,
  answered: ReadonlySet<Finding>,
  topics: Topics,
): readonly OpenedSubject[] {
  if (installation.edition === undefined) return [];
  // Several rows ask about the same subjects: what each speaks of is worked out once.
  const subjects = new Map<OpenedOn, readonly Subject[]>();
  return OPENED_ROWS.flatMap((row) => {
    const topic = topics.byId(row.topic);
    if (topic === undefined) return [];
    const asked = subjects.get(row.on) ?? subjectsOf(row.on, installation, weighing);
    subjects.set(row.on, asked);
    return asked.flatMap((subject) => {
      if (!holds(row, subject) || isSpokenOf(row, subject, installation)) return [];
      const opened = openedOn(row, topic, subject, { installation, weighing, topics });
      const isAnswered =
        opened !== undefined && opened.findings.length > 0 && opened.findings.every((one) => answered.has(one));
      return opened === undefined || isAnswered ? [] : [opened];
    });
  });
}

interface Around {
  readonly installation: Installation;
  readonly weighing: Weighing;
  readonly topics: Topics;
}

function openedOn(
  { says }: OpenedRow,
  topic: Topic,
  { path, place, spoken }: Subject,
  { installation, weighing, topics }: Around,
): OpenedSubject | undefined {
  const reasoned = reasonAbout({
    topic,
    said: says,
    positions: positionsHeld(installation, topic, topics),
    at: { installation, weighing, ...place },
  });
  const { possible } = reasoned.reasoning;
  if (possible.length === 0 || possible.includes("none")) return undefined;
  return { topic, path, possible, findings: findingsBehind(reasoned, spoken) };
}

/** Findings not met that answer a fact of the subject. */
function findingsBehind({ worked }: TopicReasoning, spoken: SpokenOf): readonly Finding[] {
  return findingsAbout(spoken).filter(
    ({ check, path, judgement }) =>
      judgement.verdict === "not-met" &&
      worked.some(
        (one) =>
          one.by === check &&
          one.value !== null &&
          one.judgement.verdict === "not-met" &&
          (one.of ?? []).some((at) => keyOf(at) === keyOf(path)),
      ),
  );
}

function subjectsOf(on: OpenedOn, installation: Installation, weighing: Weighing): readonly Subject[] {
  return placesOf(on, installation).map((one) => ({ ...one, spoken: spokenOf(installation, weighing, one.place) }));
}

function placesOf(
  on: OpenedOn,
  { supply, boards, circuits }: Installation,
): readonly { readonly path: Path; readonly place: Place }[] {
  switch (on) {
    case "supply":
      return [{ path: supply.path, place: {} }];
    case "bond":
      return supply.bonding.map(({ path, id }) => ({ path, place: { parts: [{ id }] } }));
    case "board":
      return boards.map(({ path, id }) => ({ path, place: { board: id } }));
    case "circuit":
      return circuits.map(({ path, id, board }) => ({ path, place: { board: board.id, circuit: id } }));
  }
}

/** Whether every condition of a row is known to hold. */
function holds({ when }: OpenedRow, { spoken }: Subject): boolean {
  return Object.entries(when).every(([id, allowed]) => {
    const read = recordedProperty(id)?.read(spoken) ?? [];
    return (
      read.length > 0 && read.every(({ values }) => values.length > 0 && values.every((one) => allowed.includes(one)))
    );
  });
}

/** Whether an observation names the topic at this place, at one around it, or nowhere in particular. */
function isSpokenOf({ topic }: OpenedRow, { place }: Subject, { observations }: Installation): boolean {
  return observations.some((observation) => {
    if (observation.topic !== topic) return false;
    const { board, circuit } = observation;
    if (board !== undefined && board !== place.board) return false;
    if (circuit !== undefined && circuit !== place.circuit) return false;
    const named = partsNamed(observation);
    const [part] = place.parts ?? [];
    return part === undefined || named.length === 0 || named.some(({ id }) => id === part.id);
  });
}
