import { type Classification, SEVERITIES, type Weighing } from "@good-grounds/core";
import type { Installation, ObservationEntry as Observation } from "@good-grounds/inspection";
import { OWN_TOPICS, type Topic, type Topics } from "@good-grounds/topics";
import { reasonAbout } from "./reason-about.ts";
import type { ObservationReasoning, TopicReasoning } from "./results.ts";
import type { Part } from "./spoken-of/index.ts";

/** Reasons about every observation that names a topic. Topics that do not exist are placed faults of `topicIssues`. */
export function reasonObservations(
  installation: Installation,
  weighing: Weighing,
  topics: Topics = OWN_TOPICS,
): readonly ObservationReasoning[] {
  return installation.observations.flatMap((observation, number) => {
    const topic = observation.topic === undefined ? undefined : topics.byId(observation.topic);
    if (topic === undefined) return [];
    const { board, circuit, facts: said = {} } = observation;
    const reasoned = reasonAbout({
      topic,
      said,
      positions: { ...positionsHeld(installation, topic, topics), ...ownPositions(observation) },
      at: { installation, weighing, board, circuit, parts: partsNamed(observation) },
    });
    const chosen = observation.choice?.classification ?? null;
    // Added rather than copied: a copy would ask for everything that is worked out when asked for.
    return [
      Object.assign(reasoned, {
        observation: observation.id,
        path: ["observations", number],
        chosen,
        choice: choiceOf(chosen, reasoned),
        ...(observation.madeSafe === undefined ? {} : { madeSafe: observation.madeSafe.done }),
      }),
    ];
  });
}

/** Single bonding conductors, RCDs and things that an observation names, or brings in. */
export function partsNamed({
  answers = [],
  things = [],
  brings,
}: Pick<Observation, "answers" | "things" | "brings">): readonly Part[] {
  return [
    ...things.map(({ thing, board }) => ({ id: thing, board })),
    ...thingIds(brings).map((id) => ({ id })),
    ...answers.flatMap(({ part, board }) => (part === undefined ? [] : [{ id: part, board }])),
  ];
}

/** Ids of the things in a list of them by kind. */
function thingIds(brings: Observation["brings"]): readonly string[] {
  return Object.values(brings ?? {}).flatMap((kind) => (kind ?? []).map(({ id }) => id));
}

/** The positions held where an observation takes none: the standing views of the file over those of the folder. */
export function positionsHeld(
  installation: Pick<Installation, "standingViews"> | undefined,
  topic: Topic,
  topics: Topics = OWN_TOPICS,
): Readonly<Record<string, string>> {
  const standing = (installation?.standingViews ?? [])
    .filter((view) => view.topic === topic.id)
    .map(({ point, position }) => [point, position]);
  return { ...topics.positionsOn(topic), ...Object.fromEntries(standing) };
}

function ownPositions({ positions = {} }: Observation): Readonly<Record<string, string>> {
  return Object.fromEntries(Object.entries(positions).map(([point, { position }]) => [point, position]));
}

function choiceOf(chosen: Classification | null, { reasoning, least }: TopicReasoning): ObservationReasoning["choice"] {
  if (chosen === null) return "none";
  const { classification, possible, underAnyView, unsettled, open } = reasoning;
  if (chosen === classification) return "same";
  if (chosen === "FI") {
    // FI is for what is not settled and could be dangerous; it is no answer to what is already clear.
    const danger = possible.includes("C1") || possible.includes("C2");
    return classification === null && danger && (unsettled.length > 0 || open.length > 0) ? "allowed" : "differs";
  }
  if (classification === null && SEVERITIES.indexOf(chosen) < SEVERITIES.indexOf(least)) return "differs";
  const wide = classification === null ? possible : underAnyView;
  return wide.includes(chosen) ? "allowed" : "differs";
}
