import { type Fact, fact, factNotKnown, isKnownFact } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import { ASKED } from "../matters.ts";

/** Whether anything is bonded to the main earth: one part that is, is enough; none only where each is said not to be. */
export function mainBonding({ bonding }: Installation["supply"]): Fact<boolean> {
  const joined = bonding.find(({ connected }) => isKnownFact(connected) && connected.word);
  if (joined !== undefined) return fact(ASKED.bonded, true, ["supply", "bonding"], "recorded as connected");
  const none = bonding.length > 0 && bonding.every(({ connected }) => isKnownFact(connected));
  if (none) return fact(ASKED.bonded, false, ["supply", "bonding"], "each is recorded as not connected");
  return factNotKnown(ASKED.bonded, ["supply", "bonding"]);
}
