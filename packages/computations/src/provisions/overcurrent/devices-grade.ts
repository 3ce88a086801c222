import {
  DEVICE_STANDARDS,
  DEVICE_TYPES,
  type DeviceStandard,
  type Evidence,
  type Ground,
  isKnown,
  isKnownFact,
  type Judgement,
  type Reckoner,
  type Remark,
  TERM,
} from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { conventionalCurrents, fuseGradingRatio, instantTrip } from "@good-grounds/tables";
import { concluded } from "../../check.ts";
import { type DeviceMarks, markedDevice, marksOf } from "../../circuits/device-figures.ts";
import { asksQuantity, asksWord, type Given } from "../../need.ts";
import { assessor } from "../assessor.ts";
import { OVERCURRENT } from "./matters.ts";

const needs = {
  aheadStandard: asksWord(OVERCURRENT.aheadStandard, DEVICE_STANDARDS),
  aheadType: asksWord(OVERCURRENT.aheadType, DEVICE_TYPES, "where the standard has several"),
  aheadRated: asksQuantity(TERM.aheadRated, "80 A"),
  standard: asksWord(MATTER.deviceStandard, DEVICE_STANDARDS),
  type: asksWord(MATTER.deviceType, DEVICE_TYPES, "where the standard has several"),
  rated: asksQuantity(TERM.ratedCurrent, "32 A"),
  faultCurrent: asksQuantity(TERM.faultCurrent, "1.2 kA, at the device behind"),
  makersLimit: asksQuantity(
    TERM.selectivityLimit,
    "4.5 kA, by the table for just this pair; leave out where there is none",
  ),
};

type GivenHere = Given<typeof needs>;

/**
 * Selectivity of two overcurrent devices in series (536.4.1): the one behind opens alone. It holds up to the maker's
 * limit for the pair; and without one gG fuses grade from a ratio of ratings of 1.6, and behind a breaker devices grade
 * up to the current at which it begins to trip at once, if in overload it stays closed at what operates the one behind.
 * Currents in A. Where no rule shows it, only the maker's table for the pair can, so it stays open without one: a fuse
 * ahead of a breaker, fuses of other systems, two breakers that both trip at once.
 */
export const devicesGrade = assessor({
  id: "devices-grade",
  provision: "overcurrent-protection",
  title: "Overcurrent devices in series grade",
  formula: "Ipf ≤ Is; fuses: In,1 ≥ 1.6·In,2; breaker ahead: Ipf ≤ Ii,1 and Inf,1 ≥ I2",
  regulations: ["536.4.1"],
  needs,
  conclude(given, reckon) {
    const byTable = reckon.atMost(OVERCURRENT.withinLimit, given.faultCurrent, given.makersLimit);
    const byRule = ruleFor(given, reckon);
    const judgement = byRule === undefined ? byTable : reckon.any(OVERCURRENT.grades, byRule, byTable);
    return concluded(judgement, [], byRule !== undefined && byRule.verdict !== "met" ? [MAKERS_TABLE] : []);
  },
  examples: [
    {
      name: "100 A fuse ahead of a 63 A one, no table",
      given: {
        aheadStandard: "BS 88-2",
        aheadType: "gG",
        aheadRated: "100 A",
        standard: "BS 88-2",
        type: "gG",
        rated: "63 A",
        faultCurrent: "2 kA",
      },
      verdict: "not-known",
      missing: ["selectivity-limit"],
      values: { "rated-ratio": { value: 1.5873, within: 1e-4 } },
      source: "100 ÷ 63 = 1.587 < 1.6",
    },
    {
      name: "100 A fuse ahead of a 50 A one",
      given: {
        aheadStandard: "BS 88-2",
        aheadType: "gG",
        aheadRated: "100 A",
        standard: "BS 88-2",
        type: "gG",
        rated: "50 A",
      },
      verdict: "met",
      source: "100 ÷ 50 = 2",
    },
    {
      name: "the same, the mark of the one ahead not read",
      given: { aheadStandard: "BS 88-2", aheadRated: "100 A", standard: "BS 88-2", type: "gG", rated: "50 A" },
      verdict: "not-known",
      missing: ["ahead-type"],
      source: "the ratio holds for gG fuses, and it may be a motor fuse",
    },
    {
      name: "C63 ahead of B16 at 300 A",
      given: {
        aheadStandard: "BS EN 60898",
        aheadType: "C",
        aheadRated: "63 A",
        standard: "BS EN 60898",
        type: "B",
        rated: "16 A",
        faultCurrent: "300 A",
      },
      verdict: "met",
      values: { "ahead-stays-closed": { value: 71.19, within: 1e-9 } },
      source: "300 A < 5 × 63 = 315 A; 1.13 × 63 = 71.2 A > 1.45 × 16 = 23.2 A",
    },
    {
      name: "the same at 450 A, where the one ahead may trip or not",
      given: {
        aheadStandard: "BS EN 60898",
        aheadType: "C",
        aheadRated: "63 A",
        standard: "BS EN 60898",
        type: "B",
        rated: "16 A",
        faultCurrent: "450 A",
        makersLimit: "430 A to 470 A",
      },
      verdict: "too-near",
      source: "450 A lies between 5 × 63 = 315 A and 10 × 63 = 630 A; by a table that ends at 430 A to 470 A",
    },
    {
      name: "B40 ahead of B32 at 1 kA, by a table that ends at 0.2 kA",
      given: {
        aheadStandard: "BS EN 60898",
        aheadType: "B",
        aheadRated: "40 A",
        standard: "BS EN 60898",
        type: "B",
        rated: "32 A",
        faultCurrent: "1 kA",
        makersLimit: "0.2 kA",
      },
      verdict: "not-met",
      source: "1000 A > 5 × 40 = 200 A: both trip at once; 1 kA > 0.2 kA",
    },
    {
      name: "by the maker's table",
      given: {
        aheadStandard: "BS 88-3",
        aheadRated: "80 A",
        standard: "BS EN 60898",
        type: "B",
        rated: "32 A",
        faultCurrent: "1.6 kA",
        makersLimit: "2.5 kA",
      },
      verdict: "met",
      source: "1.6 kA < 2.5 kA",
    },
    {
      name: "the supplier's fuse ahead of a breaker, no table",
      given: {
        aheadStandard: "BS 1361",
        aheadType: "II",
        aheadRated: "80 A",
        standard: "BS EN 60898",
        type: "B",
        rated: "32 A",
        faultCurrent: "1.6 kA",
      },
      verdict: "not-known",
      missing: ["selectivity-limit"],
      source: "no rule holds for every make",
    },
  ],
});

