import {
  assumed,
  CONDUCTOR_MATERIALS,
  CPC_ARRANGEMENTS,
  DEVICE_STANDARDS,
  DEVICE_TYPES,
  type Evidence,
  INSULATIONS,
  isExact,
  isKnown,
  isKnownFact,
  type Judgement,
  type Reckoner,
  TERM,
} from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { cpcBySelection, protectiveConductorK, source } from "@good-grounds/tables";
import { check, concluded, doesNotArise } from "../check.ts";
import { energyByOvercurrent } from "../circuits/energy/energy-let-through.ts";
import { evidenceHeld } from "../circuits/energy/evidence-held.ts";
import { faultRange, loopAtBoard } from "../circuits/energy/fault-range.ts";
import { largeEnough, sizeFor, type Withstanding } from "../circuits/energy/large-enough.ts";
import { untilRcdsOpen } from "../circuits/energy/until-rcd-opens.ts";
import { protectiveMaterial } from "../circuits/protective-material.ts";
import { asAnswers, delayNeed, rcdStandardNeed, residualNeeds, residualsBefore } from "../circuits/residual-devices.ts";
import { QUESTION } from "../matters.ts";
import { asksQuantities, asksQuantity, asksWord, type Given } from "../need.ts";
import { CPC_ADIABATIC_EXAMPLES } from "./examples/cpc-adiabatic.ts";

const needs = {
  nominalVoltage: asksQuantity(TERM.nominalVoltage, "230 V"),
  zs: asksQuantity(TERM.measuredZs, "0.49 Ω, at the far end"),
  zdb: asksQuantity(TERM.measuredZdb, "0.21 Ω, at the board"),
  r1r2: asksQuantity(TERM.measuredR1R2, "0.28 Ω, where Zs was not read"),
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

/**
 * Whether the protective conductor withstands an earth fault, wherever on the circuit it happens: by selection from the
 * line conductor's size (Table 54.7), or by energy, S ≥ √(I²t)/k (543.1.3). One of them is enough.
 *
 * Energy let through, in A²s, at the worst current from a fault at the end of the circuit (by Zs; where that was not read, by
 * the loop at the board and R1+R2) to one at the board. The maker's
 * figure, the ceiling of the energy limiting class and the known points of a fuse are evidence; where they leave it open,
 * the physics of the first half-cycles and of a melting element says what is to be expected, and the verdict says that
 * it is that. An RCD that was found to work bounds the energy by its operating time; a dead or slow one bounds nothing, and
 * whether an untested one does is not known. The habit of putting 0.1 s into the formula is shown beside and never decides.
 */
export const cpcAdiabatic = check({
  id: "cpc-adiabatic",
  scope: "circuit",
  title: "Protective conductor withstands an earth fault",
  formula: "Sp ≥ S (Table 54.7), or Sp ≥ √(I²t) ÷ k",
  regulations: ["543.1.1", "543.1.3", "543.1.4"],
  needs,
  gather(circuit, installation) {
    const { cable, device, readings } = circuit;
    const arrangement = cable.cpcArrangement;
    if (isKnownFact(arrangement) && arrangement.word === "none")
      return doesNotArise("no protective conductor", arrangement);
    return {
      nominalVoltage: installation.supply.nominalVoltage,
      zs: readings.zs,
      zdb: loopAtBoard(circuit, installation),
      r1r2: readings.r1r2,
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
    const conductor = { area: given.cpc, k: factorK(given, reckon) };
    const near = reckon.quotient(TERM.earthFaultCurrent, given.nominalVoltage, given.zdb);
    const { zs, zdb, r1r2 } = given;
    const byParts = !isKnown(zs) && isKnown(zdb) && isKnown(r1r2);
    const end = byParts ? reckon.sum(TERM.expectedZs, zdb, r1r2) : zs;
    const far = reckon.quotient(TERM.earthFaultCurrent, given.nominalVoltage, end);
    const energy = energyByOvercurrent(given, faultRange(far, near, reckon), reckon);
    const judgement = reckon.any(
      QUESTION.cpcWithstands,
      selection,
      largeEnough(QUESTION.cpcByEnergy, conductor, energy, reckon),
      untilRcdsOpen(given, near, conductor, reckon),
    );
    const beside = reckon.beside(() => (energy.instant ? [byHabit(near, conductor, reckon)] : []));
    return concluded(judgement, beside, evidenceHeld(judgement, energy));
  },
  examples: CPC_ADIABATIC_EXAMPLES,
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

/** Size by the fault current at the board and 0.1 s. */
function byHabit(near: Evidence<"ampere">, { area, k }: Withstanding, reckon: Reckoner): Judgement {
  return reckon.atLeast(
    QUESTION.tenthSecondHabit,
    area,
    sizeFor(reckon.letThrough(TERM.letThrough, near, TENTH), k, reckon),
  );
}

const TENTH = assumed(
  TERM.operatingTime,
  0.1,
  "a habit: beyond the instant trip the device opens sooner, and the formula no longer holds",
  undefined,
  source("habit of the trade", "none", "common-practice"),
);
