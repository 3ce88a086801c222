import type { SameClass } from "./row.ts";

type Facts = SameClass["facts"];

/** Ends that are live, clear of other metal; and the loose end of a circuit that nobody knew. */
const ENDS: Facts = { live: "live", "metal-beside": "no" };
const UNKNOWN: Facts = { label: "yes", "far-end": "loose", service: "on" };

const OPEN: Facts = { "gets-in": "hand", "cover-fixing": "open", "cover-opens": "stands-open" };
const SCREWED: Facts = { "gets-in": "nothing", "cover-fixing": "whole", "cover-opens": "tool" };
const BY_HAND: Facts = { "gets-in": "nothing", "cover-fixing": "whole", "cover-opens": "hand" };
const NO_BARRIER: Facts = { "barrier-behind": "no" };
const IN_REACH: Facts = { "arms-reach": "within", "wet-or-conductive": "no" };
const NO_OBSTACLE: Facts = { obstacle: "none" };
const ANYONE: Facts = { "who-comes": "anyone" };
const CHILDREN: Facts = { "who-comes": "children-or-less-able" };
const MANY: Facts = { "who-comes": "many-keys" };
const SKILLED: Facts = { "who-comes": "skilled-only" };
const KEEPER: Facts = { "who-comes": "named-keeper" };

const ends = (situation: string, ...facts: readonly Facts[]): SameClass => ({
  topic: "live-conductors-unterminated",
  situation,
  facts: Object.assign({}, ENDS, NO_BARRIER, NO_OBSTACLE, ...facts),
});
const unknown = (situation: string, ...facts: readonly Facts[]): SameClass => ({
  topic: "circuit-unidentified",
  situation,
  facts: Object.assign({}, UNKNOWN, ...facts),
});
const covered = (by: string, wears = "nothing"): Facts => ({ "live-covering": by, wears });

export const CIRCUITS: readonly SameClass[] = [
  ends("double-insulated tails in a shared hall", covered("double-or-reinforced"), OPEN, ANYONE, IN_REACH),
  ends("sheath slit once, insulation sound, nothing acts on it", covered("basic-sound"), OPEN, ANYONE, IN_REACH),
  ends(
    "sheath slit once, insulation sound, nothing acts on it, held to be one layer wherever it is",
    covered("basic-sound"),
    OPEN,
    ANYONE,
    IN_REACH,
  ),
  ends(
    "sheath worn through at one place, insulation sound, still rubbed",
    covered("basic-sound", "knocks"),
    OPEN,
    ANYONE,
    IN_REACH,
  ),
  ends(
    "sound cores in the sun and rain outdoors",
    covered("basic-sound", "heat-weather-rodents"),
    OPEN,
    ANYONE,
    IN_REACH,
  ),
  ends(
    "single cores in trunking with its lid on, hot place",
    covered("basic-sound", "heat-weather-rodents"),
    SCREWED,
    ANYONE,
    IN_REACH,
  ),
  ends(
    "single-insulated tails behind a door that shuts, nothing stored there",
    covered("basic-sound"),
    BY_HAND,
    ANYONE,
    IN_REACH,
  ),
  ends(
    "single-insulated tails behind a door that shuts, prams rub them",
    covered("basic-sound", "moved"),
    BY_HAND,
    ANYONE,
    IN_REACH,
  ),
  ends(
    "single-insulated tails behind a door that shuts, prams rub them, under lock",
    covered("basic-sound", "moved"),
    BY_HAND,
    KEEPER,
    IN_REACH,
  ),
  ends("cores with cut insulation by the skirting, no metal showing", covered("basic-damaged"), OPEN, ANYONE, IN_REACH),
  ends("rubber cores that crumble, in a damp cellar, in the open", covered("basic-damaged"), OPEN, ANYONE, IN_REACH, {
    "wet-or-conductive": "yes",
  }),
  ends("crumbling rubber tails behind a door that shuts", covered("basic-damaged"), BY_HAND, ANYONE, IN_REACH),
  ends("crumbling rubber in a damp cupboard that shuts", covered("basic-damaged"), BY_HAND, ANYONE, IN_REACH, {
    "wet-or-conductive": "yes",
  }),
  ends("crumbling rubber in a screwed box", covered("basic-damaged"), SCREWED, ANYONE, IN_REACH),
  ends(
    "crumbling rubber in a screwed box, held that no cover makes up for it",
    covered("basic-damaged"),
    SCREWED,
    ANYONE,
    IN_REACH,
  ),
  ends(
    "core bared by heat in a screwed box, held that no cover makes up for it",
    covered("bare"),
    SCREWED,
    ANYONE,
    IN_REACH,
  ),
  ends("copper showing on a cable by the skirting", covered("bare"), OPEN, ANYONE, IN_REACH),
  ends("copper showing on a cable, children play there", covered("bare"), OPEN, CHILDREN, IN_REACH),
  ends("board without cover in a room that only skilled persons open", covered("bare"), OPEN, SKILLED, IN_REACH),
  ends("crane conductors 4 m up in a workshop open to all", covered("bare"), OPEN, ANYONE, {
    "arms-reach": "beyond",
    "wet-or-conductive": "no",
  }),
  unknown("bare bar, nothing around, anyone comes", OPEN, ANYONE, IN_REACH),
  unknown("lid on two of its six screws", SCREWED, { "cover-fixing": "part-held" }, ANYONE, IN_REACH),
  unknown("connector block, cover held by a clip that a hand opens", BY_HAND, ANYONE, IN_REACH),
  unknown("lid opens by hand onto bare bars in a nursery", BY_HAND, CHILDREN, IN_REACH),
  unknown("board without cover in a room that only skilled persons open", OPEN, SKILLED, IN_REACH),
  unknown("board without cover in a cupboard with a common key", OPEN, MANY, IN_REACH),
  unknown("hand-sized slot in a panel, live metal within its reach", SCREWED, { "gets-in": "hand" }, ANYONE, IN_REACH),
  unknown("crane conductors 4 m up in a workshop open to all", OPEN, ANYONE, { "arms-reach": "beyond" }),
  unknown("crane conductors 4 m up in a workshop open to all, height held to be a layer", OPEN, ANYONE, {
    "arms-reach": "beyond",
    "wet-or-conductive": "no",
  }),
];
