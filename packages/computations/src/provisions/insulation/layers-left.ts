import {
  factNotKnown,
  isKnown,
  isKnownFact,
  type Judgement,
  type Reckoner,
  type Remark,
  TERM,
} from "@good-grounds/core";
import { CABLE_CONSTRUCTIONS, LAYER_ROLES, type LayersLeft, layersLeft, layersOf } from "@good-grounds/tables";
import { concluded } from "../../check.ts";
import { asksQuantity, asksWord, asksYesNo, type Given } from "../../need.ts";
import { assessor } from "../assessor.ts";
import { wants } from "../verdicts.ts";
import { INSULATING } from "./matters.ts";

const needs = {
  construction: asksWord(INSULATING.construction, CABLE_CONSTRUCTIONS),
  outermost: asksWord(INSULATING.outermost, LAYER_ROLES, "what shows where the sheath is gone"),
  conductorSeen: asksYesNo(INSULATING.conductorSeen),
  containment: asksWord(INSULATING.containment, ["none", "conduit", "ducting", "trunking", "enclosure"]),
  containmentClosed: asksYesNo(INSULATING.containmentClosed, "trunking and enclosures; 521.10.1 asks IP4X or IPXXD"),
  length: asksQuantity(TERM.strippedLength, "50 mm; shown, decides nothing"),
};

/**
 * What remains of a cable where its sheath is stripped or absent over a length. Two things are asked: basic insulation
 * on every live conductor (416.1), and a mechanical layer over it, which is a sheath or armour that is left, or conduit,
 * ducting, closed trunking or an enclosure (521.10.1 for conductors without sheath, 526.8 at terminations). Length in m.
 * Sleeving is identification only; powder of mineral cable holds only inside its tube; a bare concentric neutral is
 * live. A protective conductor alone asks for neither.
 */
export const cableLayersLeft = assessor({
  id: "layers-left",
  provision: "insulation",
  title: "What is left of a cable without its sheath",
  formula: "basic insulation left, and a mechanical layer or a closed containment",
  regulations: ["416.1", "521.10.1", "526.5", "526.8"],
  needs,
  conclude(given, reckon) {
    const { construction, outermost, length } = given;
    if (!isKnownFact(construction) || !isKnownFact(outermost)) {
      return concluded(reckon.settled(INSULATING.layersHold, "not-known", "", construction, outermost));
    }
    const cable = layersOf(construction.word);
    if (cable.cores === 0) {
      return concluded(
        reckon.settled(INSULATING.layersHold, "not-applicable", "no live conductor", construction),
        [],
        [SLEEVING],
      );
    }
    const left = layersLeft(cable, outermost.word);
    if (left === undefined) {
      const why = `${cable.name} has no such layer`;
      const open = factNotKnown(INSULATING.outermost, outermost.detail.path, "not-tabulated", why);
      return concluded(reckon.settled(INSULATING.layersHold, "not-known", why, construction, outermost, open));
    }
    const judgement = reckon.all(
      INSULATING.layersHold,
      basic(given, left, reckon),
      reckon.any(INSULATING.mechanicalLeft, mechanical(given, left, reckon), enclosed(given, reckon)),
    );
    return concluded(
      judgement,
      [],
      [leftRemark(cable.name, left), ...(isKnown(length) && !left.mechanical ? [UNSHEATHED] : [])],
    );
  },
  examples: [
    {
      name: "flat cable stripped outside an accessory",
      given: {
        construction: "flat-twin-and-earth",
        outermost: "insulation",
        conductorSeen: "no",
        containment: "none",
        length: "60 mm",
      },
      verdict: "not-met",
      source: "BS 7671 526.8: cores without their sheath are to be enclosed; basic insulation is left",
    },
    {
      name: "the same inside a closed enclosure",
      given: {
        construction: "flat-twin-and-earth",
        outermost: "insulation",
        conductorSeen: "no",
        containment: "enclosure",
        containmentClosed: "yes",
      },
      verdict: "met",
      source: "BS 7671 526.5, 526.8",
    },
    {
      name: "insulated singles in conduit",
      given: { construction: "single-insulated", outermost: "insulation", conductorSeen: "no", containment: "conduit" },
      verdict: "met",
      source: "BS 7671 521.10.1",
    },
    {
      name: "singles in trunking without its lid",
      given: {
        construction: "single-insulated",
        outermost: "insulation",
        conductorSeen: "no",
        containment: "trunking",
        containmentClosed: "no",
      },
      verdict: "not-met",
      source: "BS 7671 521.10.1: IP4X or IPXXD, cover by a tool or on purpose",
    },
    {
      name: "armoured cable with its sheath torn, armour whole",
      given: { construction: "armoured-thermosetting", outermost: "armour", conductorSeen: "no", containment: "none" },
      verdict: "met",
      source: "insulation and armour are left; the torn sheath lets damp at the armour",
    },
    {
      name: "straight concentric without its sheath",
      given: { construction: "straight-concentric", outermost: "concentric", conductorSeen: "no", containment: "none" },
      verdict: "not-met",
      source: "the neutral wires lie bare",
    },
    {
      name: "sheathed tail",
      given: {
        construction: "single-insulated-and-sheathed",
        outermost: "sheath",
        conductorSeen: "no",
        containment: "none",
      },
      verdict: "met",
      source: "every layer is there",
    },
    {
      name: "containment not seen",
      given: { construction: "single-insulated", outermost: "insulation", conductorSeen: "no" },
      verdict: "not-known",
      missing: ["containment"],
      source: "an input that is missing leaves the judgement open",
    },
  ],
});

