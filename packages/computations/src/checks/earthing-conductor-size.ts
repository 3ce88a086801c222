import {
  EARTHING_SYSTEMS,
  type Evidence,
  isExact,
  isKnownFact,
  type Judgement,
  type Reckoner,
  TERM,
} from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { buriedEarthingConductor, cpcBySelection, mainBondingPme, notTabulated } from "@good-grounds/tables";
import { check, concluded } from "../check.ts";
import {
  EARTHING_RUNS,
  earthingConductorK,
  earthingMaterialNeed,
  energyAtOrigin,
  originFault,
  originFaultNeeds,
} from "../circuits/energy/at-the-origin.ts";
import type { OvercurrentEnergy } from "../circuits/energy/energy-let-through.ts";
import { evidenceHeld } from "../circuits/energy/evidence-held.ts";
import { largeEnough } from "../circuits/energy/large-enough.ts";
import { QUESTION } from "../matters.ts";
import { asksQuantity, asksWord, asksYesNo, type Given } from "../need.ts";

const needs = {
  ...originFaultNeeds,
  system: asksWord(MATTER.earthingSystem, EARTHING_SYSTEMS),
  earthing: asksQuantity(TERM.earthingArea, "16 mm²"),
  tails: asksQuantity(TERM.tailsArea, "25 mm²"),
  neutral: asksQuantity(TERM.neutralArea, "25 mm², the supply neutral"),
  material: earthingMaterialNeed,
  arrangement: asksWord(MATTER.earthingArrangement, EARTHING_RUNS),
  sheathed: asksYesNo(MATTER.sheathed),
  mechanicallyProtected: asksYesNo(MATTER.mechanicallyProtected),
};

type GivenHere = Given<typeof needs>;

const BEHIND_60_A = {
  system: "TN-S",
  nominalVoltage: "230 V",
  ze: "0.3 ± 0 Ω",
  standard: "BS 1361",
  rated: "60 A",
  tails: "25 mm²",
  material: "copper",
  arrangement: "separate",
} as const;

/**
 * Size of the earthing conductor: one question with two ways. By selection from the tails (542.3.1, Table 54.7), or by
 * the energy that the device of the supply lets through in an earth fault at the origin, Se ≥ √(I²t)/k (543.1.3); one of
 * them is enough. On PME it is as large as main bonding has to be as well (544.1.1, Table 54.8), and where it is buried as
 * large as Table 54.1 asks. Sizes in mm². Selection is carried for copper; on TT the fault current is small and
 * selection alone is asked.
 */
export const earthingConductorSize = check({
  id: "earthing-conductor-size",
  scope: "supply",
  title: "Size of the earthing conductor",
  formula: "Se ≥ S (Table 54.7), or Se ≥ √(I²t) ÷ k; PME: and Se ≥ Table 54.8; buried: and Se ≥ Table 54.1",
  regulations: ["542.3.1", "543.1.1", "543.1.3", "543.1.4", "544.1.1"],
  needs,
  gather: (installation) => {
    const { supply } = installation;
    const { size, material, arrangement, sheathed, mechanicallyProtected } = supply.earthingConductor;
    return {
      ...originFault(installation),
      system: supply.earthing,
      earthing: size,
      tails: supply.tails.size,
      neutral: supply.neutral.size,
      material,
      arrangement,
      sheathed,
      mechanicallyProtected,
    };
  },
  conclude(given, reckon) {
    const selection = bySelection(given, reckon);
    const energy = energyAtOrigin(given, reckon);
    const calculation = byEnergy(given, energy, reckon);
    const way = reckon.any(QUESTION.earthingConductorSize, selection, calculation);
    const judgement = reckon.all(
      QUESTION.earthingConductorSize,
      way,
      ...forPme(given, reckon),
      ...buried(given, reckon),
    );
    const held = selection.verdict === "met" ? [] : evidenceHeld(way, energy);
    return concluded(judgement, [], held, [selection, calculation]);
  },
  examples: [
    {
      name: "16 mm² with 25 mm² tails",
      given: { earthing: "16 mm²", tails: "25 mm²", arrangement: "separate", material: "copper" },
      verdict: "met",
      source: "BS 7671 Table 54.7: 16 mm²",
    },
    {
      name: "10 mm² with 25 mm² tails",
      given: { earthing: "10 mm²", tails: "25 mm²", arrangement: "separate", material: "copper" },
      verdict: "not-known",
      missing: ["measured-ze"],
      source: "BS 7671 Table 54.7: 16 mm²; whether 10 mm² withstands the fault is open",
    },
    {
      name: "buried bare",
      given: {
        earthing: "16 mm²",
        tails: "16 mm²",
        arrangement: "buried",
        sheathed: "no",
        mechanicallyProtected: "no",
        material: "copper",
      },
      verdict: "not-met",
      source: "BS 7671 Table 54.1: 25 mm²",
    },
    {
      name: "10 mm² with 25 mm² tails behind a 60 A fuse",
      given: { ...BEHIND_60_A, earthing: "10 mm²" },
      verdict: "met",
      source: "I(5 s) = 218.5 ÷ 0.64 = 341 A; √(341² × 5) ÷ 143 = 5.34 mm² at the most",
    },
    {
      name: "16 mm² behind a 100 A fuse on PME",
      given: {
        ...BEHIND_60_A,
        system: "TN-C-S",
        rated: "100 A",
        ze: "0.21 ± 0 Ω",
        earthing: "16 mm²",
        neutral: "25 mm²",
      },
      verdict: "met",
      source: "BS 7671 Table 54.7 and Table 54.8: 16 and 10 mm²",
    },
    {
      name: "6 mm² on PME, which withstands the fault",
      given: { ...BEHIND_60_A, system: "TN-C-S", earthing: "6 mm²", neutral: "25 mm²" },
      verdict: "not-met",
      source: "BS 7671 Table 54.8: 10 mm², whatever the fault lets through",
    },
    {
      name: "6 mm² behind a 100 A fuse, not PME",
      given: { ...BEHIND_60_A, rated: "100 A", ze: "0.21 ± 0 Ω", earthing: "6 mm²" },
      verdict: "too-near",
      source: "up to 10.05 mm² by the 5 s point; the line to the 0.4 s point does not settle it",
    },
    {
      name: "supply fuse not seen",
      given: {
        system: "TN-S",
        nominalVoltage: "230 V",
        ze: "0.4 ± 0 Ω",
        earthing: "10 mm²",
        tails: "25 mm²",
        material: "copper",
        arrangement: "separate",
      },
      verdict: "not-known",
      missing: ["device-standard", "rated-current"],
      source: "input missing",
    },
    {
      name: "aluminium, for which no size is carried",
      given: { earthing: "16 mm²", tails: "25 mm²", arrangement: "separate", material: "aluminium" },
      verdict: "not-known",
      missing: ["required-area"],
      source:
        "BS 7671 543.1.4 asks for k1 ÷ k2 times the copper size, which is not reckoned here; the fault is not known",
    },
    {
      name: "tails not seen",
      given: { earthing: "16 mm²", arrangement: "separate" },
      verdict: "not-known",
      missing: ["tails-area"],
      source: "input missing",
    },
  ],
});

