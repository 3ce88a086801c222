/** Stands in for fast-check in `npm run nightly`: the same, but properties are tried on many more examples, with its seed. */
import * as original from "fast-check";
import { seedOfRun, timesAsMany } from "./seed.ts";

/** Examples of a property that does not say how many: what fast-check takes by itself. */
const USUAL = 100;

function more<T>(parameters: original.Parameters<T> = {}): original.Parameters<T> {
  const { numRuns = USUAL } = parameters;
  return { ...parameters, numRuns: numRuns * timesAsMany(), seed: seedOfRun() };
}

export const assert: typeof original.assert = ((property: never, parameters?: original.Parameters<unknown>) =>
  original.assert(property, more(parameters))) as typeof original.assert;

export * from "fast-check";
export default { ...original.default, assert };
