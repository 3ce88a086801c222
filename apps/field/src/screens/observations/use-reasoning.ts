import { useEffect, useState } from "preact/hooks";
import { engine } from "../../engine/client.ts";
import type { ReasonView } from "../../engine/reason-view.ts";
import { documentOf } from "../../record/document.ts";
import { useJob } from "../../shell/job.ts";
import { askedOf } from "./asked.ts";

export interface ReasoningState {
  readonly topic: string;
  readonly view: ReasonView | undefined;
  readonly failed: string | undefined;
}

/** The line of reasoning of an observation, worked out anew whenever its facts, its place or the readings change. */
export function useReasoning(observation: string): ReasoningState {
  const { record } = useJob();
  const { topic, facts, positions, place } = askedOf(record, observation);
  const [state, setState] = useState<Omit<ReasoningState, "topic">>({ view: undefined, failed: undefined });
  const asked = JSON.stringify([topic, facts, positions, place]);
  useEffect(() => {
    if (topic === "") return setState({ view: undefined, failed: undefined });
    let left = false;
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
