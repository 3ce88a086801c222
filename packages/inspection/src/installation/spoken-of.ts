import type { BondingConductor, Installation, ObservationEntry, ResidualDevice } from "./model.ts";
import type { Thing } from "./things.ts";

/** One thing that an observation speaks of, and how many of those that are alike. */
export type SpokenOf = { readonly quantity: number } & (
  | { readonly kind: "thing"; readonly thing: Thing }
  | { readonly kind: "bond"; readonly bond: BondingConductor }
  | { readonly kind: "rcd"; readonly rcd: ResidualDevice }
);

/**
 * The things an observation speaks of, in its order. An RCD is looked for at the board named beside it, or at the
 * observation's own. What it names and is not there is left out; the parser refuses a finished file that does so.
 */
export function spokenOf({ things = [], board }: ObservationEntry, installation: Installation): readonly SpokenOf[] {
  return things.flatMap(({ thing: id, board: at, quantity = 1 }): readonly SpokenOf[] => {
    const rcd = installation.boards.find((one) => one.id === (at ?? board))?.rcds.find((one) => one.id === id);
    if (rcd !== undefined) return [{ kind: "rcd", rcd, quantity }];
    const thing = installation.things.byId(id);
    if (thing !== undefined) return [{ kind: "thing", thing, quantity }];
    const bond = installation.supply.bonding.find((one) => one.id === id);
    return bond === undefined ? [] : [{ kind: "bond", bond, quantity }];
  });
}
