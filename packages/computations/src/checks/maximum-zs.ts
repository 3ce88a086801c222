import {
  assumed,
  CPC_ARRANGEMENTS,
  DEVICE_STANDARDS,
  DEVICE_TYPES,
  EARTHING_SYSTEMS,
  type Evidence,
  INSULATIONS,
  isKnown,
  isKnownFact,
  type Judgement,
  type Reckoner,
  type Remark,
  TERM,
} from "@good-grounds/core";
import { type Circuit, MATTER } from "@good-grounds/inspection";
import { operatingLoop } from "@good-grounds/measurement";
import { cMin, permittedTouchVoltage, thumbFactor } from "@good-grounds/tables";
import { check, concluded } from "../check.ts";
import { operatingCurrentWithin, permittedTime } from "../circuits/device-figures.ts";
import { asSections, feedersNeeds, feedersOf } from "../circuits/feeders.ts";
import { rcdWorks, whyNotCounted } from "../circuits/rcd-test.ts";
import { asAnswers, devicesOf, residualNeeds, residualsBefore } from "../circuits/residual-devices.ts";
import { standsUnderTable411 } from "../circuits/table-411-scope.ts";
import { ASKED, QUESTION } from "../matters.ts";
import { asksQuantity, asksWord, asksYesNo, type Given } from "../need.ts";

const needs = {
  system: asksWord(MATTER.earthingSystem, EARTHING_SYSTEMS),
  nominalVoltage: asksQuantity(TERM.nominalVoltage, "230 V"),
  underTable411: asksYesNo(ASKED.underTable411),
  standard: asksWord(MATTER.deviceStandard, DEVICE_STANDARDS),
  type: asksWord(MATTER.deviceType, DEVICE_TYPES),
  rated: asksQuantity(TERM.ratedCurrent, "32 A"),
  ...residualNeeds,
  zs: asksQuantity(TERM.measuredZs, "1.20 Ω"),
  zdb: asksQuantity(TERM.measuredZdb, "0.35 Ω"),
  r1r2: asksQuantity(TERM.measuredR1R2, "0.40 Ω"),
  temperature: asksQuantity(TERM.testTemperature, "12 °C"),
  insulation: asksWord(MATTER.insulation, INSULATIONS),
  cpcArrangement: asksWord(MATTER.cpcArrangement, CPC_ARRANGEMENTS),
  ...feedersNeeds,
};

type GivenHere = Given<typeof needs>;

const TT_BEHIND_RCD = {
  system: "TT",
  nominalVoltage: "230 V",
  underTable411: "yes",
  standard: "BS EN 61009",
  type: "B",
  rated: "32 A",
  rcd: "yes",
  residual: "30 mA",
} as const;

/**
 * Disconnection in time: the measured earth fault loop impedance, raised to operating temperature, against the limit
 * of the overcurrent device, Zs,max = U0·Cmin ÷ Ia (411.4.4); or an RCD that was found to work, Zs·IΔn ≤ 50 V (411.4.9,
 * 411.5.3). Of several RCDs in series one is enough, and whether it is delayed does not matter here.
 *
 * Zs in Ω as read at the furthest point; R1+R2 in Ω at the test temperature θ in °C. The circuit's own part of
 * the loop is raised, and so is that of every circuit that feeds its board: Zs,hot = Zs + Σ (R1+R2)·(F/Ft − 1). Where an
 * R1+R2 was not recorded, the difference of the loops at its ends stands for it, and without that the band from nothing
 * to the whole loop. The rule of thumb (reading as measured, 0.8 of the limit) is
 * shown beside the exact comparison and never decides.
 */
