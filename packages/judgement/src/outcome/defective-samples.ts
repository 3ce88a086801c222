import type { OpenPoint } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import { isAnswer } from "./is-answer.ts";

/** How an observation names the parts found defective in a sample under `answers`. */
export const SAMPLE = "defective-sample";

/**
 * Samples in which something was found defective and of which no observation speaks. An observation speaks of a sample by
 * naming `defective-sample` under `answers`, or of one among several by its number: `defective-sample-2`.
 */
export function defectiveSamples({ sampling, observations }: Installation): readonly OpenPoint[] {
  const named = observations
    .filter((observation) => isAnswer(observation, true))
    .flatMap(({ answers = [] }) => answers.map(({ check }) => check));
  return sampling.flatMap(({ what, defective, inspected }, i) =>
    defective === 0 || named.includes(SAMPLE) || named.includes(`${SAMPLE}-${i + 1}`)
      ? []
      : [{ kind: SAMPLE, what, defective, inspected, places: [["extent", "sampling", i]] } as const],
  );
}
