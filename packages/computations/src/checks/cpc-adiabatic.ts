import {
  assumed,
  CONDUCTOR_MATERIALS,
  CPC_ARRANGEMENTS,
  DEVICE_STANDARDS,
  DEVICE_TYPES,
  type Evidence,
  fact,
  INSULATIONS,
  isExact,
  isKnown,
  isKnownFact,
  type Judgement,
  type Reckoner,
  TERM,
} from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { cpcBySelection, permittedRcdTime, protectiveConductorK, source } from "@good-grounds/tables";
import { check, concluded, doesNotArise } from "../check.ts";
import { energyByOvercurrent } from "../circuits/energy-let-through.ts";
import { protectiveMaterial } from "../circuits/protective-material.ts";
import { rcdWorks } from "../circuits/rcd-test.ts";
import {
  asAnswers,
  delayNeed,
  devicesOf,
  type ResidualBefore,
  rcdStandardNeed,
  residualNeeds,
  residualsBefore,
} from "../circuits/residual-devices.ts";
import { QUESTION } from "../matters.ts";
import { asksQuantities, asksQuantity, asksWord, type Given } from "../need.ts";

const needs = {
  nominalVoltage: asksQuantity(TERM.nominalVoltage, "230 V"),
  zs: asksQuantity(TERM.measuredZs, "0.49 Ω, at the far end"),
  zdb: asksQuantity(TERM.measuredZdb, "0.21 Ω, at the board"),
  standard: asksWord(MATTER.deviceStandard, DEVICE_STANDARDS),
  type: asksWord(MATTER.deviceType, DEVICE_TYPES),
  rated: asksQuantity(TERM.ratedCurrent, "32 A"),
  breakingCapacity: asksQuantity(TERM.breakingCapacity, "6 kA, as marked"),
  energyClass: asksWord(MATTER.energyClass, ["1", "2", "3"]),
  letThrough: asksQuantity(TERM.letThrough, "13000 A²s, from the maker at this fault current"),
  ...residualNeeds,
  rcdStandard: rcdStandardNeed,
  delay: delayNeed,
  rcdFive: asksQuantities(TERM.rcdTimeFive, "18 ms, where it was taken"),
  line: asksQuantity(TERM.lineArea, "2.5 mm²"),
  cpc: asksQuantity(TERM.cpcArea, "1.5 mm²"),
  material: asksWord(MATTER.material, CONDUCTOR_MATERIALS),
  insulation: asksWord(MATTER.insulation, INSULATIONS),
  cpcArrangement: asksWord(MATTER.cpcArrangement, CPC_ARRANGEMENTS),
};

type GivenHere = Given<typeof needs>;

const DELAYED = {
  nominalVoltage: "230 V",
  zs: "1.20 Ω",
  zdb: "0.80 ± 0.02 Ω",
  standard: "BS EN 60898",
  type: "B",
  rated: "32 A",
  rcd: "yes",
  residual: "100 mA",
  rcdTest: "in-time",
  delay: "S",
  line: "1.5 mm²",
  cpc: "1 mm²",
  material: "copper",
  insulation: "70C-thermoplastic",
  cpcArrangement: "in-cable",
} as const;

const { rcdTest: _, ...UNTESTED } = DELAYED;

const FUSE = {
  nominalVoltage: "230 V",
  zs: "2.50 ± 0.05 Ω",
  zdb: "0.8 Ω",
  standard: "BS 3036",
  rated: "30 A",
  rcd: "yes",
  residual: "30 mA",
  delay: "general",
  line: "4 mm²",
  cpc: "1 mm²",
  material: "copper",
  insulation: "70C-thermoplastic",
  cpcArrangement: "in-cable",
} as const;

/**
 * Whether the protective conductor withstands an earth fault: by selection from the line conductor's size (Table 54.7),
 * or by energy, S ≥ √(I²t)/k (543.1.3). One of them is enough.
 *
 * Energy let through, in A²s. Breakers: once the fault reaches their instant trip they open in less than 0.1 s, and the
 * formula with a time no longer holds; then only the maker's figure at this fault current, or the ceiling of energy
 * limiting class 3 at the marked breaking capacity, is evidence, and the result says which is held. Fuses: their known
 * points; energy does not grow with current beyond a point. An RCD that was found to work bounds the energy by its
 * operating time; a dead or slow one bounds nothing, and whether an untested one does is not known. The habit of putting 0.1 s into the formula is shown beside and never decides.
 */
