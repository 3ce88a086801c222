import {
  BARRIERS_BEHIND,
  COMERS,
  COVERINGS,
  ENCLOSURE_KINDS,
  ENCLOSURE_MATTER,
  ENTRIES,
  FIRMNESSES,
  FIXINGS,
  KEY_HOLDERS,
  OBSTACLES,
  OPENED_BY,
  OPENING_FACES,
  OPENING_MATTER,
  OPENING_SHAPES,
  TERM,
  WEARS,
} from "@good-grounds/core";
import { countField, quantityField, wordField, wordsField, yesNoField } from "../make.ts";

/** Words for what covers a live part, the same for enclosures and conductors. */
export const COVERING_WORDS = {
  "double-or-reinforced": "double or reinforced insulation",
  sheathed: "insulation and sheath",
  "basic-sound": "basic insulation alone, sound",
  "basic-damaged": "basic insulation, damaged, no live metal in reach",
  bare: "bare live metal",
} as const;

/** What stands around live parts: how it holds, how it opens, who comes there and what wears on it. */
export const ENCLOSURE = Object.freeze({
  kind: wordField(ENCLOSURE_MATTER.kind, ENCLOSURE_KINDS, { label: "What it is" }),
  covering: wordField(ENCLOSURE_MATTER.covering, COVERINGS, { label: "Live part within" }, COVERING_WORDS),
  fixing: wordField(
    ENCLOSURE_MATTER.fixing,
    FIXINGS,
    { label: "Held by" },
    { "laid-on": "nothing: laid or pushed on", none: "nothing: hangs" },
  ),
  screws: countField(100, { label: "Screws there", meaning: "number of screws that are there" }),
  screwsMade: countField(100, { label: "Screws it is made for", meaning: "number of screws it is made for" }),
  firmness: wordField(
    ENCLOSURE_MATTER.firmness,
    FIRMNESSES,
    { label: "Whole and firm" },
    { "fixings-missing": "fixings missing, held all the same", gone: "gone, or a hole in it" },
  ),
  hinges: yesNoField(ENCLOSURE_MATTER.hinges, { label: "Hinges carry" }),
  openedBy: wordField(
    ENCLOSURE_MATTER.openedBy,
    OPENED_BY,
    { label: "Opens" },
    {
      destruction: "only by breaking it",
      interlock: "only when dead, by interlock",
      tool: "by a tool",
      key: "by a key",
      hand: "by hand",
    },
  ),
  lockWorks: yesNoField(ENCLOSURE_MATTER.lockWorks, { label: "Lock turns and locks" }),
  keyHolder: wordField(ENCLOSURE_MATTER.keyHolder, KEY_HOLDERS, { label: "Key held by" }),
  comers: wordField(ENCLOSURE_MATTER.comers, COMERS, { label: "Who comes there" }),
  wear: wordsField(ENCLOSURE_MATTER.wear, WEARS, { label: "What wears on it" }),
  entry: wordField(
    ENCLOSURE_MATTER.entry,
    ENTRIES,
    { label: "What gets in", help: "tried with the probes" },
    {
      "wire-on-top": "a 1 mm wire, through the top only",
      "finger-short-of-live": "a finger, not to live metal",
      "finger-to-live": "a finger, to live metal",
      hand: "a hand or more",
    },
  ),
  obstacle: wordField(ENCLOSURE_MATTER.obstacle, OBSTACLES, { label: "Obstacle before it" }),
  height: quantityField(TERM.heightAboveSurface, {
    label: "Height of the live part",
    help: "above where people stand",
  }),
  aside: quantityField(TERM.distanceFromEdge, { label: "Distance sideways", help: "from where people stand" }),
});

/** One opening of it. */
export const OPENING = Object.freeze({
  shape: wordField(OPENING_MATTER.shape, OPENING_SHAPES, { label: "Shape" }),
  face: wordField(OPENING_MATTER.face, OPENING_FACES, { label: "In the" }),
  easyReach: yesNoField(OPENING_MATTER.easyReach, { label: "Top in easy reach" }),
  width: quantityField(TERM.openingWidth, { label: "Width", help: "the diameter where it is round", symbol: "mm" }),
  height: quantityField(TERM.openingHeight, { label: "Height", help: "left out where it is round", symbol: "mm" }),
  depth: quantityField(TERM.depthToLive, { label: "Depth to live metal", symbol: "mm" }),
  offset: quantityField(TERM.offsetToLive, { label: "Sideways to live metal", symbol: "mm" }),
  behind: wordField(
    OPENING_MATTER.behind,
    BARRIERS_BEHIND,
    { label: "Barrier behind" },
    { "stops-wire": "keeps a wire off", "stops-finger": "keeps a finger off" },
  ),
});
