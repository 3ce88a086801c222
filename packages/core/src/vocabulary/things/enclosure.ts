import { matter } from "../../terms/term.ts";

/** What stands around live parts. `barrier`: closes one direction. `obstacle`: only keeps people from coming near. */
export const ENCLOSURE_KINDS = ["cupboard", "board", "box", "trunking", "accessory", "barrier", "obstacle"] as const;
export type EnclosureKind = (typeof ENCLOSURE_KINDS)[number];

/**
 * What covers a live part itself, best first. `basic-damaged`: basic insulation is damaged and no live metal is in reach.
 * The same words say which layer of a conductor is outermost.
 */
export const COVERINGS = ["double-or-reinforced", "sheathed", "basic-sound", "basic-damaged", "bare"] as const;
export type Covering = (typeof COVERINGS)[number];

/** How an enclosure or its cover is held to its place. */
export const FIXINGS = ["screws", "hinge-and-catch", "clips", "laid-on", "none"] as const;
export type Fixing = (typeof FIXINGS)[number];

/** How whole and firm it is, best first. `fixings-missing`: held all the same. `gone`: not there, or a hole in it. */
export const FIRMNESSES = ["whole", "fixings-missing", "loose-or-hanging", "gone"] as const;
export type Firmness = (typeof FIRMNESSES)[number];

/** What it takes to open it, best first. A lock that does not work is opened by hand: see `lock-works`. */
export const OPENED_BY = ["destruction", "interlock", "tool", "key", "hand", "stands-open"] as const;
export type OpenedBy = (typeof OPENED_BY)[number];

/** Who has the key, best first. */
export const KEY_HOLDERS = ["skilled", "keeper", "many", "anyone"] as const;
export type KeyHolder = (typeof KEY_HOLDERS)[number];

/** What wears on it in use. */
export const WEARS = ["nothing", "knocks-or-rubbing", "stored-or-moved-things", "heat", "weather", "rodents"] as const;
export type Wear = (typeof WEARS)[number];

/** What gets in by the probes, best first. `wire-on-top`: a 1 mm wire, through a horizontal top only. */
export const ENTRIES = ["nothing", "wire-on-top", "finger-short-of-live", "finger-to-live", "hand"] as const;
export type Entry = (typeof ENTRIES)[number];

/** An obstacle before live parts, best first. */
export const OBSTACLES = ["secured", "not-secured", "none"] as const;
export type Obstacle = (typeof OBSTACLES)[number];

export const OPENING_SHAPES = ["rectangular", "round", "irregular"] as const;
export type OpeningShape = (typeof OPENING_SHAPES)[number];

export const OPENING_FACES = ["front", "side", "top", "bottom"] as const;
export type OpeningFace = (typeof OPENING_FACES)[number];

/** What stands between an opening and the live part: the least probe it keeps off. */
export const BARRIERS_BEHIND = ["stops-wire", "stops-finger", "none"] as const;
export type BarrierBehind = (typeof BARRIERS_BEHIND)[number];

/** What is asked about an enclosure, a barrier or an obstacle. */
export const ENCLOSURE_MATTER = Object.freeze({
  kind: matter("enclosure-kind", "what stands around the live parts"),
  covering: matter("covering", "covering of the live part within"),
  fixing: matter("enclosure-fixing", "how it is fixed"),
  firmness: matter("enclosure-firmness", "how whole and firm it is"),
  hinges: matter("hinges-carry", "the hinges carry"),
  openedBy: matter("enclosure-opened-by", "what opens it"),
  lockWorks: matter("lock-works", "the lock turns and locks"),
  keyHolder: matter("key-holder", "who has the key"),
  comers: matter("enclosure-comers", "who comes there"),
  wear: matter("enclosure-wear", "what wears on it"),
  entry: matter("enclosure-entry", "what gets in"),
  obstacle: matter("enclosure-obstacle", "obstacle before the live parts"),
});

/** What is asked about an opening of an enclosure. */
export const OPENING_MATTER = Object.freeze({
  shape: matter("opening-shape", "shape of the opening"),
  face: matter("opening-face", "face that the opening is in"),
  behind: matter("barrier-behind", "barrier between the opening and the live part"),
  easyReach: matter("top-in-easy-reach", "the top can be reached easily"),
});
