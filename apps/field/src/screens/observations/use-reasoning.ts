import { useEffect, useState } from "preact/hooks";
import { engine } from "../../engine/client.ts";
import type { Facts, Positions, ReasonView } from "../../engine/protocol.ts";
import { documentOf, join } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import { useJob } from "../../shell/job.ts";
import { textAt, valuesBelow } from "./read.ts";

export interface ReasoningState {
  readonly topic: string;
  readonly view: ReasonView | undefined;
  readonly failed: string | undefined;
}

/** The line of reasoning of an observation, worked out anew whenever its facts, its place or the readings change. */
export function useReasoning(observation: string): ReasoningState {
  const { record } = useJob();
  const topic = textAt(record, join(observation, "topic"));
  const facts = valuesBelow(record, join(observation, "facts")) as Facts;
  const positions: Positions = Object.fromEntries(
    Object.entries(valuesBelow(record, join(observation, "positions"))).flatMap(([point, value]) => {
      const position = (value as { readonly position?: Value }).position;
      return typeof position === "string" ? [[point, position]] : [];
    }),
  );
  const [board, circuit] = [textAt(record, join(observation, "board")), textAt(record, join(observation, "circuit"))];
  const [state, setState] = useState<Omit<ReasoningState, "topic">>({ view: undefined, failed: undefined });
  const asked = JSON.stringify([topic, facts, positions, board, circuit]);
  useEffect(() => {
    if (topic === "") return setState({ view: undefined, failed: undefined });
    let left = false;
    const place = board === "" ? {} : circuit === "" ? { board } : { board, circuit };
    const work = async () => {
      // Findings of the place answer facts, so the job is weighed as it stands now.
      await engine.weigh(documentOf(record));
      return engine.reason(topic, facts, positions, place);
    };
    work().then(
      (view) => !left && setState({ view, failed: undefined }),
      (error: unknown) =>
        !left && setState({ view: undefined, failed: error instanceof Error ? error.message : String(error) }),
    );
    return () => {
      left = true;
    };
  }, [asked]);
  return { topic, ...state };
}