function basic(
  { construction, outermost, conductorSeen }: Given<typeof needs>,
  left: LayersLeft,
  reckon: Reckoner,
): Judgement {
  const byLayers = reckon.settled(
    INSULATING.basicLeft,
    left.basicInsulation ? "met" : "not-met",
    "",
    construction,
    outermost,
  );
  return reckon.all(INSULATING.basicLeft, byLayers, wants(reckon, INSULATING.noneBare, conductorSeen, false));
}

function mechanical({ construction, outermost }: Given<typeof needs>, left: LayersLeft, reckon: Reckoner): Judgement {
  return reckon.settled(INSULATING.mechanicalLeft, left.mechanical ? "met" : "not-met", "", construction, outermost);
}

/** Conduit and ducting are closed by their kind; trunking and enclosures only where they are shut. */
function enclosed({ containment, containmentClosed }: Given<typeof needs>, reckon: Reckoner): Judgement {
  if (!isKnownFact(containment)) return reckon.settled(INSULATING.enclosed, "not-known", "", containment);
  switch (containment.word) {
    case "none":
      return reckon.settled(INSULATING.enclosed, "not-met", "", containment);
    case "conduit":
    case "ducting":
      return reckon.settled(INSULATING.enclosed, "met", "", containment);
    default:
      return reckon.all(
        INSULATING.enclosed,
        reckon.settled(INSULATING.containment, "met", "", containment),
        wants(reckon, INSULATING.containmentClosed, containmentClosed),
      );
  }
}

function leftRemark(name: string, left: LayersLeft): Remark {
  const words = left.layers.map(({ role, of }) => `${role} (${of})`).join(", ");
  return Object.freeze({ code: "layers-left", words: `Left of ${name}, from the conductor outwards: ${words}.` });
}

const SLEEVING: Remark = Object.freeze({
  code: "sleeving-identifies",
  words:
    "Sleeving identifies a protective conductor and insulates it at its ends; it is no protection against touching a live part.",
});

const UNSHEATHED: Remark = Object.freeze({
  code: "length-unsheathed",
  words: "No mechanical layer is left over this length. How likely a knock is depends on where it lies.",
});
