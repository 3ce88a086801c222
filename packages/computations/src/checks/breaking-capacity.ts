import {
  DEVICE_STANDARDS,
  DEVICE_TYPES,
  FAULT_CURRENT_METHODS,
  factNotKnown,
  isKnown,
  isKnownFact,
  type Judgement,
  notKnown,
  type Reckoner,
  TERM,
} from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { check, concluded } from "../check.ts";
import { faultAtBoard, greatestFault } from "../circuits/fault-at-board.ts";
import { isFedFromUnknown } from "../circuits/fed-from.ts";
import { NO_CONDITIONAL_RATING } from "../circuits/no-conditional-rating.ts";
import { ownBreakingCapacity } from "../circuits/own-breaking-capacity.ts";
import { ASKED, QUESTION } from "../matters.ts";
import { asksQuantity, asksWord, asksYesNo, type Given } from "../need.ts";

const needs = {
  faultCurrent: asksQuantity(TERM.measuredFaultCurrent, "1.1 kA"),
  method: asksWord(MATTER.faultCurrentMethod, FAULT_CURRENT_METHODS),
  measuredHere: asksYesNo(ASKED.measuredHere, "no: measured nearer to the origin"),
  phases: asksWord(MATTER.phases, ["1", "3"], "of the board"),
  standard: asksWord(MATTER.deviceStandard, DEVICE_STANDARDS),
  type: asksWord(MATTER.deviceType, DEVICE_TYPES),
  breakingCapacity: asksQuantity(TERM.breakingCapacity, "6 kA"),
  conditionalRating: asksQuantity(TERM.conditionalRating, "16 kA; leave out where there is none"),
  namedStandard: asksWord(MATTER.deviceStandard, DEVICE_STANDARDS, "device the conditional rating names"),
  namedRated: asksQuantity(TERM.ratedCurrent, "rating the conditional rating names, 100 A"),
  upstreamStandard: asksWord(MATTER.deviceStandard, DEVICE_STANDARDS, "device that is really ahead"),
  upstreamRated: asksQuantity(TERM.ratedCurrent, "rating that is really ahead, 100 A"),
  oneMake: asksYesNo(MATTER.oneMake),
};

/** What stands ahead of a board of which nobody recorded whence it is fed. */
const NO_DEVICE_AHEAD = Object.freeze({
  standard: factNotKnown(MATTER.deviceStandard, ["fedFrom"]),
  rated: notKnown(TERM.ratedCurrent, ["fedFrom"]),
});

/**
 * Whether a device can break the prospective fault current at its board, as a band: by its own breaking capacity Icn,
 * or by the conditional rating of the assembly, which holds only behind the named device and for devices of the
 * assembly maker's range (434.5.1, 536). Currents in A. On three phases the recorded value is raised by how it was
 * measured; a value measured nearer to the origin is an upper limit.
 */
