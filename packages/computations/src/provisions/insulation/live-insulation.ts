import {
  type Fact,
  factNotKnown,
  isKnownFact,
  type Judgement,
  type Reckoner,
  type Remark,
  type Verdict,
} from "@good-grounds/core";
import { concluded } from "../../check.ts";
import { asksWord, asksWords, asksYesNo, type Given } from "../../need.ts";
import { assessor } from "../assessor.ts";
import { wants, wantsOneOf } from "../verdicts.ts";
import { INSULATING } from "./matters.ts";

/** Damage to insulation, lightest first. */
const INSULATION_DAMAGES = [
  "none",
  "scuffed",
  "nicked",
  "crushed",
  "hardened-by-heat",
  "perished",
  "cut-through",
] as const;
type Damage = (typeof INSULATION_DAMAGES)[number];

const needs = {
  coverage: asksWord(INSULATING.coverage, ["complete", "partial", "none"]),
  removal: asksWord(INSULATING.removal, ["destruction", "hand", "tool"]),
  origin: asksWord(INSULATING.origin, ["factory", "site"], "factory: equipment or cable to a product standard"),
  siteMaterial: asksWord(INSULATING.siteMaterial, ["rated-tape-or-sleeve", "paint-or-varnish", "other"]),
  damages: asksWords(INSULATING.damage, INSULATION_DAMAGES, "repeat for several"),
  conductorSeen: asksYesNo(INSULATING.conductorSeen),
  crumbles: asksYesNo(INSULATING.crumbles),
};

/**
 * Basic protection by insulation (416.1): live parts covered all over, with insulation that only destruction removes; put
 * on in the factory to a product standard, or on site with material made for it (paint, varnish and the like alone are
 * not). Damage counts by what it leaves: a nick or a crushed place by whether conductor shows, perished or heat-hardened
 * insulation by whether it cracks when moved gently as well. No figures; an insulation resistance within its limit does not
 * answer any of this.
 */
export const liveInsulation = assessor({
  id: "live-insulation",
  provision: "insulation",
  title: "Live parts are insulated",
  formula: "covered all over, lasting, made for it, not damaged through",
  regulations: ["416.1", "651.2"],
  needs,
  conclude(given, reckon) {
    const judgement = reckon.all(
      INSULATING.holds,
      wantsOneOf(reckon, INSULATING.covered, given.coverage, ["complete"]),
      wantsOneOf(reckon, INSULATING.lasting, given.removal, ["destruction"]),
      fit(given, reckon),
      ...soundness(given, reckon),
    );
    return concluded(judgement, [], judgement.verdict === "met" && given.damages.some(marked) ? [DAMAGED] : []);
  },
  examples: [
    {
      name: "sound core of a cable",
      given: { coverage: "complete", removal: "destruction", origin: "factory", damages: ["none"] },
      verdict: "met",
      source: "BS 7671 416.1",
    },
    {
      name: "nicked, no conductor to be seen",
      given: {
        coverage: "complete",
        removal: "destruction",
        origin: "factory",
        damages: ["nicked"],
        conductorSeen: "no",
      },
      verdict: "met",
      source: "BS 7671 416.1: the conductor is still covered",
    },
    {
      name: "rubber that falls off when moved",
      given: {
        coverage: "complete",
        removal: "destruction",
        origin: "factory",
        damages: ["perished"],
        crumbles: "yes",
      },
      verdict: "not-met",
      source: "BS 7671 416.1, 651.2",
    },
    {
      name: "hardened by heat, holds when moved",
      given: {
        coverage: "complete",
        removal: "destruction",
        origin: "factory",
        damages: ["hardened-by-heat"],
        crumbles: "no",
        conductorSeen: "no",
      },
      verdict: "met",
      source: "BS 7671 416.1: it still covers the conductor; the heat is another matter",
    },
    {
      name: "varnish alone",
      given: {
        coverage: "complete",
        removal: "destruction",
        origin: "site",
        siteMaterial: "paint-or-varnish",
        damages: ["none"],
      },
      verdict: "not-met",
      source: "BS 7671 416.1, note: paint and varnish alone are not sufficient",
    },
    {
      name: "bare in part, all else unknown",
      given: { coverage: "partial" },
      verdict: "not-met",
      source: "BS 7671 416.1",
    },
    {
      name: "crushed, not looked into",
      given: { coverage: "complete", removal: "destruction", origin: "factory", damages: ["crushed"] },
      verdict: "not-known",
      missing: ["conductor-seen"],
      source: "what is left under the damage decides",
    },
  ],
});

function fit({ origin, siteMaterial }: Given<typeof needs>, reckon: Reckoner): Judgement {
  if (isKnownFact(origin) && origin.word === "site") {
    return wantsOneOf(reckon, INSULATING.fit, siteMaterial, ["rated-tape-or-sleeve"], "put on at site");
  }
  return wantsOneOf(reckon, INSULATING.fit, origin, ["factory"]);
}

function soundness({ damages, conductorSeen, crumbles }: Given<typeof needs>, reckon: Reckoner): readonly Judgement[] {
  if (damages.length === 0)
    return [
      reckon.settled(
        INSULATING.sound,
        "not-known",
        "damage not looked for",
        factNotKnown(INSULATING.damage, ["damages"]),
      ),
    ];
  return damages.map((damage) => {
    if (!isKnownFact(damage)) return reckon.settled(INSULATING.sound, "not-known", "", damage);
    switch (damage.word) {
      case "none":
      case "scuffed":
        return reckon.settled(INSULATING.sound, "met", "", damage);
      case "nicked":
      case "crushed":
        return shown(damage, conductorSeen, reckon);
      case "hardened-by-heat":
      case "perished":
        return reckon.all(
          INSULATING.sound,
          wants(reckon, INSULATING.keepsTogether, crumbles, false),
          shown(damage, conductorSeen, reckon),
        );
      default:
        return reckon.settled(INSULATING.sound, "not-met", "conductor laid bare", damage);
    }
  });
}

/** A place whose depth of damage decides. */
function shown(damage: Fact<Damage>, conductorSeen: Fact<boolean>, reckon: Reckoner): Judgement {
  const verdict: Verdict = isKnownFact(conductorSeen) ? (conductorSeen.word ? "not-met" : "met") : "not-known";
  return reckon.settled(INSULATING.sound, verdict, "", damage, conductorSeen);
}

function marked(damage: Fact<Damage>): boolean {
  return isKnownFact(damage) && damage.word !== "none";
}

const DAMAGED: Remark = Object.freeze({
  code: "insulation-marked",
  words:
    "The insulation is damaged but covers the conductor now. What caused the damage may go on: say so, and how soon it is to be seen to.",
});
