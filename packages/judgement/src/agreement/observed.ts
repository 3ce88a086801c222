import type { ChoiceMade } from "@good-grounds/core";
import type { InspectionFile } from "@good-grounds/inspection";
import { type FactValue, factKey } from "./fact-key.ts";
import { personKey } from "./person-key.ts";

type Observation = InspectionFile["observations"][number];

/** One recorded fact or position: what it says, comparable, and how it is written. */
export interface Entry {
  readonly kind: "fact" | "position";
  readonly name: string;
  readonly key: string;
  readonly value: FactValue;
}

/** What was judged in one observation, and the choice. */
export interface Observed {
  readonly topic: string;
  readonly entries: readonly Entry[];
  readonly choice: ChoiceMade;
}

/** Why an observation cannot be compared; `compared` where it can. */
export type Compared = Observed | "withoutChoice" | "withoutTopic" | "withoutFacts";

/** The choices in one inspection, each with the facts and positions it rests on. `source` names where the file was read. */
export function observedIn(file: InspectionFile, source: string): readonly Compared[] {
  const names = new Map(file.people.map(({ id, name }) => [id, name]));
  return file.observations.map((observation) => {
    const { choice, topic, facts } = observation;
    if (choice === undefined) return "withoutChoice";
    if (topic === undefined) return "withoutTopic";
    if (facts === undefined || Object.keys(facts).length === 0) return "withoutFacts";
    const by = names.get(choice.by) ?? choice.by;
    return {
      topic,
      entries: [...factsOf(facts), ...positionsOf(observation, file)],
      choice: {
        classification: choice.classification,
        reason: choice.reason,
        by,
        person: personKey(by),
        file: file.id,
        source,
        observation: observation.id,
        date: file.inspectedOn,
        edition: file.edition,
      },
    };
  });
}

function factsOf(facts: NonNullable<Observation["facts"]>): Entry[] {
  return Object.entries(facts).map(([name, value]) => ({ kind: "fact", name, key: factKey(value), value }));
}

/** The observation's own position on each point, else the firm's standing view, which is what then holds. */
function positionsOf({ topic, positions }: Observation, { standingViews }: InspectionFile): Entry[] {
  const held = new Map<string, string>();
  for (const view of standingViews ?? []) if (view.topic === topic) held.set(view.point, view.position);
  for (const [point, { position }] of Object.entries(positions ?? {})) held.set(point, position);
  return [...held].map(([name, position]) => ({ kind: "position", name, key: position, value: position }));
}