export const cpcAdiabatic = check({
  id: "cpc-adiabatic",
  scope: "circuit",
  title: "Protective conductor withstands an earth fault",
  formula: "Sp ≥ S (Table 54.7), or Sp ≥ √(I²t) ÷ k",
  regulations: ["543.1.1", "543.1.3", "543.1.4"],
  needs,
  gather(circuit, installation) {
    const { cable, device, readings, board } = circuit;
    const arrangement = cable.cpcArrangement;
    if (isKnownFact(arrangement) && arrangement.word === "none")
      return doesNotArise("no protective conductor", arrangement);
    return {
      nominalVoltage: installation.supply.nominalVoltage,
      zs: readings.zs,
      zdb: board.zdb,
      standard: device.standard,
      type: device.type,
      rated: device.rated,
      breakingCapacity: device.breakingCapacity,
      energyClass: device.energyClass,
      letThrough: device.letThrough,
      ...asAnswers(residualsBefore(circuit)),
      line: cable.line,
      cpc: cable.cpc,
      material: cable.material,
      insulation: cable.insulation,
      cpcArrangement: arrangement,
    };
  },
  conclude(given, reckon) {
    const selection = bySelection(given, reckon);
    // Selection settles it without a fault current; the energy is still worked out only where it has to decide.
    if (selection.verdict === "met") return concluded(selection);
    const k = factorK(given, reckon);
    const near = reckon.quotient(TERM.earthFaultCurrent, given.nominalVoltage, given.zdb);
    const far = reckon.quotient(TERM.earthFaultCurrent, given.nominalVoltage, given.zs);
    const overcurrent = energyByOvercurrent(given, far, reckon);
    const judgement = reckon.any(
      QUESTION.cpcWithstands,
      selection,
      sizeFor(QUESTION.cpcByEnergy, overcurrent.energy, k, given, reckon),
      byRcds(given, near, k, reckon),
    );
    const beside = reckon.beside(() => {
      if (!overcurrent.instant) return [];
      return [sizeFor(QUESTION.tenthSecondHabit, reckon.letThrough(TERM.letThrough, near, TENTH), k, given, reckon)];
    });
    return concluded(judgement, beside, judgement.verdict === "met" ? [] : overcurrent.remarks);
  },
  examples: [
    {
      name: "full-size protective conductor, by selection",
      given: {
        line: "4 mm²",
        cpc: "4 mm²",
        material: "copper",
        insulation: "70C-thermoplastic",
        cpcArrangement: "in-cable",
      },
      verdict: "met",
      source: "BS 7671 Table 54.7: S up to 16 mm²",
    },
    {
      name: "15 A semi-enclosed fuse, 90 A",
      given: {
        nominalVoltage: "230 V",
        zs: "2.555 ± 0 Ω",
        zdb: "0.5 Ω",
        standard: "BS 3036",
        rated: "15 A",
        rcd: "no",
        line: "2.5 mm²",
        cpc: "1.5 mm²",
        material: "copper",
        insulation: "70C-thermoplastic",
        cpcArrangement: "in-cable",
      },
      verdict: "met",
      values: { "required-area": { value: 0.495, within: 0.01 } },
      source: "textbook example: 90 A for 0.4 s, k 115: 0.49 mm²",
    },
    {
      name: "30 A semi-enclosed fuse at its 5 s current",
      given: {
        nominalVoltage: "230 V",
        zs: "2.50 ± 0.05 Ω",
        zdb: "0.8 Ω",
        standard: "BS 3036",
        rated: "30 A",
        rcd: "no",
        line: "4 mm²",
        cpc: "1.5 mm²",
        material: "copper",
        insulation: "70C-thermoplastic",
        cpcArrangement: "in-cable",
      },
      verdict: "too-near",
      values: { "required-area": { value: 1.69, within: 0.01 } },
      source: "92 A lies between 87 A for 5 s, √(87² × 5) ÷ 115 = 1.69 mm², and 210 A for 0.4 s, 1.15 mm²",
    },
    {
      name: "the same fuse on a 1 mm² conductor",
      given: {
        nominalVoltage: "230 V",
        zs: "2.50 ± 0.05 Ω",
        zdb: "0.8 Ω",
        standard: "BS 3036",
        rated: "30 A",
        rcd: "no",
        line: "4 mm²",
        cpc: "1 mm²",
        material: "copper",
        insulation: "70C-thermoplastic",
        cpcArrangement: "in-cable",
      },
      verdict: "not-met",
      source: "at least 1.15 mm² is needed",
    },
    {
      name: "breaker, class 3 ceiling at 6 kA",
      given: {
        nominalVoltage: "230 V",
        zs: "0.5 Ω",
        zdb: "0.2 Ω",
        standard: "BS EN 60898",
        type: "B",
        rated: "32 A",
        breakingCapacity: "6 kA",
        energyClass: "3",
        rcd: "no",
        line: "2.5 mm²",
        cpc: "1.5 mm²",
        material: "copper",
        insulation: "70C-thermoplastic",
        cpcArrangement: "in-cable",
      },
      verdict: "too-near",
      source: "√45000 ÷ 115 = 1.84 mm² from the ceiling: a ceiling above the need proves nothing either way",
    },
    {
      name: "breaker, maker's figure held",
      given: {
        nominalVoltage: "230 V",
        zs: "0.5 Ω",
        zdb: "0.2 Ω",
        standard: "BS EN 60898",
        type: "B",
        rated: "32 A",
        letThrough: "5000 A²s",
        rcd: "no",
        line: "1.5 mm²",
        cpc: "1 mm²",
        material: "copper",
        insulation: "70C-thermoplastic",
        cpcArrangement: "in-cable",
      },
      verdict: "met",
      values: { "required-area": { value: 0.615, within: 0.001 } },
      source: "√5000 ÷ 115 = 0.615 mm²",
    },
    {
      name: "RCD with a delay that its standard bounds",
      given: { ...DELAYED, rcdStandard: "BS EN 61008" },
      verdict: "met",
      source: "230 ÷ 0.80 = 287.5 A for at most 0.15 s at 5 IΔn: √(287.5² × 0.15) ÷ 115 = 0.97 mm²",
    },
    {
      name: "the same, slower at five times its current than its standard allows",
      given: { ...DELAYED, rcdStandard: "BS EN 61008", rcdFive: "180 ms" },
      verdict: "too-near",
      source: "287.5 A for 0.18 s as measured: √(287.5² × 0.18) ÷ 115 = 1.06 mm², as an upper limit",
    },
    {
      name: "the same device, not tested",
      given: { ...UNTESTED, rcdStandard: "BS EN 61008" },
      verdict: "not-known",
      missing: ["rcd-tested"],
      source: "nothing shows that the RCD opens",
    },
    {
      name: "a dead RCD bounds nothing: the fuse decides",
      given: { ...FUSE, rcdTest: "does-not-operate" },
      verdict: "not-met",
      source: "at least 1.15 mm² is needed with the fuse: √(210² × 0.4) ÷ 115",
    },
    {
      name: "a slow RCD bounds nothing: the fuse decides",
      given: { ...FUSE, rcdTest: "too-slow" },
      verdict: "not-met",
      source: "at least 1.15 mm² is needed with the fuse: √(210² × 0.4) ÷ 115",
    },
    {
      name: "an RCD with the same fuse that works",
      given: { ...FUSE, rcdTest: "in-time" },
      verdict: "met",
      source: "230 ÷ 0.80 = 287.5 A for at most 0.04 s at 5 IΔn: √(287.5² × 0.04) ÷ 115 = 0.5 mm²",
    },
    {
      name: "RCD with a delay that is set on the device",
      given: { ...DELAYED, rcdStandard: "BS 4293" },
      verdict: "not-known",
      missing: ["permitted-rcd-time"],
      source: "BS 4293: the operating time goes with the delay marked, which is not known",
    },
    {
      name: "breaker, no energy evidence held",
      given: {
        nominalVoltage: "230 V",
        zs: "0.34 Ω",
        zdb: "0.21 Ω",
        standard: "BS EN 60898",
        type: "B",
        rated: "32 A",
        breakingCapacity: "6 kA",
        rcd: "no",
        line: "6 mm²",
        cpc: "2.5 mm²",
        material: "copper",
        insulation: "70C-thermoplastic",
        cpcArrangement: "in-cable",
      },
      verdict: "not-known",
      missing: ["let-through"],
      source: "BS 7671 543.1.3: below 0.1 s the energy let through is needed",
    },
  ],
});