export const maximumZs = check({
  id: "maximum-zs",
  scope: "circuit",
  title: "Earth fault loop impedance within its limit",
  formula: "Zs + Σ (R1+R2)·(F/Ft − 1) ≤ U0·Cmin ÷ Ia, or Zs·IΔn ≤ 50 V with an RCD that works",
  regulations: ["411.3.2", "411.4.4", "411.5.3"],
  needs,
  gather(circuit, installation) {
    return {
      system: installation.supply.earthing,
      nominalVoltage: installation.supply.nominalVoltage,
      underTable411: standsUnderTable411(circuit, installation),
      standard: circuit.device.standard,
      type: circuit.device.type,
      rated: circuit.device.rated,
      ...disconnecting(circuit),
      zs: circuit.readings.zs,
      zdb: circuit.board.zdb,
      r1r2: circuit.readings.r1r2,
      temperature: circuit.readings.temperature,
      insulation: circuit.cable.insulation,
      cpcArrangement: circuit.cable.cpcArrangement,
      ...feedersOf(circuit, installation),
    };
  },
  conclude(given, reckon) {
    const overcurrent = byOvercurrent(given, reckon);
    const residual = byResidual(given, reckon);
    const judgement = reckon.any(QUESTION.disconnection, overcurrent.judgement, residual);
    const remarks = [
      ...overcurrent.remarks,
      ...restsOnRcd(overcurrent.judgement, residual),
      ...notCounted(judgement, given, reckon),
      ...temperatureMissing(given),
    ];
    // Whether the fuse or breaker disconnects and whether the RCD does are told apart: neither speaks for the other.
    return concluded(judgement, overcurrent.beside, remarks, [overcurrent.judgement, aloneOf(residual, given, reckon)]);
  },
  examples: [
    {
      name: "0.8 rule objects, exact comparison complies",
      given: {
        system: "TN-S",
        nominalVoltage: "230 V",
        underTable411: "yes",
        standard: "BS EN 60898",
        type: "B",
        rated: "32 A",
        rcd: "no",
        zs: "1.20 Ω",
        r1r2: "0.40 Ω",
        temperature: "20 °C",
        insulation: "70C-thermoplastic",
        cpcArrangement: "in-cable",
      },
      verdict: "met",
      values: {
        "operating-zs": { value: 1.28, within: 1e-9 },
        "permitted-zs": { value: 218.5 / 160, within: 1e-9 },
        "thumb-zs": { value: (0.8 * 218.5) / 160, within: 1e-9 },
      },
      source: "arithmetic: 0.80 + 0.40 × 1.20 = 1.28 against 230 × 0.95 ÷ 160 = 1.366",
    },
    {
      name: "0.8 rule agrees, exact comparison does not comply",
      given: {
        system: "TN-C-S",
        nominalVoltage: "230 V",
        underTable411: "yes",
        standard: "BS EN 60898",
        type: "B",
        rated: "32 A",
        rcd: "no",
        zs: "1.08 Ω",
        r1r2: "1.06 Ω",
        temperature: "5 °C",
        insulation: "70C-thermoplastic",
        cpcArrangement: "in-cable",
      },
      verdict: "not-met",
      values: { "operating-zs": { value: 0.02 + (1.06 * 1.2) / 0.94, within: 1e-9 } },
      source: "arithmetic: 0.02 + 1.06 × 1.20 ÷ 0.94 = 1.373 against 1.366",
    },
    {
      name: "TT circuit disconnected by its RCD",
      given: { ...TT_BEHIND_RCD, rcdTest: "in-time", zs: "74.11 Ω" },
      verdict: "met",
      values: { "touch-voltage": { value: 74.11 * 0.03, within: 1e-9 } },
      source: "arithmetic: 74.11 × 0.030 = 2.22 V",
    },
    {
      name: "TT circuit whose RCD opens too late",
      given: { ...TT_BEHIND_RCD, rcdTest: "too-slow", zs: "74.11 Ω" },
      verdict: "not-met",
      source: "nothing disconnects in time: 74.11 Ω is more than 218.5 ÷ 160 = 1.366 Ω, and the RCD failed its test",
    },
    {
      name: "TT circuit whose RCD is dead",
      given: { ...TT_BEHIND_RCD, rcdTest: "does-not-operate", zs: "91 Ω" },
      verdict: "not-met",
      source: "nothing disconnects: 91 Ω is more than 218.5 ÷ 160 = 1.366 Ω, and the RCD failed its test",
    },
    {
      name: "TT circuit whose RCD was not tested",
      given: { ...TT_BEHIND_RCD, zs: "74.11 Ω" },
      verdict: "not-known",
      missing: ["rcd-tested"],
      source: "disconnection rests on the RCD, and nothing shows that it works",
    },
    {
      name: "dead RCD at the circuit, a working one ahead of it",
      given: {
        ...TT_BEHIND_RCD,
        residual: ["30 mA", "100 mA"],
        rcdTest: ["does-not-operate", "in-time"],
        zs: "74.11 Ω",
      },
      verdict: "met",
      values: { "touch-voltage": { value: 7.411, within: 1e-9 } },
      source: "arithmetic: 74.11 × 0.100 = 7.41 V",
    },
    {
      name: "low loop, the RCD not tested: the breaker disconnects by itself",
      given: {
        ...TT_BEHIND_RCD,
        system: "TN-S",
        zs: "0.60 Ω",
        r1r2: "0.40 Ω",
        temperature: "20 °C",
        insulation: "70C-thermoplastic",
        cpcArrangement: "in-cable",
      },
      verdict: "met",
      source: "arithmetic: 0.20 + 0.40 × 1.20 = 0.68 against 230 × 0.95 ÷ 160 = 1.366",
    },
    {
      name: "no reading and no RCD leaves it open",
      given: {
        system: "TN-S",
        nominalVoltage: "230 V",
        underTable411: "yes",
        standard: "BS 3036",
        rated: "30 A",
        rcd: "no",
      },
      verdict: "not-known",
      missing: ["measured-zs"],
      source: "an input that is missing leaves the comparison open",
    },
  ],
});

