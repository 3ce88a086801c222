import { isKnown, isKnownFact, type Judgement, type Remark } from "@good-grounds/core";
import { type Installed, isHot } from "./installed-capacity.ts";

/** What a reader has to know of the conditions a capacity holds under, where the judgement rests on them. */
export function capacityRemarks(given: Installed, { verdict }: Judgement): readonly Remark[] {
  const { ambient, groupedCircuits, insulation, hotTerminals } = given;
  const isShort = verdict === "not-met" || verdict === "too-near";
  return [
    ...(isKnown(ambient) && isKnown(groupedCircuits) ? [] : [CONDITIONS]),
    ...(isShort && isHot(insulation) && !isKnownFact(hotTerminals) ? [TERMINALS] : []),
    ...(isShort && isKnown(groupedCircuits) && groupedCircuits.high > 1 ? [LIGHTLY_LOADED] : []),
  ];
}

const CONDITIONS: Remark = Object.freeze({
  code: "capacity-conditions-assumed",
  words: "Ambient temperature or grouping was not recorded: the capacity holds for 30 °C and a circuit by itself.",
});

const TERMINALS: Remark = Object.freeze({
  code: "terminals-at-70",
  words:
    "The cable may run at 90 °C, its terminals as a rule only at 70 °C (512.1.5, from memory): without a mark for 90 °C the capacity at 70 °C counts.",
});

const LIGHTLY_LOADED: Remark = Object.freeze({
  code: "lightly-loaded-group",
  words:
    "A circuit of the group that carries at most 30 % of its grouped rating need not be counted, and unequal loads may be reckoned one by one (523.5, Appendix 4, from memory): count those that are loaded.",
});
