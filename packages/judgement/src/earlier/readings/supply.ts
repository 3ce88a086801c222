import { isKnownFact, type Reckoner, type ReadingChange } from "@good-grounds/core";
import type { BondingConductor } from "@good-grounds/inspection";
import { differenceOf, ratioOf } from "./change.ts";
import { isAbsent, type Job } from "./circuit.ts";
import { asRead, at20 } from "./normalise.ts";

/**
 * How far ln of the resistance of an electrode moves with the season: moisture and frost change it by a quarter or so.
 * Common practice; a standard deviation.
 */
export const ELECTRODE_MOVES = 0.25;

/** Readings at the origin beside their earlier selves. On TT the loop runs through the electrode and moves with it. */
export function supplyChanges(then: Job, now: Job, level: number, reckon: Reckoner): readonly ReadingChange[] {
  const [a, b] = [then.installation.supply, now.installation.supply];
  const changes: ReadingChange[] = [];
  const throughEarth = [a.earthing, b.earthing].some((system) => isKnownFact(system) && system.word === "TT");
  for (const reading of ["ze", "lineNeutralLoop", "ra"] as const) {
    if (isAbsent(a[reading]) && isAbsent(b[reading])) continue;
    const [before, after] = [asRead(a[reading], then.doubt), asRead(b[reading], now.doubt)];
    const named = { reading, about: "" };
    const season = reading === "ra" || (reading === "ze" && throughEarth);
    changes.push(season ? ratioOf(named, before, after, ELECTRODE_MOVES, level) : differenceOf(named, before, after, level));
  }
  const temperatures = [then, now].map(({ installation }) => installation.conductorTemperature);
  for (const [one, other] of bonds(a.bonding, b.bonding)) {
    if (isAbsent(one.resistance) && isAbsent(other.resistance)) continue;
    const named = { reading: "bonding" as const, about: other.to };
    const [ta, tb] = temperatures as [(typeof temperatures)[number], (typeof temperatures)[number]];
    changes.push(differenceOf(named, at20(one.resistance, ta!, then.doubt, reckon), at20(other.resistance, tb!, now.doubt, reckon), level));
  }
  return changes;
}

/** Bonding conductors that are the only one to a part of their kind on both sides. */
function bonds(before: readonly BondingConductor[], after: readonly BondingConductor[]) {
  const only = (list: readonly BondingConductor[], to: string) => {
    const found = list.filter((bond) => bond.to === to);
    return found.length === 1 && to !== "other" ? found[0] : undefined;
  };
  return after.flatMap((bond) => {
    const [one, other] = [only(before, bond.to), only(after, bond.to)];
    return one === undefined || other === undefined ? [] : [[one, other] as const];
  });
}
