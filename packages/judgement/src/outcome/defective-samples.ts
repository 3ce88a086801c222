import type { OpenPoint } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import { isAnswer } from "./is-answer.ts";

/** How an observation names the parts found defective in a sample under `answers`. */
const SAMPLE = "defective-sample";

/**
 * Samples in which something was found defective and of which no observation speaks. An observation speaks of a sample by
 * naming `defective-sample` under `answers`, with the number of the sample as its part where there are several.
 */
export function defectiveSamples({ sampling, observations }: Installation): readonly OpenPoint[] {
  const named = observations
    .filter((observation) => isAnswer(observation, true))
    .flatMap(({ answers = [] }) => answers.filter(({ check }) => check === SAMPLE));
  return sampling.flatMap(({ what, defective, inspected }, i) =>
    defective === 0 || named.some(({ part }) => part === undefined || part === String(i + 1))
      ? []
      : [{ kind: SAMPLE, what, defective, inspected, places: [["extent", "sampling", i]] } as const],
  );
}
