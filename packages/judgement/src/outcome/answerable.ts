import { CHECKS } from "@good-grounds/computations";
import { MISFIT_KINDS } from "@good-grounds/core";
import { SAMPLE } from "./defective-samples.ts";

/** What an observation can name under `answers`: a check, readings that do not agree by their kind, a defective sample. */
export const ANSWERABLE: readonly string[] = [...CHECKS.map(({ id }) => id), ...MISFIT_KINDS, SAMPLE];

/** Whether something can be answered by that name; a sample may be named by its number: `defective-sample-2`. */
export function isAnswerable(name: string): boolean {
  return (
    ANSWERABLE.includes(name) || (name.startsWith(`${SAMPLE}-`) && /^[1-9]\d{0,2}$/.test(name.slice(SAMPLE.length + 1)))
  );
}
