import {
  type Fact,
  factNotKnown,
  isKnownFact,
  type Judgement,
  RCD_TYPES,
  type RcdType,
  type Reckoner,
  type Remark,
} from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";
import { RESIDUAL_LOADS, type ResidualLoad, typesForLoad } from "@good-grounds/tables";
import { concluded } from "../../check.ts";
import { asksWord, asksWords, asksYesNo } from "../../need.ts";
import { assessor } from "../assessor.ts";
import { wants } from "../verdicts.ts";
import { ADDITIONAL } from "./matters.ts";

/**
 * Whether the type of an RCD (AC, A, F, B) responds to the residual current its loads can cause in a fault (531.3.3).
 * Every load behind it has to be answered; a statement of the equipment's maker that the type is enough counts,
 * and where it was not asked for the question stays open. A type
 * too low is not known to fail: how it behaves with direct current is not defined.
 */
export const rcdTypeSuits = assessor({
  id: "rcd-type-suits",
  provision: "additional-protection",
  title: "Type of the RCD suits its loads",
  formula: "type among those that respond to every load",
  regulations: ["531.3.3", "712.531.3.5", "722.531.3.101"],
  needs: {
    type: asksWord(MATTER.rcdType, RCD_TYPES),
    loads: asksWords(ADDITIONAL.loads, RESIDUAL_LOADS, "repeat for several"),
    declared: asksYesNo(ADDITIONAL.declared),
  },
  conclude({ type, loads, declared }, reckon) {
    if (loads.length === 0) {
      return concluded(
        reckon.settled(
          ADDITIONAL.typeSuits,
          "not-known",
          "no load is named",
          type,
          factNotKnown(ADDITIONAL.loads, ["loads"]),
        ),
      );
    }
    const judgement = reckon.all(ADDITIONAL.typeSuits, ...loads.map((load) => suits(type, load, declared, reckon)));
    return concluded(judgement, [], judgement.verdict === "not-met" ? [UNDEFINED] : []);
  },
  examples: [
    {
      name: "type A on sockets",
      given: { type: "A", loads: ["socket-outlets"] },
      verdict: "met",
      source: "BS 7671 531.3.3",
    },
    {
      name: "type AC on an immersion heater",
      given: { type: "AC", loads: ["resistive-fixed"] },
      verdict: "met",
      source: "BS 7671 531.3.3: fixed equipment known to give no direct current",
    },
    {
      name: "type AC on sockets",
      given: { type: "AC", loads: ["socket-outlets"] },
      verdict: "not-met",
      source: "BS 7671 531.3.3",
    },
    {
      name: "type A with a three-phase drive among its loads",
      given: { type: "A", loads: ["resistive-fixed", "frequency-controlled-three-phase"], declared: "no" },
      verdict: "not-met",
      source: "BS 7671 531.3.3: smooth direct current asks type B",
    },
    {
      name: "inverter whose maker accepts type A",
      given: { type: "A", loads: ["inverter-without-separation"], declared: "yes" },
      verdict: "met",
      source: "BS 7671 712.531.3.5: the maker's statement counts",
    },
    {
      name: "type not legible",
      given: { loads: ["socket-outlets"] },
      verdict: "not-known",
      missing: ["rcd-type"],
      source: "an input that is missing leaves the judgement open",
    },
  ],
});

/** Loads that are no piece of equipment whose maker could state a type. */
const WITHOUT_MAKER: readonly ResidualLoad[] = ["resistive-fixed", "socket-outlets"];

function suits(type: Fact<RcdType>, load: Fact<ResidualLoad>, declared: Fact<boolean>, reckon: Reckoner): Judgement {
  const byType = responds(type, load, reckon);
  if (isKnownFact(load) && WITHOUT_MAKER.includes(load.word)) return byType;
  return reckon.any(ADDITIONAL.typeForLoad, byType, wants(reckon, ADDITIONAL.declared, declared));
}

function responds(type: Fact<RcdType>, load: Fact<ResidualLoad>, reckon: Reckoner): Judgement {
  if (!isKnownFact(load)) return reckon.settled(ADDITIONAL.typeForLoad, "not-known", "", load);
  const { types, why } = typesForLoad(load.word);
  if (!isKnownFact(type)) return reckon.settled(ADDITIONAL.typeForLoad, "not-known", why, type, load);
  return reckon.settled(ADDITIONAL.typeForLoad, types.includes(type.word) ? "met" : "not-met", why, type, load);
}

const UNDEFINED: Remark = Object.freeze({
  code: "type-behaviour-undefined",
  words:
    "How this type behaves with such a residual current is not defined: it may still operate. It weighs more where the RCD is also the fault protection.",
});
