import { isKnown, isKnownFact, type Misfit } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import { currentMisfit, type Pair } from "./fault-current-misfit.ts";

/** Fault currents against the loops they should come from: I·Z is the voltage. */
export function currentMisfits({ supply, boards }: Installation): readonly (Misfit | undefined)[] {
  const tt = isKnownFact(supply.earthing) && supply.earthing.word === "TT";
  const none = supply.faultCurrentMethod;
  const pairs: Pair[] = [
    {
      path: supply.path,
      title: "Prospective fault current and line to neutral loop at the origin do not agree",
      current: supply.faultCurrent,
      loop: supply.lineNeutralLoop,
      loopName: "Z(L-N)",
      oneSided: false,
      method: none,
    },
    {
      path: supply.path,
      title: "Prospective earth fault current and Ze do not agree",
      current: supply.earthFaultCurrent,
      loop: supply.ze,
      loopName: "Ze",
      // Bonding takes part where the earthing conductor was on for the one and off for the other.
      oneSided: true,
      method: none,
    },
    ...(isKnown(supply.lineNeutralLoop) || tt
      ? []
      : [
          {
            path: supply.path,
            title: "Prospective fault current at the origin is lower than Ze gives",
            current: supply.faultCurrent,
            loop: supply.ze,
            loopName: "Ze",
            oneSided: true,
            method: none,
          },
        ]),
    ...(tt
      ? []
      : boards.map(
          (board): Pair => ({
            path: board.path,
            title: `${board.name}: prospective fault current is lower than Zdb gives`,
            current: board.faultCurrent,
            loop: board.zdb,
            loopName: "Zdb",
            oneSided: true,
            method: board.faultCurrentMethod,
          }),
        )),
  ];
  return pairs.map((pair) => currentMisfit(pair, supply));
}
