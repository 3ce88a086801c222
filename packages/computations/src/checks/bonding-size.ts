import {
  CONDUCTOR_MATERIALS,
  EARTHING_SYSTEMS,
  type Evidence,
  fact,
  isExact,
  isKnown,
  isKnownFact,
  type Judgement,
  published,
  type Reckoner,
  TERM,
} from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { cpcBySelection, mainBondingOther, mainBondingPme, notTabulated, source } from "@good-grounds/tables";
import { check, concluded } from "../check.ts";
import { bondNotAsked } from "../circuits/bond-not-asked.ts";
import { earthingConductorK, energyAtOrigin, originFault, originFaultNeeds } from "../circuits/energy/at-the-origin.ts";
import type { OvercurrentEnergy } from "../circuits/energy/energy-let-through.ts";
import { evidenceHeld } from "../circuits/energy/evidence-held.ts";
import { largeEnough } from "../circuits/energy/large-enough.ts";
import { QUESTION } from "../matters.ts";
import { asksQuantity, asksWord, asksYesNo, type Given } from "../need.ts";

const needs = {
  extraneous: asksYesNo(MATTER.extraneous),
  connected: asksYesNo(MATTER.connected),
  ...originFaultNeeds,
  system: asksWord(MATTER.earthingSystem, EARTHING_SYSTEMS),
  bond: asksQuantity(TERM.bondArea, "10 mm²"),
  material: asksWord(MATTER.material, CONDUCTOR_MATERIALS, "of the bonding conductor"),
  neutral: asksQuantity(TERM.neutralArea, "25 mm², the supply neutral"),
  tails: asksQuantity(TERM.tailsArea, "25 mm²"),
};

type GivenHere = Given<typeof needs>;

/**
 * Main bonding present and large enough. TN-C-S: Table 54.8 by the supply neutral. Otherwise 544.1.1: half the size
 * required of the earthing conductor (from the tails by Table 54.7, or on TN and IT by calculation, 543.1.3; one is
 * enough), at least 6 mm², need not exceed 25 mm². Sizes in mm² of copper. A part that is not extraneous needs no bonding.
 */
export const bondingSize = check({
  id: "bonding-size",
  scope: "bond",
  title: "Main bonding present and large enough",
  formula: "Sb ≥ Table 54.8 (TN-C-S), or half of the earthing conductor, 6 to 25 mm²",
  regulations: ["411.3.1.2", "544.1.1"],
  needs,
  gather(bond, installation) {
    const { supply } = installation;
    const notAsked = bondNotAsked(bond);
    if (notAsked !== undefined) return notAsked;
    return {
      ...originFault(installation),
      extraneous: bond.extraneous,
      connected: bond.connected,
      system: supply.earthing,
      bond: bond.size,
      material: bond.material,
      neutral: supply.neutral.size,
      tails: supply.tails.size,
    };
  },
  conclude(given, reckon) {
    const { extraneous, connected, material } = given;
    const energy = energyAtOrigin(given, reckon);
    const size = largeEnoughBond(given, energy, reckon);
    const copper =
      isKnownFact(material) && material.word !== "copper"
        ? [
            reckon.settled(
              QUESTION.bondSize,
              "not-known",
              "only copper is tabulated here",
              material,
              notTabulated(TERM.requiredArea, "BS 7671 544.1.1 and Table 54.8 as carried here", material.word),
            ),
          ]
        : [];
    const present = isKnownFact(connected)
      ? [reckon.byWord(QUESTION.bondConnected, connected, (there) => (there ? "met" : "not-met"))]
      : [];
    const judgement = reckon.all(QUESTION.bondSize, ...present, size, ...copper);
    if (isKnownFact(extraneous)) return concluded(judgement, [], isByTable(given) ? [] : evidenceHeld(size, energy));
    return concluded(
      judgement.verdict === "met"
        ? judgement
        : reckon.settled(
            QUESTION.bondSize,
            "not-known",
            "not known whether the part is extraneous",
            extraneous,
            judgement,
          ),
    );
  },
  examples: [
    {
      name: "6 mm² under PME",
      given: {
        extraneous: "yes",
        connected: "yes",
        system: "TN-C-S",
        bond: "6 mm²",
        material: "copper",
        neutral: "25 mm²",
      },
      verdict: "not-met",
      values: { "required-area": { value: 10, within: 1e-9 } },
      source: "BS 7671 Table 54.8: 10 mm²",
    },
    {
      name: "10 mm² under PME",
      given: {
        extraneous: "yes",
        connected: "yes",
        system: "TN-C-S",
        bond: "10 mm²",
        material: "copper",
        neutral: "25 mm²",
      },
      verdict: "met",
      source: "BS 7671 Table 54.8: 10 mm²",
    },
    {
      name: "TT with 16 mm² tails",
      given: { extraneous: "yes", connected: "yes", system: "TT", bond: "6 mm²", material: "copper", tails: "16 mm²" },
      verdict: "not-met",
      values: { "required-area": { value: 10, within: 1e-9 } },
      source: "half of 16 mm² is 8, next standard size 10 mm²",
    },
    {
      name: "6 mm² with 25 mm² tails, a fault that asks for little",
      given: {
        extraneous: "yes",
        connected: "yes",
        system: "TN-S",
        bond: "6 mm²",
        material: "copper",
        tails: "25 mm²",
        nominalVoltage: "230 V",
        ze: "0.3 ± 0 Ω",
        standard: "BS 1361",
        rated: "60 A",
      },
      verdict: "met",
      values: { "required-area": { value: 6, within: 1e-9 } },
      source:
        "half of √(341² × 5) ÷ 143 = 5.34 mm² is 2.7 mm², so 6 mm² at the least; half of 16 mm² is 8 by selection",
    },
    {
      name: "aluminium, for which no size is carried",
      given: {
        extraneous: "yes",
        connected: "yes",
        system: "TN-C-S",
        bond: "16 mm²",
        material: "aluminium",
        neutral: "25 mm²",
      },
      verdict: "not-known",
      missing: ["required-area"],
      source: "BS 7671 544.1.1 asks for an equivalent of the copper size, which is not reckoned here",
    },
    {
      name: "missing",
      given: { extraneous: "yes", connected: "no", system: "TN-C-S", neutral: "25 mm²" },
      verdict: "not-met",
      source: "BS 7671 411.3.1.2",
    },
    {
      name: "not known whether extraneous",
      given: { connected: "no", system: "TN-C-S", neutral: "25 mm²" },
      verdict: "not-known",
      missing: ["extraneous"],
      source: "BS 7671 411.3.1.2",
    },
  ],
});

