import { assumed, CONDUCTOR_MATERIALS, isKnown, LENGTH_FOUND, TERM } from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import {
  agreement,
  doubtedOf,
  exactly,
  lengthOf,
  lengthWithin,
  perMetre,
  sumOf,
  timesOf,
} from "@good-grounds/measurement";
import { source } from "@good-grounds/tables";
import { check, concluded } from "../check.ts";
import { bondNotAsked } from "../circuits/bond-not-asked.ts";
import { QUESTION } from "../matters.ts";
import { asksQuantity, asksWord } from "../need.ts";

/**
 * Resistance of a bonding conductor against what its length and size explain, r·L with room for the joints. R in Ω, L in
 * m, size in mm². The habit of asking at most 0.05 Ω whatever the length is shown beside and never decides.
 */
export const bondingContinuity = check({
  id: "bonding-continuity",
  scope: "bond",
  title: "Bonding conductor continuous",
  formula: "R ≤ r·L + joints",
  regulations: ["643.2.1"],
  needs: {
    resistance: asksQuantity(TERM.bondResistance, "0.03 Ω"),
    bond: asksQuantity(TERM.bondArea, "10 mm²"),
    material: asksWord(MATTER.material, CONDUCTOR_MATERIALS),
    length: asksQuantity(TERM.length, "12 m"),
    lengthFound: asksWord(MATTER.lengthFound, LENGTH_FOUND, "estimated where it is not said"),
  },
  gather(bond) {
    const notAsked = bondNotAsked(bond);
    if (notAsked !== undefined) return notAsked;
    const { resistance, size, material, length, lengthFound } = bond;
    return { resistance, bond: size, material, length, lengthFound };
  },
  conclude({ resistance, bond, material, length, lengthFound }, reckon) {
    const ofMetre = perMetre(TERM.conductorPerMetre, bond, material, reckon);
    const ofLength = reckon.product(TERM.expectedBondResistance, ofMetre, lengthWithin(length, lengthFound));
    const run = lengthOf(length, lengthFound);
    const judgement = agreement(
      reckon,
      QUESTION.bondFits,
      { shown: resistance, doubted: doubtedOf(resistance) },
      {
        shown: reckon.sum(TERM.expectedBondResistance, ofLength, JOINTS),
        doubted: run && isKnown(ofMetre) ? sumOf(timesOf(ofMetre.value, run), exactly(JOINTS.value)) : undefined,
      },
      "not-above",
    );
    return concluded(
      judgement,
      reckon.beside(() => [reckon.atMost(QUESTION.bondHabit, resistance, HABIT)]),
    );
  },
  examples: [
    {
      name: "27 m of 10 mm²",
      given: { resistance: "0.05 Ω", bond: "10 mm²", material: "copper", length: "27 m" },
      verdict: "met",
      values: { "expected-bond-resistance": { value: 0.04941, within: 1e-9 } },
      source: "BS EN 60228: 1.83 mΩ/m × 27 m = 0.0494 Ω",
    },
    {
      name: "a bad clamp",
      given: { resistance: "0.62 Ω", bond: "10 mm²", material: "copper", length: "12 m" },
      verdict: "not-met",
      source: "1.83 mΩ/m × 12 m = 0.022 Ω",
    },
    {
      name: "length not known",
      given: { resistance: "0.03 Ω", bond: "10 mm²", material: "copper" },
      verdict: "not-known",
      missing: ["length"],
      source: "input missing",
    },
  ],
});

const PRACTICE = source("habit of the trade", "none", "common-practice");
const JOINTS = assumed(
  TERM.resistance,
  0.05,
  "two clean joints and the instrument's leads stay within 0.05 Ω",
  undefined,
  PRACTICE,
);
const HABIT = assumed(TERM.bondResistance, 0.05, "a habit of the trade, whatever the length", undefined, PRACTICE);
