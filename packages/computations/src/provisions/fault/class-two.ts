import { isKnownFact } from "@good-grounds/core";
import { concluded } from "../../check.ts";
import { asksWord, asksYesNo } from "../../need.ts";
import { assessor } from "../assessor.ts";
import { wants, wantsOneOf } from "../verdicts.ts";
import { FAULT } from "./matters.ts";

/**
 * Fault protection by double or reinforced insulation (412). Equipment: marked class II, its enclosure whole, no metal
 * through it (412.2). A circuit as well: a protective conductor run to each point all the same, or effective supervision
 * (412.2.3.2). A whole installation or a circuit that rests on this measure alone: only under effective supervision that
 * keeps anyone from fitting something of class I (412.1.3), which a home seldom has.
 */
export const classTwo = assessor({
  id: "class-two",
  provision: "fault-protection",
  title: "Double or reinforced insulation gives fault protection",
  formula: "class II and whole; as sole measure only under effective supervision",
  regulations: ["412.1.3", "412.2", "412.2.3.2"],
  needs: {
    measureScope: asksWord(FAULT.measureScope, ["equipment", "circuit", "whole-installation"]),
    marked: asksYesNo(FAULT.marked),
    intact: asksYesNo(FAULT.intact),
    cpcAtPoint: asksYesNo(FAULT.cpcAtPoint),
    supervised: asksYesNo(FAULT.supervised),
  },
  conclude({ measureScope, marked, intact, cpcAtPoint, supervised }, reckon) {
    const equipment = [wants(reckon, FAULT.marked, marked), wants(reckon, FAULT.intact, intact)];
    const onlyEquipment = wantsOneOf(reckon, FAULT.measureScope, measureScope, ["equipment"]);
    const guarded = wants(reckon, FAULT.supervised, supervised);
    const whole = isKnownFact(measureScope) && measureScope.word === "whole-installation";
    // A conductor at each point helps a circuit and not a whole installation, so it settles nothing while the scope is open.
    const cpc = wants(reckon, FAULT.cpcAtPoint, cpcAtPoint);
    const partWithCpc = isKnownFact(measureScope)
      ? cpc
      : reckon.all(
          FAULT.cpcAtPoint,
          wantsOneOf(reckon, FAULT.measureScope, measureScope, ["equipment", "circuit"]),
          cpc,
        );
    const sole = whole ? guarded : reckon.any(FAULT.soleMeasure, onlyEquipment, partWithCpc, guarded);
    return concluded(reckon.all(FAULT.doubleInsulation, ...equipment, sole));
  },
  examples: [
    {
      name: "class II luminaire",
      given: { measureScope: "equipment", marked: "yes", intact: "yes" },
      verdict: "met",
      source: "BS 7671 412.2",
    },
    {
      name: "lighting circuit without cpc in a home",
      given: { measureScope: "circuit", marked: "yes", intact: "yes", cpcAtPoint: "no", supervised: "no" },
      verdict: "not-met",
      source: "BS 7671 412.1.3, 412.2.3.2",
    },
    {
      name: "whole installation under supervision",
      given: { measureScope: "whole-installation", marked: "yes", intact: "yes", supervised: "yes" },
      verdict: "met",
      source: "BS 7671 412.1.3",
    },
    {
      name: "whole installation, cpc run but not supervised",
      given: { measureScope: "whole-installation", marked: "yes", intact: "yes", cpcAtPoint: "yes", supervised: "no" },
      verdict: "not-met",
      source: "BS 7671 412.1.3: only under effective supervision",
    },
    {
      name: "cpc run, not told whether a circuit or the whole rests on it",
      given: { marked: "yes", intact: "yes", cpcAtPoint: "yes", supervised: "no" },
      verdict: "not-known",
      missing: ["measure-scope"],
      source: "BS 7671 412.1.3 and 412.2.3.2 answer differently",
    },
    {
      name: "class not established",
      given: { measureScope: "equipment", intact: "yes" },
      verdict: "not-known",
      missing: ["class-two-marked"],
      source: "an input that is missing leaves the judgement open",
    },
  ],
});
