import {
  CONDUCTOR_MATERIALS,
  isExact,
  isKnownFact,
  type Judgement,
  type Reckoner,
  type Remark,
  TERM,
} from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { buriedEarthingConductor, cpcBySelection, notTabulated } from "@good-grounds/tables";
import { check, concluded } from "../check.ts";
import { QUESTION } from "../matters.ts";
import { asksQuantity, asksWord, asksYesNo, type Given } from "../need.ts";

const needs = {
  earthing: asksQuantity(TERM.earthingArea, "16 mm²"),
  tails: asksQuantity(TERM.tailsArea, "25 mm²"),
  material: asksWord(MATTER.material, CONDUCTOR_MATERIALS, "of the earthing conductor"),
  arrangement: asksWord(MATTER.earthingArrangement, ["separate", "in-cable", "buried"]),
  sheathed: asksYesNo(MATTER.sheathed),
  mechanicallyProtected: asksYesNo(MATTER.mechanicallyProtected),
};

/**
 * Size of the earthing conductor by selection from the tails (542.3.1, Table 54.7), and where it is buried also against
 * Table 54.1. Sizes in mm², copper. A smaller conductor can be shown enough by the adiabatic check.
 */
export const earthingConductorSize = check({
  id: "earthing-conductor-size",
  scope: "supply",
  title: "Size of the earthing conductor by selection",
  formula: "Se ≥ S (Table 54.7); buried: Se ≥ Table 54.1",
  regulations: ["542.3.1", "543.1.1", "543.1.4"],
  needs,
  gather: ({ supply }) => ({
    earthing: supply.earthingConductor.size,
    tails: supply.tails.size,
    material: supply.earthingConductor.material,
    arrangement: supply.earthingConductor.arrangement,
    sheathed: supply.earthingConductor.sheathed,
    mechanicallyProtected: supply.earthingConductor.mechanicallyProtected,
  }),
  conclude(given, reckon) {
    const { earthing, tails, material } = given;
    const figure = isExact(tails) ? cpcBySelection(tails.value) : undefined;
    const selection = reckon.atLeast(
      QUESTION.earthingConductorSize,
      earthing,
      reckon.lookedUp(TERM.requiredArea, figure, tails),
    );
    const parts = [selection, ...buried(given, reckon)];
    if (isKnownFact(material) && material.word !== "copper") {
      parts.push(
        reckon.settled(
          QUESTION.earthingConductorSize,
          "not-known",
          "only copper is tabulated here",
          material,
          notTabulated(TERM.requiredArea, "BS 7671 Table 54.7 as carried here", material.word),
        ),
      );
    }
    const judgement = reckon.all(QUESTION.earthingConductorSize, ...parts);
    // Selection by the tails speaks of copper; the floor for a buried conductor is a question of its own.
    const isCopper = !isKnownFact(material) || material.word === "copper";
    return concluded(judgement, [], selection.verdict === "not-met" ? [SELECTION_ONLY] : [], [
      isCopper ? selection : judgement,
    ]);
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
      verdict: "not-met",
      source: "BS 7671 Table 54.7: 16 mm²",
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
      name: "aluminium, for which no size is carried",
      given: { earthing: "16 mm²", tails: "25 mm²", arrangement: "separate", material: "aluminium" },
      verdict: "not-known",
      missing: ["required-area"],
      source: "BS 7671 543.1.4 asks for k1 ÷ k2 times the copper size, which is not reckoned here",
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

function buried(
  { earthing, arrangement, sheathed, mechanicallyProtected }: Given<typeof needs>,
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

const SELECTION_ONLY: Remark = Object.freeze({
  code: "selection-only",
  words:
    "Selection is one of two ways: a size that withstands the fault by calculation (543.1.3) is enough, unless the conductor is buried. That is a check of its own.",
});
