import {
  CONDUCTOR_MATERIALS,
  EARTHING_SYSTEMS,
  type Evidence,
  isExact,
  isKnown,
  isKnownFact,
  type Reckoner,
  type Remark,
  TERM,
} from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { cpcBySelection, mainBondingOther, mainBondingPme, notTabulated } from "@good-grounds/tables";
import { check, concluded } from "../check.ts";
import { bondNotAsked } from "../circuits/bond-not-asked.ts";
import { QUESTION } from "../matters.ts";
import { asksQuantity, asksWord, asksYesNo, type Given } from "../need.ts";

const needs = {
  extraneous: asksYesNo(MATTER.extraneous),
  connected: asksYesNo(MATTER.connected),
  system: asksWord(MATTER.earthingSystem, EARTHING_SYSTEMS),
  bond: asksQuantity(TERM.bondArea, "10 mm²"),
  material: asksWord(MATTER.material, CONDUCTOR_MATERIALS, "of the bonding conductor"),
  neutral: asksQuantity(TERM.neutralArea, "25 mm², the supply neutral"),
  tails: asksQuantity(TERM.tailsArea, "25 mm²"),
};

/**
 * Main bonding present and large enough. TN-C-S: Table 54.8 by the supply neutral. Otherwise 544.1.1: half the size
 * required of the earthing conductor (from the tails by Table 54.7), at least 6 mm², need not exceed 25 mm². Sizes in
 * mm² of copper. A part that is not extraneous needs no bonding.
 */
export const bondingSize = check({
  id: "bonding-size",
  scope: "bond",
  title: "Main bonding present and large enough",
  formula: "Sb ≥ Table 54.8 (TN-C-S), or half of the earthing conductor, 6 to 25 mm²",
  regulations: ["411.3.1.2", "544.1.1"],
  needs,
  gather(bond, { supply }) {
    const notAsked = bondNotAsked(bond);
    if (notAsked !== undefined) return notAsked;
    return {
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
    const { extraneous, connected, bond, material } = given;
    const size = reckon.atLeast(QUESTION.bondSize, bond, required(given, reckon));
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
    if (isKnownFact(extraneous)) return concluded(judgement, [], size.verdict === "not-met" ? halfOf(given) : []);
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

/** Outside PME the size goes with the earthing conductor that is required, which calculation may show to be a smaller one. */
function halfOf({ system }: Given<typeof needs>): readonly Remark[] {
  return isKnownFact(system) && system.word !== "TN-C-S" ? [BY_SELECTION] : [];
}

const BY_SELECTION: Remark = Object.freeze({
  code: "bond-by-selection",
  words:
    "Half the earthing conductor that selection by the tails asks for. Where calculation (543.1.3) asks for a smaller one, half of that, and at least 6 mm², is enough.",
});

function required({ system, neutral, tails }: Given<typeof needs>, reckon: Reckoner): Evidence<"square-millimetre"> {
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
