import {
  CONDUCTOR_MATERIALS,
  type ConductorMaterial,
  DEVICE_STANDARDS,
  DEVICE_TYPES,
  type Evidence,
  type Fact,
  isExact,
  isKnownFact,
  type Reckoner,
  TERM,
} from "@good-grounds/core";
import { type Installation, MATTER } from "@good-grounds/inspection";
import { protectiveConductorK } from "@good-grounds/tables";
import { asksQuantity, asksWord, type Given } from "../../need.ts";
import { energyByOvercurrent, type OvercurrentEnergy } from "./energy-let-through.ts";

/** What the energy of an earth fault at the origin is found from. */
export const originFaultNeeds = Object.freeze({
  nominalVoltage: asksQuantity(TERM.nominalVoltage, "230 V"),
  ze: asksQuantity(TERM.measuredZe, "0.21 Ω"),
  standard: asksWord(MATTER.deviceStandard, DEVICE_STANDARDS),
  type: asksWord(MATTER.deviceType, DEVICE_TYPES),
  rated: asksQuantity(TERM.ratedCurrent, "100 A"),
  breakingCapacity: asksQuantity(TERM.breakingCapacity, "16.5 kA"),
  energyClass: asksWord(MATTER.energyClass, ["1", "2", "3"]),
  letThrough: asksQuantity(TERM.letThrough, "from the maker at this fault current"),
});

/** The same of an installation. */
export function originFault({ supply }: Installation): Given<typeof originFaultNeeds> {
  const { device, nominalVoltage, ze } = supply;
  const { standard, type, rated, breakingCapacity, energyClass, letThrough } = device;
  return { nominalVoltage, ze, standard, type, rated, breakingCapacity, energyClass, letThrough };
}

/** The energy that the device of the supply lets through in an earth fault at the origin, with I = U0 ÷ Ze. */
export function energyAtOrigin(given: Given<typeof originFaultNeeds>, reckon: Reckoner): OvercurrentEnergy {
  const fault = reckon.quotient(TERM.earthFaultCurrent, given.nominalVoltage, given.ze);
  return energyByOvercurrent(given, { least: fault, most: fault }, reckon);
}

/** How the earthing conductor runs. */
export const EARTHING_RUNS = ["separate", "in-cable", "buried"] as const;

export const earthingMaterialNeed = asksWord(MATTER.material, CONDUCTOR_MATERIALS, "of the earthing conductor");

/** Factor k of an earthing conductor covered in 70 °C thermoplastic, apart from other cables unless it runs in one. */
export function earthingConductorK(
  area: Evidence<"square-millimetre">,
  material: Fact<ConductorMaterial>,
  arrangement: Fact<(typeof EARTHING_RUNS)[number]>,
  reckon: Reckoner,
): Evidence<"adiabatic-k"> {
  const run = isKnownFact(arrangement) && arrangement.word === "in-cable" ? "in-cable" : "separate";
  const figure =
    isKnownFact(material) && isKnownFact(arrangement) && isExact(area)
      ? protectiveConductorK(material.word, "70C-thermoplastic", run, area.value)
      : undefined;
  return reckon.lookedUp(TERM.adiabaticK, figure, material, arrangement);
}
