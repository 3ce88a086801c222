import type { Classification, Finding, Path, Weighing } from "@good-grounds/core";
import type { Installation, ObservationEntry as Observation } from "@good-grounds/inspection";
import { topicById } from "../topics/index.ts";
import { type OpeningSection, openingSection } from "./opening-section.ts";
import { reasonTopic, type TopicReasoning } from "./topic-reasoning.ts";
import { factsFromFigures, factsFromFindings, needsOf } from "./worked-facts.ts";

/** The line of reasoning of one observation of an inspection, and how the inspector's choice stands to it. */
export interface ObservationReasoning extends TopicReasoning {
  readonly observation: string;
  readonly path: Path;
  readonly chosen: Classification | null;
  /** How the choice stands to what follows: `same`; `allowed` while more than one is possible or by another position; `differs`. */
  readonly choice: "none" | "same" | "allowed" | "differs";
  /** What was done about danger before leaving. */
  readonly madeSafe?: string;
  /** The opening its figures describe, to be drawn. */
  readonly opening?: OpeningSection;
}

/** Reasons about every observation that names a topic. Topics that do not exist are placed faults of {@link topicFaults}. */
export function reasonObservations(installation: Installation, weighing: Weighing): readonly ObservationReasoning[] {
  const { edition } = installation;
  // What an edition asks is not known without it; then nothing follows from the facts.
  if (edition === undefined) return [];
  return installation.observations.flatMap((observation, number) => {
    const topic = observation.topic === undefined ? undefined : topicById(observation.topic);
    if (topic === undefined) return [];
    const facts = observation.facts ?? {};
    const figureNames = needsOf(topic);
    const figures = Object.entries(facts).filter(
      (entry): entry is [string, string] =>
        !Object.hasOwn(topic.facts, entry[0]) && figureNames.has(entry[0]) && typeof entry[1] === "string",
    );
    const said = Object.fromEntries(
      Object.entries(facts).filter(([name]) => !figures.some(([figure]) => figure === name)),
    );
    const byHand = factsFromFigures(topic, Object.fromEntries(figures)).worked;
    const byChecks = factsFromFindings(topic, findingsAt(observation, installation, weighing));
    const worked = [...byHand, ...byChecks.filter(({ fact }) => !byHand.some((one) => one.fact === fact))];
    const reasoned = reasonTopic(topic, edition, said, positionsOf(observation, installation), worked);
    const chosen = observation.choice?.classification ?? null;
    const opening = openingSection(topic, Object.fromEntries(figures), byHand);
    return [
      {
        ...reasoned,
        observation: observation.id,
        path: ["observations", number],
        chosen,
        choice: choiceOf(chosen, reasoned),
        ...(observation.madeSafe === undefined ? {} : { madeSafe: observation.madeSafe.done }),
        ...(opening === undefined ? {} : { opening }),
      },
    ];
  });
}

/** The observation's own positions over the firm's standing views. */
function positionsOf({ topic, positions = {} }: Observation, { standingViews }: Installation) {
  const standing = standingViews.filter((view) => view.topic === topic).map(({ point, position }) => [point, position]);
  const own = Object.entries(positions).map(([point, { position }]) => [point, position]);
  return Object.fromEntries([...standing, ...own]);
}

/** Findings about the circuit an observation names, else about its board, else about the supply. */
export function findingsAt(
  { board, circuit }: Pick<Observation, "board" | "circuit">,
  installation: Installation,
  weighing: Weighing,
): readonly Finding[] {
  if (circuit !== undefined) {
    const at = installation.circuits.findIndex((one) => one.id === circuit && one.board.id === board);
    return weighing.circuits[at] ?? [];
  }
  if (board !== undefined) return weighing.boards[installation.boards.findIndex(({ id }) => id === board)] ?? [];
  return weighing.supply;
}

function choiceOf(chosen: Classification | null, { reasoning }: TopicReasoning): ObservationReasoning["choice"] {
  if (chosen === null) return "none";
  const { classification, possible, underAnyView, unsettled, open } = reasoning;
  if (chosen === classification) return "same";
  if (chosen === "FI") {
    // FI is for what is not settled and could be dangerous; it is no answer to what is already clear.
    const danger = possible.includes("C1") || possible.includes("C2");
    return classification === null && danger && (unsettled.length > 0 || open.length > 0) ? "allowed" : "differs";
  }
  const wide = classification === null ? possible : underAnyView;
  return wide.includes(chosen) ? "allowed" : "differs";
}
