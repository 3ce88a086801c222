import { assumed, type CircuitLoad, type Evidence, type PremisesUse, type Reckoner, TERM } from "@good-grounds/core";
import {
  type Allowance,
  DIVERSITY,
  DIVERSITY_SOURCE,
  type DiversityLoad,
  type DiversityPremises,
} from "@good-grounds/tables";

/** The column of the diversity table for a use of premises. */
export function diversityPremises(use: PremisesUse): DiversityPremises {
  switch (use) {
    case "dwelling":
    case "house-in-multiple-occupation":
      return "household";
    case "hotel":
      return "hotel";
    default:
      return "shop-or-office";
  }
}

/** The row of the diversity table for what a circuit supplies. */
export function diversityLoad(load: CircuitLoad): DiversityLoad {
  switch (load) {
    case "lighting":
    case "alarm":
      return "lighting";
    case "socket-outlets":
    case "mixed":
      return "standard-circuits";
    case "cooker":
      return "cooking";
    case "shower":
      return "instantaneous-water-heaters";
    case "water-heater":
    case "storage-heating":
      return "thermostatic-water-heaters";
    case "motor":
      return "motors";
    // No allowance is printed for vehicle charging or for equipment of unknown kind: each is taken in full.
    case "vehicle-charging":
    case "board":
      return "thermostatic-water-heaters";
    default:
      return "heating-and-power";
  }
}

const part = (value: number, what: string) => assumed(TERM.diversity, value, what, undefined, DIVERSITY_SOURCE);

/** Demand after diversity of the loads of one kind, in A; `loads` are their currents in A, in any order. */
export function afterDiversity(
  kind: DiversityLoad,
  premises: DiversityPremises,
  loads: readonly Evidence<"ampere">[],
  reckon: Reckoner,
  withSocket = false,
): Evidence<"ampere"> {
  const allowance: Allowance = DIVERSITY[kind][premises] ?? { rule: "whole", part: 1 };
  const what = `${kind} in a ${premises}`;
  switch (allowance.rule) {
    case "whole":
      return scaled(reckon.sum(TERM.demandPart, ...loads), allowance.part, what, reckon);
    case "first-then": {
      const all = reckon.sum(TERM.demandPart, ...loads);
      const first = assumed(
        TERM.demandPart,
        allowance.first,
        `the first ${allowance.first} A in full`,
        undefined,
        DIVERSITY_SOURCE,
      );
      const inFull = reckon.smallest(TERM.demandPart, all, first);
      const rest = reckon.largest(TERM.demandPart, NOTHING, reckon.difference(TERM.demandPart, all, first));
      const after = [inFull, scaled(rest, allowance.rest, `${what}, the rest`, reckon)];
      if (withSocket && allowance.socket > 0) {
        after.push(
          assumed(TERM.demandPart, allowance.socket, "socket-outlet on the control unit", undefined, DIVERSITY_SOURCE),
        );
      }
      return reckon.sum(TERM.demandPart, ...after);
    }
    case "ranked": {
      const ordered = [...loads].sort((a, b) => b.value - a.value);
      const parts = ordered.map((load, i) => {
        const share = i === 0 ? allowance.largest : i === 1 ? allowance.second : allowance.rest;
        return share === 1
          ? load
          : scaled(load, share, `${what}, ${i === 1 ? "the second" : "a further"} load`, reckon);
      });
      return reckon.sum(TERM.demandPart, ...parts);
    }
  }
}

const NOTHING = assumed(TERM.demandPart, 0, "not less than nothing");

function scaled(load: Evidence<"ampere">, share: number, what: string, reckon: Reckoner): Evidence<"ampere"> {
  return reckon.product(TERM.demandPart, load, part(share, what));
}
