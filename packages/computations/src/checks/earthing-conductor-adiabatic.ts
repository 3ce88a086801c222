import {
  CONDUCTOR_MATERIALS,
  DEVICE_STANDARDS,
  DEVICE_TYPES,
  EARTHING_SYSTEMS,
  isExact,
  isKnownFact,
  TERM,
} from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { protectiveConductorK } from "@good-grounds/tables";
import { check, concluded, doesNotArise } from "../check.ts";
import { energyByOvercurrent } from "../circuits/energy-let-through.ts";
import { QUESTION } from "../matters.ts";
import { asksQuantity, asksWord } from "../need.ts";

/**
 * Whether the earthing conductor withstands an earth fault at the origin: Se ≥ √(I²t)/k with I = U0/Ze in A and the
 * energy let through by the supply device in A²s (543.1.3). For TN systems; on TT the fault current is small and the
 * size follows from selection. Covering of 70 °C thermoplastic is taken, run apart from other cables unless stated.
 */
export const earthingConductorAdiabatic = check({
  id: "earthing-conductor-adiabatic",
  scope: "supply",
  title: "Earthing conductor withstands an earth fault at the origin",
  formula: "Se ≥ √(I²t) ÷ k",
  regulations: ["543.1.3"],
  needs: {
    system: asksWord(MATTER.earthingSystem, EARTHING_SYSTEMS),
    nominalVoltage: asksQuantity(TERM.nominalVoltage, "230 V"),
    ze: asksQuantity(TERM.measuredZe, "0.21 Ω"),
    standard: asksWord(MATTER.deviceStandard, DEVICE_STANDARDS),
    type: asksWord(MATTER.deviceType, DEVICE_TYPES),
    rated: asksQuantity(TERM.ratedCurrent, "100 A"),
    breakingCapacity: asksQuantity(TERM.breakingCapacity, "16.5 kA"),
    energyClass: asksWord(MATTER.energyClass, ["1", "2", "3"]),
    letThrough: asksQuantity(TERM.letThrough, "from the maker at this fault current"),
    earthing: asksQuantity(TERM.earthingArea, "16 mm²"),
    material: asksWord(MATTER.material, CONDUCTOR_MATERIALS),
    arrangement: asksWord(MATTER.earthingArrangement, ["separate", "in-cable", "buried"]),
  },
  gather({ supply }) {
    if (isKnownFact(supply.earthing) && supply.earthing.word === "TT") {
      return doesNotArise("TT: the fault current is too small to matter", supply.earthing);
    }
    const { device, earthingConductor } = supply;
    return {
      system: supply.earthing,
      nominalVoltage: supply.nominalVoltage,
      ze: supply.ze,
      standard: device.standard,
      type: device.type,
      rated: device.rated,
      breakingCapacity: device.breakingCapacity,
      energyClass: device.energyClass,
      letThrough: device.letThrough,
      earthing: earthingConductor.size,
      material: earthingConductor.material,
      arrangement: earthingConductor.arrangement,
    };
  },
  conclude(given, reckon) {
    const { nominalVoltage, ze, earthing, material, arrangement } = given;
    const fault = reckon.quotient(TERM.earthFaultCurrent, nominalVoltage, ze);
    const { energy, remarks } = energyByOvercurrent(given, fault, reckon);
    const run = isKnownFact(arrangement) && arrangement.word === "in-cable" ? "in-cable" : "separate";
    const figure =
      isKnownFact(material) && isKnownFact(arrangement) && isExact(earthing)
        ? protectiveConductorK(material.word, "70C-thermoplastic", run, earthing.value)
        : undefined;
    const k = reckon.lookedUp(TERM.adiabaticK, figure, material, arrangement);
    const needed = reckon.quotient(TERM.requiredArea, reckon.root(TERM.rootLetThrough, energy), k);
    const judgement = reckon.atLeast(QUESTION.earthingConductorSize, earthing, needed);
    return concluded(judgement, [], judgement.verdict === "met" ? [] : remarks);
  },
  examples: [
    {
      name: "16 mm² behind a 100 A BS 1361 fuse",
      given: {
        system: "TN-C-S",
        nominalVoltage: "230 V",
        ze: "0.21 Ω",
        standard: "BS 1361",
        rated: "100 A",
        earthing: "16 mm²",
        material: "copper",
        arrangement: "separate",
      },
      verdict: "met",
      source: "I(5 s) = 218.5 ÷ 0.34 = 643 A; √(643² × 5) ÷ 143 = 10.05 mm²",
    },
    {
      name: "6 mm² behind the same fuse",
      given: {
        system: "TN-C-S",
        nominalVoltage: "230 V",
        ze: "0.21 Ω",
        standard: "BS 1361",
        rated: "100 A",
        earthing: "6 mm²",
        material: "copper",
        arrangement: "separate",
      },
      verdict: "too-near",
      source: "up to 10.05 mm² by the 5 s point; the true energy at 1095 A is not known",
    },
    {
      name: "fuse not seen",
      given: {
        system: "TN-S",
        nominalVoltage: "230 V",
        ze: "0.4 Ω",
        earthing: "16 mm²",
        material: "copper",
        arrangement: "separate",
      },
      verdict: "not-known",
      missing: ["device-standard", "rated-current"],
      source: "input missing",
    },
  ],
});
