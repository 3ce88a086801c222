import type { BondingConductor, Circuit, ResidualDevice, Supply } from "@good-grounds/inspection";
import type { SpokenOf } from "../spoken-of/index.ts";
import type { Leaf } from "./property.ts";

/** A leaf of the supply, which every observation of an inspection may lean on. */
export function ofSupply<T>({ installation }: SpokenOf, leaf: (supply: Supply) => T): readonly Leaf<T>[] {
  return [[installation.supply.path, leaf(installation.supply)]];
}

/** A leaf of the circuit spoken of; none where no circuit is. */
export function ofCircuit<T>({ circuit }: SpokenOf, leaf: (circuit: Circuit) => T): readonly Leaf<T>[] {
  return circuit === undefined ? [] : [[circuit.path, leaf(circuit)]];
}

/** A leaf of each RCD that may be meant. */
export function ofRcds<T>({ rcds }: SpokenOf, leaf: (rcd: ResidualDevice) => T): readonly Leaf<T>[] {
  return rcds.map((rcd) => [rcd.path, leaf(rcd)]);
}

/** A leaf of each bonding conductor that may be meant. */
export function ofBonds<T>({ bonds }: SpokenOf, leaf: (bond: BondingConductor) => T): readonly Leaf<T>[] {
  return bonds.map((bond) => [bond.path, leaf(bond)]);
}
