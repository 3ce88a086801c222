import { isKnownFact, PREMISES_USES, type Remark } from "@good-grounds/core";
import { concluded } from "../../check.ts";
import { ASKED } from "../../matters.ts";
import { asksWord, asksYesNo } from "../../need.ts";
import { assessor } from "../assessor.ts";
import { wants, wantsOneOf } from "../verdicts.ts";
import { THERMAL } from "./matters.ts";

const HOMES: readonly string[] = ["dwelling", "house-in-multiple-occupation"];

/**
 * Consumer units and similar assemblies in homes: an enclosure of material that does not burn, such as steel, or a
 * cabinet of such material round it (421.1.201, from 1 January 2016). Elsewhere it is not asked. Older plastic units were
 * made to the rules of their day: what endangers is heat inside them and where they stand.
 */
export const consumerUnitMaterial = assessor({
  id: "consumer-unit-material",
  provision: "thermal-protection",
  title: "Consumer unit does not feed a fire",
  formula: "home: enclosure or cabinet that does not burn",
  regulations: ["421.1.201"],
  needs: {
    use: asksWord(ASKED.use, PREMISES_USES),
    enclosureMaterial: asksWord(THERMAL.enclosureMaterial, ["steel", "other-non-combustible", "combustible"]),
    inCabinet: asksYesNo(THERMAL.inCabinet),
  },
  conclude({ use, enclosureMaterial, inCabinet }, reckon) {
    if (isKnownFact(use) && !HOMES.includes(use.word)) {
      return concluded(reckon.settled(THERMAL.material, "not-applicable", "not asked here", use));
    }
    const sound = reckon.any(
      THERMAL.material,
      wantsOneOf(reckon, THERMAL.enclosureMaterial, enclosureMaterial, ["steel", "other-non-combustible"]),
      wants(reckon, THERMAL.inCabinet, inCabinet),
    );
    const open = !isKnownFact(use) && sound.verdict === "not-met";
    const judgement = open ? reckon.settled(THERMAL.material, "not-known", "asked in homes", use, sound) : sound;
    return concluded(judgement, [], judgement.verdict === "not-met" ? [OLDER] : []);
  },
  examples: [
    {
      name: "steel in a home",
      given: { use: "dwelling", enclosureMaterial: "steel" },
      verdict: "met",
      source: "BS 7671 421.1.201",
    },
    {
      name: "plastic in a home",
      given: { use: "dwelling", enclosureMaterial: "combustible", inCabinet: "no" },
      verdict: "not-met",
      source: "BS 7671 421.1.201",
    },
    {
      name: "plastic in a shop",
      given: { use: "shop", enclosureMaterial: "combustible" },
      verdict: "not-applicable",
      source: "BS 7671 421.1.201: homes",
    },
    {
      name: "plastic, use not known",
      given: { enclosureMaterial: "combustible", inCabinet: "no" },
      verdict: "not-known",
      missing: ["use"],
      source: "an input that is missing leaves the judgement open",
    },
  ],
});

const OLDER: Remark = Object.freeze({
  code: "unit-made-before",
  words:
    "Units fitted before 2016 were made to the rules of their day. Look for heat inside, what lies above and whether it stands in the way out.",
});