function byOvercurrent(
  given: GivenHere,
  reckon: Reckoner,
): { judgement: Judgement; beside: readonly Judgement[]; remarks: readonly Remark[] } {
  const hot = hotLoop(given, reckon);
  const strict = against(given, hot, "final-41.1", reckon);
  if (isKnownFact(given.underTable411)) {
    return given.underTable411.word ? strict : against(given, hot, "other", reckon);
  }
  // The scope is not known: what holds for the stricter time holds for both, what fails the longer time fails both.
  if (strict.judgement.verdict === "met") return strict;
  const lenient = against(given, hot, "other", reckon);
  if (lenient.judgement.verdict === "not-met") return lenient;
  const judgement = reckon.settled(
    QUESTION.overcurrentDisconnects,
    "not-known",
    "the permitted time depends on the scope of Table 41.1",
    given.underTable411,
    strict.judgement,
    lenient.judgement,
  );
  return { judgement, beside: [], remarks: [] };
}

/** The circuit itself, then what feeds its board: each heats with its own load. */
function hotLoop(given: GivenHere, reckon: Reckoner): Evidence<"ohm"> {
  const { zs, zdb, r1r2, temperature, insulation, cpcArrangement } = given;
  const own = { r1r2, from: zdb, temperature, insulation, cpcArrangement };
  return operatingLoop({ zs, sections: [own, ...asSections(given)] }, reckon);
}

function against(given: GivenHere, hot: Evidence<"ohm">, circuit: "final-41.1" | "other", reckon: Reckoner) {
  const time = permittedTime(given.system, given.nominalVoltage, circuit, reckon);
  const trips = operatingCurrentWithin(given, time, reckon);
  const loopVoltage = reckon.product(TERM.loopVoltage, given.nominalVoltage, cMin);
  const limit = reckon.quotient(TERM.permittedZs, loopVoltage, trips);
  const judgement = reckon.atMost(QUESTION.overcurrentDisconnects, hot, limit);
  const beside = reckon.beside(() => [
    reckon.atMost(QUESTION.thumbRule, given.zs, reckon.product(TERM.thumbZs, limit, thumbFactor)),
  ]);
  return { judgement, beside, remarks: [] };
}

/** RCDs by what matters for disconnection. */
function disconnecting(circuit: Circuit) {
  const { rcd, residual, rcdTest } = asAnswers(residualsBefore(circuit));
  return { rcd, residual, rcdTest };
}

function byResidual(given: GivenHere, reckon: Reckoner): Judgement {
  const { rcd, zs } = given;
  if (!isKnownFact(rcd)) return reckon.settled(QUESTION.residualDisconnects, "not-known", "", rcd);
  if (!rcd.word) return reckon.settled(QUESTION.residualDisconnects, "not-applicable", "no RCD", rcd);
  const parts = devicesOf(given).map(({ residual, test }) =>
    reckon.all(
      QUESTION.residualDisconnects,
      reckon.atMost(QUESTION.touchVoltage, reckon.product(TERM.touchVoltage, zs, residual), permittedTouchVoltage),
      rcdWorks(test, reckon),
    ),
  );
  const [only] = parts;
  return only !== undefined && parts.length === 1 ? only : reckon.any(QUESTION.residualDisconnects, ...parts);
}

/** For a fact that asks whether an RCD disconnects: where there is none, none does. */
function aloneOf(residual: Judgement, { rcd }: GivenHere, reckon: Reckoner): Judgement {
  if (residual.verdict !== "not-applicable") return residual;
  return reckon.settled(QUESTION.residualDisconnects, "not-met", "no RCD", rcd);
}

function restsOnRcd(overcurrent: Judgement, residual: Judgement): readonly Remark[] {
  if (overcurrent.verdict === "met" || residual.verdict !== "met") return [];
  return [REMARK_RCD];
}

/** Where nothing disconnects, the reader is told what became of the RCD that is there. */
function notCounted({ verdict }: Judgement, given: GivenHere, reckon: Reckoner): readonly Remark[] {
  const { rcd } = given;
  if (verdict === "met" || !isKnownFact(rcd) || !rcd.word) return [];
  const tests = devicesOf(given).map(({ test }) => test);
  return [whyNotCounted(tests, reckon) ?? []].flat();
}

function temperatureMissing({ temperature, zs }: GivenHere): readonly Remark[] {
  return isKnown(zs) && !isKnown(temperature) ? [REMARK_TEMPERATURE] : [];
}

const REMARK_RCD: Remark = Object.freeze({
  code: "rests-on-rcd",
  words:
    "The RCD alone disconnects in time; the overcurrent device is not shown to. On a TN system, find out whether the loop was designed so or has worsened.",
});

const REMARK_TEMPERATURE: Remark = Object.freeze({
  code: "temperature-not-recorded",
  words: "Conductor temperature during the test was not recorded; the comparison allows for every likely one.",
});
