import type { Judgement, Matter, Reckoner, Verdict } from "@good-grounds/core";

/** What denies a verdict: met and not met change places, what is open stays open. */
function opposite(verdict: Verdict): Verdict {
  if (verdict === "met") return "not-met";
  return verdict === "not-met" ? "met" : verdict;
}

/** The judgement that something is not so, resting on the judgement whether it is. */
export function denied(reckon: Reckoner, about: Matter, judgement: Judgement, why: string): Judgement {
  return reckon.settled(about, opposite(judgement.verdict), why, judgement);
}
