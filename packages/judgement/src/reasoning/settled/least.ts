import { type Compiled, possibleSeverities, type Severity, severitiesOf } from "@good-grounds/core";
import type { Settled } from "./settled.ts";

/** Contradictions whose readings are taken one by one; beyond these both readings stay open together. */
const MOST = 6;

/**
 * The least severity that stands: what is possible at the least where nothing contradicts, else the worst of that over
 * every way of reading the contradictions. A statement that contradicts what is known takes no danger away.
 */
export function leastThatStands(
  { knowledge, readings }: Pick<Settled, "knowledge" | "readings">,
  compiled: Compiled,
): Severity {
  const counted = readings.slice(0, MOST);
  let worst = leastOf(knowledge.masks, compiled);
  for (let way = 0; way < 2 ** counted.length; way += 1) {
    const masks = [...knowledge.masks];
    for (const [i, { variable, stated, known }] of counted.entries())
      masks[variable] = (way & (1 << i)) === 0 ? stated : known;
    worst = Math.max(worst, leastOf(masks, compiled));
  }
  return severitiesOf(1 << worst)[0] ?? "none";
}

/** Number of the least severity that knowledge leaves possible. */
function leastOf(masks: readonly number[], compiled: Compiled): number {
  const leaves = possibleSeverities(compiled, masks);
  return 31 - Math.clz32(leaves & -leaves);
}