function factorK({ insulation, cpcArrangement, material, cpc }: GivenHere, reckon: Reckoner): Evidence<"adiabatic-k"> {
  const of = protectiveMaterial(cpcArrangement, material);
  const figure =
    of !== undefined && isKnownFact(insulation) && isKnownFact(cpcArrangement) && isExact(cpc)
      ? protectiveConductorK(of, insulation.word, cpcArrangement.word, cpc.value)
      : undefined;
  return reckon.lookedUp(TERM.adiabaticK, figure, insulation, cpcArrangement, material);
}

/** Table 54.7 holds for the same material; steel armour and conduit are not judged by it here. */
function bySelection({ line, cpc, cpcArrangement }: GivenHere, reckon: Reckoner): Judgement {
  if (isKnownFact(cpcArrangement) && cpcArrangement.word !== "in-cable" && cpcArrangement.word !== "separate") {
    return reckon.settled(
      QUESTION.cpcBySelection,
      "not-applicable",
      "not of the line conductor's material",
      cpcArrangement,
    );
  }
  const figure = isExact(line) ? cpcBySelection(line.value) : undefined;
  return reckon.atLeast(QUESTION.cpcBySelection, cpc, reckon.lookedUp(TERM.requiredArea, figure, line));
}

/**
 * Size against energy. An energy that is only an upper limit (a ceiling, a bound) shows a conductor large enough; it
 * never shows one too small, so "not met" is left to energies that are known for what they are.
 */