/** Whether a table of sizes is the only way: on PME, and where it is not known whether the supply is PME. */
function isByTable({ system }: GivenHere): boolean {
  return !isKnownFact(system) || system.word === "TN-C-S" || system.word === "TT";
}

/**
 * On PME Table 54.8. Otherwise half of the earthing conductor that is required: by selection from the tails or, where a
 * fault current is large enough to matter, by calculation.
 */
function largeEnoughBond(given: GivenHere, energy: OvercurrentEnergy, reckon: Reckoner): Judgement {
  const { bond, material } = given;
  const byTable = reckon.atLeast(QUESTION.bondSize, bond, required(given, reckon));
  if (isByTable(given)) return byTable;
  const k = earthingConductorK(bond, material, APART, reckon);
  const half = (size: Evidence<"square-millimetre">) =>
    reckon.largest(
      TERM.requiredArea,
      LEAST,
      reckon.smallest(TERM.requiredArea, MOST, reckon.product(TERM.requiredArea, size, HALF)),
    );
  return reckon.any(
    QUESTION.bondSize,
    byTable,
    largeEnough(QUESTION.bondByEnergy, { area: bond, k }, energy, reckon, half),
  );
}

const R5441 = source("BS 7671 544.1.1, seen on a page explaining it", "2008 to 2018+A4", "published");
const LEAST = published(TERM.requiredArea, 6, R5441, "least main bonding conductor");
const MOST = published(TERM.requiredArea, 25, R5441, "need not exceed it in copper");
const HALF = published(TERM.half, 0.5, R5441, "of the earthing conductor required");
const APART = fact(MATTER.earthingArrangement, "separate", [], "apart from other cables", "assumed");

function required({ system, neutral, tails }: GivenHere, reckon: Reckoner): Evidence<"square-millimetre"> {
  if (!isKnownFact(system)) return reckon.lookedUp(TERM.requiredArea, undefined, system);
  if (system.word === "TN-C-S") {
    return reckon.lookedUp(
      TERM.requiredArea,
      isExact(neutral) ? mainBondingPme(neutral.value) : undefined,
      system,
      neutral,
    );
  }
  const earthing = isExact(tails) ? cpcBySelection(tails.value) : undefined;
  const figure = earthing !== undefined && isKnown(earthing) ? mainBondingOther(earthing.value) : undefined;
  return reckon.lookedUp(TERM.requiredArea, figure, system, tails);
}