export const breakingCapacity = check({
  id: "breaking-capacity",
  scope: "circuit",
  title: "Device can break the fault current",
  formula: "Ipf ≤ Icn, or Ipf ≤ Icc behind the named device",
  regulations: ["434.5.1", "536.4.203"],
  needs,
  gather(circuit, installation) {
    const { board, device } = circuit;
    const rating = board.conditionalRating;
    const ahead = isFedFromUnknown(board) ? NO_DEVICE_AHEAD : (board.feeder?.device ?? installation.supply.device);
    return {
      ...faultAtBoard(board, installation),
      phases: isKnownFact(board.phases) ? board.phases : installation.supply.phases,
      standard: device.standard,
      type: device.type,
      breakingCapacity: device.breakingCapacity,
      conditionalRating: rating?.value ?? NO_CONDITIONAL_RATING.conditionalRating,
      namedStandard: rating?.upstreamStandard ?? NO_CONDITIONAL_RATING.namedStandard,
      namedRated: rating?.upstreamRated ?? NO_CONDITIONAL_RATING.namedRated,
      upstreamStandard: ahead.standard,
      upstreamRated: ahead.rated,
      oneMake: rating?.devicesOfOneMake ?? NO_CONDITIONAL_RATING.oneMake,
    };
  },
  conclude(given, reckon) {
    const fault = greatestFault(given, reckon);
    const own = reckon.atMost(QUESTION.faultWithinDevice, fault, ownBreakingCapacity(given, reckon));
    if (!isKnown(given.conditionalRating)) return concluded(own, [], [], [reckon.any(QUESTION.faultWithinRating, own)]);
    const rating = reckon.atMost(QUESTION.faultWithinAssembly, fault, given.conditionalRating);
    const assembly = reckon.all(
      QUESTION.faultWithinAssembly,
      rating,
      aheadAsNamed(given, reckon),
      reckon.byWord(QUESTION.oneMakeAssembly, given.oneMake, (one) => (one ? "met" : "not-met")),
    );
    return concluded(
      reckon.any(QUESTION.breaksFault, own, assembly),
      [],
      [],
      [reckon.any(QUESTION.faultWithinRating, own, rating)],
    );
  },
  examples: [
    {
      name: "1.1 kA and 6 kA",
      given: {
        faultCurrent: "1.1 kA",
        measuredHere: "yes",
        phases: "1",
        standard: "BS EN 61009",
        breakingCapacity: "6 kA",
      },
      verdict: "met",
      source: "1.1 ≤ 6",
    },
    {
      name: "2.3 kA on a 1 kA carrier",
      given: {
        faultCurrent: "2.3 kA",
        measuredHere: "yes",
        phases: "1",
        standard: "BS 3036",
        breakingCapacity: "1 kA",
      },
      verdict: "not-met",
      source: "2.3 > 1; BS 7671 434.5.1",
    },
    {
      name: "low loop reading: a band across the limit",
      given: {
        faultCurrent: "2.9 kA to 11.5 kA",
        measuredHere: "yes",
        phases: "1",
        standard: "BS EN 60898",
        breakingCapacity: "6 kA",
      },
      verdict: "too-near",
      source: "0.05 Ω ± 0.03 Ω: 230/0.08 to 230/0.02",
    },
    {
      name: "three-phase, line to neutral reading doubled",
      given: {
        faultCurrent: "3.5 kA",
        method: "line-neutral",
        measuredHere: "yes",
        phases: "3",
        standard: "BS EN 60898",
        breakingCapacity: "6 kA",
      },
      verdict: "not-met",
      values: { "three-phase-fault-current": { value: 7000, within: 1e-6 } },
      source: "2 × 3.5 = 7 > 6",
    },
    {
      name: "saved by the conditional rating",
      given: {
        faultCurrent: "8 kA",
        measuredHere: "yes",
        phases: "1",
        standard: "BS EN 60898",
        breakingCapacity: "6 kA",
        conditionalRating: "16 kA",
        namedStandard: "BS 1361",
        namedRated: "100 A",
        upstreamStandard: "BS 1361",
        upstreamRated: "80 A",
        oneMake: "yes",
      },
      verdict: "met",
      source: "8 ≤ 16 behind the named fuse",
    },
    {
      name: "mixed makes void it",
      given: {
        faultCurrent: "8 kA",
        measuredHere: "yes",
        phases: "1",
        standard: "BS EN 60898",
        breakingCapacity: "6 kA",
        conditionalRating: "16 kA",
        namedStandard: "BS 1361",
        namedRated: "100 A",
        upstreamStandard: "BS 1361",
        upstreamRated: "100 A",
        oneMake: "no",
      },
      verdict: "not-met",
      source: "BS 7671 536.4.203",
    },
    {
      name: "fuse of which neither type nor capacity was seen",
      given: { faultCurrent: "0.6 kA", measuredHere: "yes", phases: "1", standard: "BS 1361" },
      verdict: "met",
      values: { "breaking-capacity": { value: 16500, within: 1e-9 } },
      source: "0.6 ≤ 16.5: type I breaks 16.5 kA, type II 33 kA",
    },
    {
      name: "the same where the type would decide",
      given: { faultCurrent: "20 kA", measuredHere: "yes", phases: "1", standard: "BS 1361" },
      verdict: "too-near",
      source: "20 lies between 16.5 (type I) and 33 (type II)",
    },
    {
      name: "capacity not legible",
      given: { faultCurrent: "1.1 kA", measuredHere: "yes", phases: "1", standard: "BS EN 60898" },
      verdict: "not-known",
      missing: ["breaking-capacity"],
      source: "input missing",
    },
  ],
});

type GivenHere = Given<typeof needs>;

/** The device ahead is of the named standard, and rated no higher than the named one. */
function aheadAsNamed(given: GivenHere, reckon: Reckoner): Judgement {
  const { namedStandard, upstreamStandard, namedRated, upstreamRated } = given;
  const verdict =
    isKnownFact(namedStandard) && isKnownFact(upstreamStandard)
      ? namedStandard.word === upstreamStandard.word
        ? "met"
        : "not-met"
      : "not-known";
  return reckon.all(
    QUESTION.upstreamAsRated,
    reckon.settled(QUESTION.upstreamAsRated, verdict, "standard of the device ahead", namedStandard, upstreamStandard),
    reckon.atMost(QUESTION.upstreamAsRated, upstreamRated, namedRated),
  );
}