/** Table 54.7 by the tails; a size of another metal than copper is not reckoned. */
function bySelection({ earthing, tails, material }: GivenHere, reckon: Reckoner): Judgement {
  if (isKnownFact(material) && material.word !== "copper") {
    const carried = notTabulated(TERM.requiredArea, "BS 7671 Table 54.7 as carried here", material.word);
    return reckon.settled(
      QUESTION.earthingBySelection,
      "not-known",
      "only copper is tabulated here",
      material,
      carried,
    );
  }
  const figure = isExact(tails) ? cpcBySelection(tails.value) : undefined;
  return reckon.atLeast(QUESTION.earthingBySelection, earthing, reckon.lookedUp(TERM.requiredArea, figure, tails));
}

function byEnergy(given: GivenHere, energy: OvercurrentEnergy, reckon: Reckoner): Judgement {
  const { system, earthing, material, arrangement } = given;
  if (isKnownFact(system) && system.word === "TT")
    return reckon.settled(QUESTION.earthingByEnergy, "not-applicable", "TT: the fault current is too small", system);
  const k = earthingConductorK(earthing, material, arrangement, reckon);
  return largeEnough(QUESTION.earthingByEnergy, { area: earthing, k }, energy, reckon);
}

/** On PME the earthing conductor carries what main bonding carries. */
function forPme({ system, neutral, earthing, material }: GivenHere, reckon: Reckoner): readonly Judgement[] {
  if (!isKnownFact(system) || system.word !== "TN-C-S") return [];
  const isCopper = isKnownFact(material) && material.word === "copper";
  const figure: Evidence<"square-millimetre"> | undefined =
    isCopper && isExact(neutral) ? mainBondingPme(neutral.value) : undefined;
  const needed = reckon.lookedUp(TERM.requiredArea, figure, neutral, material);
  return [reckon.atLeast(QUESTION.earthingForPme, earthing, needed)];
}

function buried(
  { earthing, arrangement, sheathed, mechanicallyProtected }: GivenHere,
  reckon: Reckoner,
): readonly Judgement[] {
  if (!isKnownFact(arrangement) || arrangement.word !== "buried") return [];
  const figure =
    isKnownFact(sheathed) && (isKnownFact(mechanicallyProtected) || !sheathed.word)
      ? buriedEarthingConductor({
          sheathed: sheathed.word,
          mechanicallyProtected: isKnownFact(mechanicallyProtected) && mechanicallyProtected.word,
        })
      : undefined;
  const floor = reckon.lookedUp(TERM.requiredArea, figure, sheathed, mechanicallyProtected);
  return [reckon.atLeast(QUESTION.buriedFloor, earthing, floor)];
}