const BREAKERS: ReadonlySet<DeviceStandard> = new Set(["BS EN 60898", "BS EN 61009", "BS 3871", "BS EN 60947-2"]);
const GG_STANDARDS: ReadonlySet<DeviceStandard> = new Set(["BS 88-2", "BS 88-2.2"]);

/** Whether a device is a gG fuse of the system the ratio holds for, as far as its marks are known; a motor fuse is not. */
function isGg(standard: GivenHere["standard"], type: GivenHere["type"]): boolean | undefined {
  if (!isKnownFact(standard)) return undefined;
  if (!GG_STANDARDS.has(standard.word)) return false;
  return isKnownFact(type) ? type.word === "gG" : undefined;
}

function fusesGrade({ aheadRated, rated }: GivenHere, reckon: Reckoner): Judgement {
  const ratio = reckon.quotient(TERM.ratedRatio, aheadRated, rated);
  return reckon.atLeast(OVERCURRENT.ratioGrades, ratio, fuseGradingRatio);
}

const ahead = ({ aheadStandard, aheadType, aheadRated }: GivenHere) => ({
  standard: aheadStandard,
  type: aheadType,
  rated: aheadRated,
});

/**
 * What can be said without the makers' tables; undefined where it is known that nothing holds for every make. Where the
 * marks do not yet show whether a rule holds, that is open too: neither the rule nor the maker's limit decides alone.
 */
function ruleFor(given: GivenHere, reckon: Reckoner): Judgement | undefined {
  const { aheadStandard, aheadType, standard, type } = given;
  if (!isKnownFact(aheadStandard)) return open(reckon, aheadStandard);
  if (BREAKERS.has(aheadStandard.word))
    return hasFigures(ahead(given)) && hasFigures(given)
      ? reckon.all(OVERCURRENT.byRule, tripHolds(given, reckon), overloadGrades(given, reckon))
      : undefined;
  const [first, second] = [isGg(aheadStandard, aheadType), isGg(standard, type)];
  if (first === false || second === false) return undefined;
  const byRatio = fusesGrade(given, reckon);
  if (byRatio.verdict === "not-met" || (first === true && second === true)) return byRatio;
  const unread = [aheadType, standard, type].filter((mark) => !isKnownFact(mark));
  return open(reckon, ...unread, byRatio);
}

function open(reckon: Reckoner, ...from: readonly Ground[]): Judgement {
  return reckon.settled(
    OVERCURRENT.byRule,
    "not-known",
    "which rule holds goes with the marks of both devices",
    ...from,
  );
}

/** Whether the standards have figures for a device, as far as its marks are known. */
function hasFigures(marks: DeviceMarks): boolean {
  const device = markedDevice(marks);
  return device === undefined || isKnown(conventionalCurrents(device).operating);
}

function tripHolds(given: GivenHere, reckon: Reckoner): Judgement {
  const marks = ahead(given);
  const device = markedDevice(marks);
  const band = device === undefined ? undefined : instantTrip(device);
  const trip: Evidence<"ampere"> =
    band === undefined
      ? reckon.lookedUp(TERM.aheadTrip, undefined, ...marksOf(marks))
      : reckon.oneOf(TERM.aheadTrip, band);
  return reckon.atMost(OVERCURRENT.aheadHolds, given.faultCurrent, trip);
}

function overloadGrades(given: GivenHere, reckon: Reckoner): Judgement {
  const marks = ahead(given);
  const [first, second] = [markedDevice(marks), markedDevice(given)];
  const closed = first === undefined ? undefined : conventionalCurrents(first).nonOperating;
  const operates = second === undefined ? undefined : conventionalCurrents(second).operating;
  return reckon.atLeast(
    OVERCURRENT.overloadGrades,
    reckon.lookedUp(TERM.aheadCloses, closed, ...marksOf(marks)),
    reckon.lookedUp(TERM.operatingCurrent, operates, ...marksOf(given)),
  );
}

const MAKERS_TABLE: Remark = Object.freeze({
  code: "makers-table",
  words: "The maker's table for just this pair may show more, up to a fault current of its own.",
});
