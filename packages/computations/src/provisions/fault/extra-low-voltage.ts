import { isKnownFact, published, type Reckoner, TERM } from "@good-grounds/core";
import { source } from "@good-grounds/tables";
import { concluded } from "../../check.ts";
import { asksQuantity, asksWord, asksYesNo, type Given } from "../../need.ts";
import { assessor } from "../assessor.ts";
import { wants, wantsOneOf } from "../verdicts.ts";
import { FAULT } from "./matters.ts";

const LIMITS = source("BS 7671 414.1 and Part 2, extra-low voltage", "2008 to 2018+A4", "memory");

/** Largest nominal voltage of extra-low voltage, V: 50 V alternating, 120 V ripple-free direct. */
const LIMIT = Object.freeze({
  alternating: published(TERM.nominalVoltage, 50, LIMITS, "alternating"),
  direct: published(TERM.nominalVoltage, 120, LIMITS, "direct, ripple-free"),
});

const needs = {
  lowKind: asksWord(FAULT.lowKind, ["SELV", "PELV", "FELV"]),
  current: asksWord(FAULT.lowCurrent, ["alternating", "direct"]),
  nominalVoltage: asksQuantity(TERM.nominalVoltage, "12 V"),
  safeSource: asksYesNo(FAULT.safeSource),
  separated: asksYesNo(FAULT.separated),
  toEarth: asksYesNo(FAULT.toEarth, "allowed for PELV, never for SELV"),
};

/**
 * Protection by extra-low voltage (414): at most 50 V alternating or 120 V direct, from a source that separates safely
 * (414.3), apart from all other circuits (414.4), for SELV joined to no earth. FELV (411.7) is no such measure. Voltages
 * in V. Bare parts above 25 V alternating or 60 V direct, less where it is wet, still want basic protection.
 */
export const extraLowVoltage = assessor({
  id: "extra-low-voltage",
  provision: "fault-protection",
  title: "Extra-low voltage protects",
  formula: "Un ≤ 50 V a.c. or 120 V d.c., safe source, separated, SELV not earthed",
  regulations: ["414.1", "414.3", "414.4"],
  needs,
  conclude(given, reckon) {
    const { lowKind, separated, safeSource, toEarth } = given;
    const unearthed = reckon.any(
      FAULT.unearthed,
      wantsOneOf(reckon, FAULT.lowKind, lowKind, ["PELV"]),
      wants(reckon, FAULT.toEarth, toEarth, false),
    );
    return concluded(
      reckon.all(
        FAULT.extraLow,
        wantsOneOf(reckon, FAULT.lowKind, lowKind, ["SELV", "PELV"]),
        within(given, reckon),
        wants(reckon, FAULT.safeSource, safeSource),
        wants(reckon, FAULT.separated, separated),
        unearthed,
      ),
    );
  },
  examples: [
    {
      name: "12 V lighting",
      given: {
        lowKind: "SELV",
        current: "alternating",
        nominalVoltage: "12 V",
        safeSource: "yes",
        separated: "yes",
        toEarth: "no",
      },
      verdict: "met",
      source: "BS 7671 414",
    },
    {
      name: "at the limit, direct current",
      given: {
        lowKind: "PELV",
        current: "direct",
        nominalVoltage: "120 V",
        safeSource: "yes",
        separated: "yes",
        toEarth: "yes",
      },
      verdict: "met",
      source: "BS 7671 414.1: up to 120 V direct",
    },
    {
      name: "autotransformer",
      given: {
        lowKind: "SELV",
        current: "alternating",
        nominalVoltage: "24 V",
        safeSource: "no",
        separated: "yes",
        toEarth: "no",
      },
      verdict: "not-met",
      source: "BS 7671 414.3",
    },
    {
      name: "source not seen",
      given: { lowKind: "SELV", current: "alternating", nominalVoltage: "24 V", separated: "yes", toEarth: "no" },
      verdict: "not-known",
      missing: ["safe-source"],
      source: "an input that is missing leaves the judgement open",
    },
  ],
});

function within({ current, nominalVoltage }: Given<typeof needs>, reckon: Reckoner) {
  const limit = isKnownFact(current) ? LIMIT[current.word] : undefined;
  return reckon.atMost(FAULT.lowVoltage, nominalVoltage, reckon.lookedUp(TERM.nominalVoltage, limit, current));
}
