import type { SameClass } from "./row.ts";

/** What keeps people off behind a case of the intake, by its topic: nothing more has to be said there. */
const CASES = ["intake-hot", "distributor-equipment-damaged", "supply-tampered", "origin-isolator"];

const inCases = (situation: string, facts: Readonly<Record<string, string>>): readonly SameClass[] =>
  [...CASES, "connector-block-open"].map((topic) => ({
    topic,
    situation,
    facts: { ...SOUND_OTHERWISE[topic], ...(topic === "connector-block-open" ? LID : {}), ...facts },
  }));

const LID = { "cover-opens": "tool", "barrier-behind": "no" };

/** Everything that is no matter of touch, as it should be. */
const SOUND_OTHERWISE: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  "intake-hot": { heat: "none", warmer: "no" },
  "distributor-equipment-damaged": { heat: "none", fixed: "yes", reported: "no" },
  "supply-tampered": { found: "nothing", heat: "none" },
  "origin-isolator": { present: "yes", "main-switch": "yes", "rating-suits": "yes", heat: "none" },
  "connector-block-open": { tight: "yes", fixed: "yes", heat: "none" },
};

const block = (
  situation: string,
  facts: Readonly<Record<string, string>>,
  positions?: Readonly<Record<string, string>>,
): SameClass => ({
  topic: "connector-block-open",
  situation,
  facts: {
    ...SOUND_OTHERWISE["connector-block-open"],
    "gets-in": "nothing",
    "cover-fixing": "whole",
    "cover-opens": "hand",
    "barrier-behind": "no",
    ...facts,
  },
  ...(positions === undefined ? {} : { positions }),
});

const tails = (
  situation: string,
  facts: Readonly<Record<string, string>>,
  positions?: Readonly<Record<string, string>>,
): SameClass => ({
  topic: "meter-tails-exposed",
  situation,
  facts: { heat: "none", ...facts },
  ...(positions === undefined ? {} : { positions }),
});

const SHUT = { "gets-in": "nothing", "cover-fixing": "whole", "hinges-carry": "yes" };
const OPEN = { "gets-in": "hand", "cover-fixing": "open" };
const DOOR = { ...SHUT, "cover-opens": "hand" };
const BOX = { ...SHUT, "cover-opens": "tool" };
const LOCKED = { ...SHUT, "cover-opens": "key", "lock-works": "yes" };
const SINGLE = { "live-covering": "basic-sound" };
const CRUMBLING = { "live-covering": "basic-damaged", "wet-or-conductive": "no" };
const BARE = { "live-covering": "bare" };

