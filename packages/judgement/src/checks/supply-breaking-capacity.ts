import { DEVICE_STANDARDS, FAULT_CURRENT_METHODS, fact, isKnown, isKnownFact, TERM } from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { breakingCapacityOf } from "@good-grounds/tables";
import { check, concluded } from "../check.ts";
import { greatestFault } from "../circuits/fault-at-board.ts";
import { ASKED, QUESTION } from "../matters.ts";
import { asksQuantity, asksWord, asksYesNo } from "../need.ts";

/** Prospective fault current at the origin, as a band in A, against the breaking capacity of the supply device. */
export const supplyBreakingCapacity = check({
  id: "supply-breaking-capacity",
  scope: "supply",
  title: "Supply device can break the fault current",
  formula: "Ipf ≤ Icn",
  regulations: ["434.1", "434.5.1"],
  needs: {
    faultCurrent: asksQuantity(TERM.measuredFaultCurrent, "1.1 kA"),
    method: asksWord(MATTER.faultCurrentMethod, FAULT_CURRENT_METHODS),
    measuredHere: asksYesNo(ASKED.measuredHere),
    phases: asksWord(MATTER.phases, ["1", "3"]),
    standard: asksWord(MATTER.deviceStandard, DEVICE_STANDARDS),
    breakingCapacity: asksQuantity(TERM.breakingCapacity, "16.5 kA"),
  },
  gather: ({ supply }) => ({
    faultCurrent: supply.faultCurrent,
    method: supply.faultCurrentMethod,
    measuredHere: fact(ASKED.measuredHere, true, supply.path),
    phases: supply.phases,
    standard: supply.device.standard,
    breakingCapacity: supply.device.breakingCapacity,
  }),
  conclude(given, reckon) {
    const { breakingCapacity: marked, standard } = given;
    const usual = isKnownFact(standard) ? breakingCapacityOf(standard.word) : undefined;
    const capacity =
      !isKnown(marked) && usual !== undefined && isKnown(usual)
        ? reckon.lookedUp(TERM.breakingCapacity, usual, standard)
        : marked;
    return concluded(reckon.atMost(QUESTION.breaksFault, greatestFault(given, reckon), capacity));
  },
  examples: [
    {
      name: "1.1 kA at a type I fuse",
      given: {
        faultCurrent: "1.1 kA",
        measuredHere: "yes",
        phases: "1",
        standard: "BS 1361",
        breakingCapacity: "16.5 kA",
      },
      verdict: "met",
      source: "1.1 ≤ 16.5",
    },
    {
      name: "beyond it",
      given: {
        faultCurrent: "17 kA",
        measuredHere: "yes",
        phases: "1",
        standard: "BS 1361",
        breakingCapacity: "16.5 kA",
      },
      verdict: "not-met",
      source: "17 > 16.5",
    },
    {
      name: "type of fuse not seen",
      given: { faultCurrent: "1.1 kA", measuredHere: "yes", phases: "1", standard: "BS 1361" },
      verdict: "not-known",
      missing: ["breaking-capacity"],
      source: "BS 1361 has two types",
    },
  ],
});
