import { type Evidence, isKnownFact, notKnown, type ReadingChange, type Reckoner, TERM } from "@good-grounds/core";
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
export function supplyChanges(past: Job, now: Job, level: number, reckon: Reckoner): readonly ReadingChange[] {
  const [a, b] = [past.installation.supply, now.installation.supply];
  const changes: ReadingChange[] = [];
  const throughEarth = [a.earthing, b.earthing].some((system) => isKnownFact(system) && system.word === "TT");
  for (const reading of ["ze", "lineNeutralLoop", "ra"] as const) {
    if (isAbsent(a[reading]) && isAbsent(b[reading])) continue;
    const [before, after] = [asRead(a[reading], past.doubt), asRead(b[reading], now.doubt)];
    const named = { reading, about: "" };
    const season = reading === "ra" || (reading === "ze" && throughEarth);
    changes.push(
      season ? ratioOf(named, before, after, ELECTRODE_MOVES, level) : differenceOf(named, before, after, level),
    );
  }
  const [coolThen, coolNow] = [temperatureOf(past), temperatureOf(now)];
  for (const [one, other] of bonds(a.bonding, b.bonding)) {
    if (isAbsent(one.resistance) && isAbsent(other.resistance)) continue;
    const named = { reading: "bonding" as const, about: other.to ?? "" };
    const before = at20(one.resistance, coolThen, past.doubt, reckon);
    changes.push(differenceOf(named, before, at20(other.resistance, coolNow, now.doubt, reckon), level));
  }
  return changes;
}

/** The temperature stated for the whole job. */
function temperatureOf({ installation: { circuits } }: Job): Evidence<"celsius"> {
  const unknown = notKnown(TERM.testTemperature, ["conditions", "conductorTemperature"]);
  const leaves = circuits.map(({ readings }) => readings.temperature);
  return leaves.find((leaf) => leaf.kind === "measured" && leaf.detail.path[0] === "conditions") ?? unknown;
}

/** Bonding conductors that are the only one to a part of their kind on both sides. */
function bonds(before: readonly BondingConductor[], after: readonly BondingConductor[]) {
  const only = (list: readonly BondingConductor[], to: string) => {
    const found = list.filter((bond) => bond.to === to);
    return found.length === 1 && to !== "other" ? found[0] : undefined;
  };
  return after.flatMap((bond) => {
    if (bond.to === undefined) return [];
    const [one, other] = [only(before, bond.to), only(after, bond.to)];
    return one === undefined || other === undefined ? [] : [[one, other] as const];
  });
}