export const ORIGIN: readonly SameClass[] = [
  // Bare metal behind a case
  ...inCases("busbar behind a screwed cover in a hallway", {
    "gets-in": "nothing",
    "cover-fixing": "whole",
    "who-comes": "anyone",
  }),
  ...inCases("hairline crack in a stiff cover", { "gets-in": "nothing", "cover-fixing": "slight" }),
  ...inCases("lid on two of its six screws", {
    "gets-in": "nothing",
    "cover-fixing": "part-held",
    "who-comes": "anyone",
  }),
  ...inCases("lid on two of its six screws, key holders only", {
    "gets-in": "nothing",
    "cover-fixing": "part-held",
    "who-comes": "named-keeper",
  }),
  ...inCases("cover of a board taped on", { "gets-in": "nothing", "cover-fixing": "loose", "who-comes": "anyone" }),
  ...inCases("blank missing, busbar too deep for a finger", {
    "gets-in": "finger-short",
    "cover-fixing": "hole",
    "who-comes": "anyone",
  }),
  ...inCases("blank missing, a finger reaches the busbar", {
    "gets-in": "finger",
    "cover-fixing": "hole",
    "who-comes": "anyone",
  }),
  ...inCases("hand-sized slot in a panel, live metal within its reach", {
    "gets-in": "hand",
    "cover-fixing": "whole",
    "who-comes": "anyone",
  }),
  ...inCases("board without its cover in a hallway", {
    "gets-in": "hand",
    "cover-fixing": "open",
    "who-comes": "anyone",
  }),
  ...inCases("board without cover in a room that only skilled persons open", {
    "gets-in": "hand",
    "cover-fixing": "open",
    "who-comes": "skilled-only",
  }),
  ...inCases("board without cover in a cupboard with a common key", {
    "gets-in": "hand",
    "cover-fixing": "open",
    "who-comes": "many-keys",
  }),

  // A lid that a hand takes off
  block("connector block, cover held by a clip that a hand opens", { "who-comes": "anyone" }),
  block("connector block, cover held by a clip that a hand opens, held to be no layer because it opens in use", {
    "who-comes": "anyone",
  }),
  block("lid opens by hand onto bare bars in a nursery", { "who-comes": "children-or-less-able" }),
  block("connector block, lid lifts off by hand, cupboard locked by skilled persons", { "who-comes": "skilled-only" }),
  block(
    "connector block, lid lifts off by hand, cupboard locked by skilled persons, a lid that a hand opens held to be none",
    { "who-comes": "skilled-only" },
  ),
  block("connector block, lid lifts off by hand, cupboard locked by skilled persons, with many keys about", {
    "who-comes": "many-keys",
  }),
  block("lid opens by hand onto a screwed inner barrier", { "barrier-behind": "yes" }),

  // Tails
  tails("double-insulated tails in a shared hall", { "live-covering": "sheathed", ...OPEN, "who-comes": "anyone" }),
  tails("sheath slit once, insulation sound, nothing acts on it", {
    ...SINGLE,
    ...OPEN,
    wears: "nothing",
    "who-comes": "anyone",
  }),
  tails("sheath slit once, insulation sound, nothing acts on it, held to be one layer wherever it is", {
    ...SINGLE,
    ...OPEN,
    wears: "nothing",
    "who-comes": "anyone",
  }),
  tails("sound cores in the sun and rain outdoors", {
    ...SINGLE,
    ...OPEN,
    wears: "heat-weather-rodents",
    "who-comes": "anyone",
  }),
  tails("single-insulated tails in a box that needs a tool", { ...SINGLE, ...BOX }),
  tails("single-insulated tails behind a door that shuts, nothing stored there", {
    ...SINGLE,
    ...DOOR,
    wears: "nothing",
    "who-comes": "anyone",
  }),
  tails("single-insulated tails behind a door that shuts, prams rub them", {
    ...SINGLE,
    ...DOOR,
    wears: "moved",
    "who-comes": "anyone",
  }),
  tails("single-insulated tails behind a door that shuts, prams rub them, under lock", {
    ...SINGLE,
    ...DOOR,
    wears: "moved",
    "who-comes": "named-keeper",
  }),
  tails("single-insulated tails in an outside cupboard without door", {
    ...SINGLE,
    ...OPEN,
    wears: "knocks",
    "who-comes": "anyone",
  }),
  tails("tails behind a door that shuts, knocked from outside, the door held to be none", {
    ...SINGLE,
    ...DOOR,
    wears: "knocks",
    "who-comes": "anyone",
  }),
  tails("crumbling rubber in a screwed box", { ...CRUMBLING, ...BOX }),
  tails("crumbling rubber in a screwed box, held that no cover makes up for it", { ...CRUMBLING, ...BOX }),
  tails("crumbling rubber tails behind a door that shuts", { ...CRUMBLING, ...DOOR, "who-comes": "anyone" }),
  tails("rubber cores that crumble, in a damp cellar, in the open", {
    ...CRUMBLING,
    ...OPEN,
    "wet-or-conductive": "yes",
    "who-comes": "anyone",
  }),
  tails("core bared by heat in a screwed box, held that no cover makes up for it", { ...BARE, ...BOX }),
  tails("copper showing on a cable by the skirting", { ...BARE, ...OPEN, "who-comes": "anyone" }),
  tails("cubicle whose lock is broken, door shut", {
    ...BARE,
    ...LOCKED,
    "lock-works": "no",
    "who-comes": "anyone",
  }),
  tails("hinge gone, the door does not stay shut", {
    ...BARE,
    ...LOCKED,
    "hinges-carry": "no",
    "who-comes": "anyone",
  }),
  tails("cubicle locked with a common key", { ...BARE, ...LOCKED, "who-comes": "many-keys" }),
  tails("hand-sized slot in a panel, the rest locked with a key", {
    ...BARE,
    ...LOCKED,
    "gets-in": "hand",
    "who-comes": "anyone",
  }),
];
