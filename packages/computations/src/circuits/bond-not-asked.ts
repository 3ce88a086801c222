import { isKnownFact } from "@good-grounds/core";
import type { BondingConductor } from "@good-grounds/inspection";
import { type DoesNotArise, doesNotArise } from "../check.ts";

/**
 * Why no main bonding is asked for here: the part is not extraneous, or there is no such service. A service that is said
 * not to be there while its part is said to be extraneous or joined is a contradiction, and asks.
 */
export function bondNotAsked({ extraneous, connected, service }: BondingConductor): DoesNotArise | undefined {
  if (isKnownFact(extraneous) && !extraneous.word) return doesNotArise("not an extraneous-conductive-part", extraneous);
  if (!isKnownFact(service) || service.word !== "no-such-service") return undefined;
  const saidToBeThere = isKnownFact(extraneous) || (isKnownFact(connected) && connected.word);
  return saidToBeThere ? undefined : doesNotArise("there is no such service", service);
}