function sizeFor(
  question: (typeof QUESTION)["cpcByEnergy" | "cpcUntilRcdOpens" | "tenthSecondHabit"],
  energy: Evidence<"ampere-squared-second">,
  k: Evidence<"adiabatic-k">,
  { cpc }: GivenHere,
  reckon: Reckoner,
): Judgement {
  const needed = reckon.quotient(TERM.requiredArea, reckon.root(TERM.rootLetThrough, energy), k);
  return reckon.atLeast(question, cpc, needed);
}

function byRcds(given: GivenHere, near: Evidence<"ampere">, k: Evidence<"adiabatic-k">, reckon: Reckoner): Judgement {
  const { rcd } = given;
  if (!isKnownFact(rcd)) return reckon.settled(QUESTION.cpcByRcd, "not-known", "", rcd);
  if (!rcd.word) return reckon.settled(QUESTION.cpcByRcd, "not-applicable", "no RCD", rcd);
  const parts = devicesOf(given).map((device) =>
    reckon.all(QUESTION.cpcByRcd, untilOpen(device, given, near, k, reckon), rcdWorks(device.test, reckon)),
  );
  const [only] = parts;
  return only !== undefined && parts.length === 1 ? only : reckon.any(QUESTION.cpcByRcd, ...parts);
}

/**
 * An RCD that works opens at the latest in the time of its standard; the energy until then is an upper limit. Without
 * delay no standard allows more than BS EN 61008; with one it has to be a standard that bounds the delay. Where it was
 * measured at 5 IΔn and found slower than that, the time measured counts.
 */
function untilOpen(
  { residual, standard: marked, delay, timeAtFive }: ResidualBefore,
  given: GivenHere,
  near: Evidence<"ampere">,
  k: Evidence<"adiabatic-k">,
  reckon: Reckoner,
): Judgement {
  const fast = isKnown(near) && isKnown(residual) && near.low >= 5 * residual.high;
  const undelayed = isKnownFact(delay) && delay.word === "general";
  const standard = undelayed ? UNDELAYED : marked;
  const time =
    isKnown(residual) && isKnownFact(delay) && isKnownFact(standard)
      ? permittedRcdTime({ standard: standard.word, delay: delay.word, multiple: fast ? 5 : 1 }).max
      : undefined;
  const permitted = reckon.lookedUp(TERM.permittedRcdTime, time, delay, residual, standard);
  const latest = fast && isKnown(timeAtFive) ? reckon.largest(TERM.operatingTime, permitted, timeAtFive) : permitted;
  const most = reckon.letThrough(TERM.letThrough, near, latest);
  return sizeFor(QUESTION.cpcUntilRcdOpens, reckon.atMostOf(TERM.letThrough, most), k, given, reckon);
}

const UNDELAYED = fact(MATTER.rcdStandard, "BS EN 61008", [], "without delay no standard allows more", "assumed");

const TENTH = assumed(
  TERM.operatingTime,
  0.1,
  "a habit: beyond the instant trip the device opens sooner, and the formula no longer holds",
  undefined,
  source("habit of the trade", "none", "common-practice"),
);
