import type { Path } from "@good-grounds/core";
import { BOND, BOND_READINGS, BONDED_PART } from "../fields/bonding.ts";
import { BOND_CONDUCTOR, EARTHING_CONDUCTOR } from "../fields/conductor.ts";
import { leavesOf } from "../fields/field.ts";
import type { Leaves } from "../fields/leaves.ts";
import { MATTER } from "../fields/matters.ts";
import type { DraftFile } from "../schema/draft.ts";
import type { BondingConductor, EarthingConductor } from "./model.ts";

type SupplyEntry = NonNullable<DraftFile["supply"]>;

export function bondingConductor(
  leaves: Leaves,
  entry: NonNullable<SupplyEntry["bonding"]>[number],
  path: Path,
): BondingConductor {
  return Object.freeze({
    ...leavesOf(BOND_CONDUCTOR, leaves, entry, path),
    ...leavesOf(BONDED_PART, leaves, entry, path),
    ...leavesOf(BOND, leaves, entry, path),
    ...leavesOf(BOND_READINGS, leaves, entry, path),
    path,
    id: entry.id,
    to: entry.to,
  });
}

export function earthingConductor(
  leaves: Leaves,
  entry: SupplyEntry["earthingConductor"],
  path: Path,
): EarthingConductor {
  return Object.freeze({
    ...leavesOf(EARTHING_CONDUCTOR, leaves, entry, path),
    path,
    arrangement: leaves.fact(MATTER.earthingArrangement, entry?.arrangement, [...path, "arrangement"]),
    sheathed: leaves.fact(MATTER.sheathed, entry?.sheathed, [...path, "sheathed"]),
    mechanicallyProtected: leaves.fact(MATTER.mechanicallyProtected, entry?.mechanicallyProtected, [
      ...path,
      "mechanicallyProtected",
    ]),
  });
}
