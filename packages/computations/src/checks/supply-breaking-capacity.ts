import { DEVICE_STANDARDS, DEVICE_TYPES, FAULT_CURRENT_METHODS, fact, TERM } from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { check, concluded } from "../check.ts";
import { greatestFault } from "../circuits/fault-at-board.ts";
import { ownBreakingCapacity } from "../circuits/own-breaking-capacity.ts";
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
    type: asksWord(MATTER.deviceType, DEVICE_TYPES),
    breakingCapacity: asksQuantity(TERM.breakingCapacity, "16.5 kA"),
  },
  gather: ({ supply }) => ({
    faultCurrent: supply.faultCurrent,
    method: supply.faultCurrentMethod,
    measuredHere: fact(ASKED.measuredHere, true, supply.path),
    phases: supply.phases,
    standard: supply.device.standard,
    type: supply.device.type,
    breakingCapacity: supply.device.breakingCapacity,
  }),
  conclude(given, reckon) {
    const capacity = ownBreakingCapacity(given, reckon);
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
        faultCurrent: "17.0 ± 0.4 kA",
        measuredHere: "yes",
        phases: "1",
        standard: "BS 1361",
        breakingCapacity: "16.5 kA",
      },
      verdict: "not-met",
      source: "17 > 16.5",
    },
    {
      name: "type II by its mark",
      given: { faultCurrent: "17 kA", measuredHere: "yes", phases: "1", standard: "BS 1361", type: "II" },
      verdict: "met",
      source: "17 ≤ 33: a type II fuse breaks 33 kA",
    },
    {
      name: "type of fuse not seen",
      given: { faultCurrent: "1.1 kA", measuredHere: "yes", phases: "1", standard: "BS 1361" },
      verdict: "met",
      source: "1.1 ≤ 16.5, what the lesser of the two types breaks",
    },
    {
      name: "standard of the fuse not seen",
      given: { faultCurrent: "1.1 kA", measuredHere: "yes", phases: "1" },
      verdict: "not-known",
      missing: ["breaking-capacity"],
      source: "input missing",
    },
  ],
});
