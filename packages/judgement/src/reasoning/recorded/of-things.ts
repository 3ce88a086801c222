import type {
  Board,
  BondingConductor,
  Cable,
  Circuit,
  Installation,
  ResidualDevice,
  Supply,
  Thing,
  ThingKind,
} from "@good-grounds/inspection";
import type { SpokenOf } from "../spoken-of/index.ts";
import type { Leaf } from "./property.ts";

/** A leaf of the supply, which every observation of an inspection may lean on. */
export function ofSupply<T>({ installation }: SpokenOf, leaf: (supply: Supply) => T): readonly Leaf<T>[] {
  return [[installation.supply.path, leaf(installation.supply)]];
}

/** A leaf of the place as a whole: its use, nation and tenure. */
export function ofPremises<T>({ installation }: SpokenOf, leaf: (installation: Installation) => T): readonly Leaf<T>[] {
  return [[["brief"], leaf(installation)]];
}

/** A leaf of the board spoken of, also where one of its circuits is; none where no board is. */
export function ofBoard<T>({ board }: SpokenOf, leaf: (board: Board) => T): readonly Leaf<T>[] {
  return board === undefined ? [] : [[board.path, leaf(board)]];
}

/** A leaf of the circuit spoken of; none where no circuit is. */
export function ofCircuit<T>({ circuit }: SpokenOf, leaf: (circuit: Circuit) => T): readonly Leaf<T>[] {
  return circuit === undefined ? [] : [[circuit.path, leaf(circuit)]];
}

/** A leaf of each length of conductors that is named, else of the cable of the circuit spoken of. */
export function ofCable<T>(
  spoken: SpokenOf,
  ofSection: (section: Thing<"sections">["state"]) => T,
  ofItsCircuit: (cable: Cable) => T,
): readonly Leaf<T>[] {
  const named = ofThings(spoken, "sections", ofSection);
  return named.length > 0 ? named : ofCircuit(spoken, ({ cable }) => ofItsCircuit(cable));
}

/** A leaf of each RCD that may be meant. */
export function ofRcds<T>({ rcds }: SpokenOf, leaf: (rcd: ResidualDevice) => T): readonly Leaf<T>[] {
  return rcds.map((rcd) => [rcd.path, leaf(rcd)]);
}

/** A leaf of each bonding conductor that may be meant. */
export function ofBonds<T>({ bonds }: SpokenOf, leaf: (bond: BondingConductor) => T): readonly Leaf<T>[] {
  return bonds.map((bond) => [bond.path, leaf(bond)]);
}

/** A leaf of each thing of a kind that is spoken of. */
export function ofThings<K extends ThingKind, T>(
  { things }: SpokenOf,
  kind: K,
  leaf: (state: Thing<K>["state"]) => T,
): readonly Leaf<T>[] {
  return things.filter((thing): thing is Thing<K> => thing.kind === kind).map(({ path, state }) => [path, leaf(state)]);
}
