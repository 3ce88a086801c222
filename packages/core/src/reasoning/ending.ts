import type { Classification } from "../vocabulary/premises.ts";
import type { Severity } from "./subject.ts";

/**
 * How a line of reasoning ends. `settled`: one severity is possible. `open`: several are, and something can be asked that
 * tells. The rest cannot be settled within the agreed extent: `at-least`, danger is certain and only how much is not;
 * `not-ruled-out`, danger is possible and so is something less; `no-danger`, nothing dangerous either way, C3 or none.
 * `contradicted`: what was stated cannot all be true, and has to be settled before anything else.
 */
export type Ending = "settled" | "open" | "at-least" | "not-ruled-out" | "no-danger" | "contradicted";

/** The ending where these severities are possible, from least to most. */
export function endingOf(possible: readonly Severity[], canAsk: boolean, isContradicted: boolean): Ending {
  if (isContradicted) return "contradicted";
  if (possible.length === 1) return "settled";
  if (canAsk) return "open";
  if (possible[0] === "C2") return "at-least";
  return possible.includes("C1") || possible.includes("C2") ? "not-ruled-out" : "no-danger";
}

/**
 * The classification that follows; null where none does. FI is for danger that is possible: without any, C3 and none stand
 * side by side and either may be chosen. While statements contradict each other nothing less than danger follows.
 */
export function classificationOf([least]: readonly Severity[], ending: Ending): Classification | null {
  switch (ending) {
    case "settled":
    case "at-least":
      return least ?? null;
    case "not-ruled-out":
      return "FI";
    case "contradicted":
      return least === "C2" || least === "C1" ? least : null;
    default:
      return null;
  }
}
