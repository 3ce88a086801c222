import { byKey } from "../by-key.ts";
import { BASIC_PROTECTION } from "./basic-protection.ts";
import { CABLES } from "./cables.ts";
import { DISCONNECTION } from "./disconnection.ts";
import { EARTHING_BONDING_ISOLATION } from "./earthing-bonding-isolation.ts";
import { FIRE_SURGE_ARC } from "./fire-surge-arc.ts";
import { NOTICES } from "./notices.ts";
import { OVERCURRENT } from "./overcurrent.ts";
import { PERIODIC_INSPECTION } from "./periodic-inspection.ts";
import type { Regulation } from "./regulation.ts";
import { RESIDUAL_CURRENT } from "./residual-current.ts";
import { TESTING } from "./testing.ts";

export type { Regulation, RegulationGroup } from "./regulation.ts";
export { REGULATION_GROUPS } from "./regulation.ts";

/** Every regulation carried here, group by group. */
export const REGULATIONS: readonly Regulation[] = Object.freeze([
  ...DISCONNECTION,
  ...RESIDUAL_CURRENT,
  ...OVERCURRENT,
  ...FIRE_SURGE_ARC,
  ...EARTHING_BONDING_ISOLATION,
  ...CABLES,
  ...BASIC_PROTECTION,
  ...NOTICES,
  ...TESTING,
  ...PERIODIC_INSPECTION,
]);

const BY_ID = byKey(REGULATIONS.map((one) => [one.id, one] as const));

/** The regulation with this number; undefined where it is not carried here. */
export function regulation(id: string): Regulation | undefined {
  return BY_ID.get(id);
}
