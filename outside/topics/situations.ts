/**
 * Situations in which somebody may touch live metal, as an electrician would describe them, with what basic protection is
 * there. Written from the standard and the trade's meaning of the classes, not from the rules: one table for the state and
 * for every topic that can say the same.
 */
export interface Situation {
  readonly words: string;
  /** What is known; everything else is open and must not matter. */
  readonly facts: Readonly<Record<string, string>>;
  /** Positions where not the more usual ones. */
  readonly positions?: Readonly<Record<string, string>>;
  readonly state: TouchState;
  readonly source: string;
}

export const TOUCH_STATES = ["holds", "one-event", "gone"] as const;
export type TouchState = (typeof TOUCH_STATES)[number];

/** The classifications a state may come to: what holds may still fall short of the edition. */
export const CLASSES_OF_STATE: Readonly<Record<TouchState, readonly string[]>> = Object.freeze({
  holds: ["none", "C3"],
  "one-event": ["C2"],
  gone: ["C1"],
});

type Facts = Situation["facts"];

const when = (
  words: string,
  state: TouchState,
  source: string,
  facts: Facts,
  positions?: Situation["positions"],
): Situation =>
  positions === undefined ? { words, facts, state, source } : { words, facts, positions, state, source };

const NO_DISTANCE: Facts = { "arms-reach": "within", obstacle: "none", "wet-or-conductive": "no" };
/** Closed all round, whole, nothing further known of how it opens. */
const CLOSED: Facts = { "gets-in": "nothing", "cover-fixing": "whole", "hinges-carry": "yes", "barrier-behind": "no" };
/** A whole enclosure that a tool opens. */
const SCREWED: Facts = { ...CLOSED, "cover-opens": "tool" };
const BY_HAND: Facts = { ...CLOSED, "cover-opens": "hand", "allowed-opening": "no" };
const KEYED: Facts = { ...CLOSED, "cover-opens": "key", "lock-works": "yes", "allowed-opening": "no" };
const NOTHING_AROUND: Facts = {
  "gets-in": "hand",
  "cover-fixing": "open",
  "barrier-behind": "no",
  "allowed-opening": "no",
};
const BAR: Facts = { "live-covering": "bare", "meant-insulated": "no" };
const STRIPPED: Facts = { "live-covering": "bare", "meant-insulated": "yes" };
const SINGLE: Facts = { "live-covering": "basic-sound" };
const DAMAGED: Facts = { "live-covering": "basic-damaged", "meant-insulated": "yes", "wet-or-conductive": "no" };
const ANYONE: Facts = { "who-comes": "anyone" };
const SKILLED: Facts = { "who-comes": "skilled-only" };
const CHILDREN: Facts = { "who-comes": "children-or-less-able" };
const MANY: Facts = { "who-comes": "many-keys" };
const KEEPER: Facts = { "who-comes": "named-keeper" };

export const SITUATIONS: readonly Situation[] = Object.freeze([
  // The covering alone
  when("double-insulated cable clipped along a wall", "holds", "412: a measure by itself", {
    "live-covering": "double-or-reinforced",
  }),
  when("double-insulated tails in a shared hall", "holds", "412; 416.1", {
    "live-covering": "double-or-reinforced",
    ...NOTHING_AROUND,
    ...ANYONE,
  }),
  when("sheathed cable, sound, on a garage wall", "holds", "416.1: insulation within a sheath", {
    "live-covering": "sheathed",
  }),
  when("sheathed cable that children brush past", "holds", "416.1", { "live-covering": "sheathed", ...CHILDREN }),
  when("sheath worn through at one place, insulation sound, still rubbed", "one-event", "522.8.1; one layer left", {
    ...SINGLE,
    ...NOTHING_AROUND,
    ...NO_DISTANCE,
    ...ANYONE,
    wears: "knocks",
  }),
  when("sheath slit once, insulation sound, nothing acts on it", "holds", "trade practice: improvement", {
    ...SINGLE,
    ...NOTHING_AROUND,
    ...ANYONE,
    wears: "nothing",
  }),
  when(
    "sheath slit once, insulation sound, nothing acts on it, held to be one layer wherever it is",
    "one-event",
    "521.10.1",
    { ...SINGLE, ...NOTHING_AROUND, ...NO_DISTANCE, ...ANYONE, wears: "nothing" },
    { "open-cores": "one-layer" },
  ),
  when("sound cores in the sun and rain outdoors", "one-event", "522.11.1; one layer left", {
    ...SINGLE,
    ...NOTHING_AROUND,
    ...ANYONE,
    "arms-reach": "within",
    obstacle: "none",
    wears: "heat-weather-rodents",
  }),
  when("cores with cut insulation by the skirting, no metal showing", "one-event", "416.1: the next knock bares it", {
    ...DAMAGED,
    ...NOTHING_AROUND,
    ...ANYONE,
    "arms-reach": "within",
    obstacle: "none",
  }),
  when("rubber cores that crumble, in a damp cellar, in the open", "gone", "416.1: water bridges what is cracked", {
    ...DAMAGED,
    ...NOTHING_AROUND,
    ...ANYONE,
    "wet-or-conductive": "yes",
  }),
  when("copper showing on a cable by the skirting", "gone", "416.1: bare live metal in reach", {
    ...STRIPPED,
    ...NOTHING_AROUND,
    ...NO_DISTANCE,
    ...ANYONE,
  }),
  when("copper showing on a cable, children play there", "gone", "416.1", {
    ...STRIPPED,
    ...NOTHING_AROUND,
    ...NO_DISTANCE,
    ...CHILDREN,
  }),

  // Bare live metal in an enclosure that is as it should be
  when("busbar behind a screwed cover in a hallway", "holds", "416.2.1, 416.2.4", { ...BAR, ...SCREWED, ...ANYONE }),
  when("busbar behind a screwed cover in a nursery", "holds", "416.2.4: a tool is needed", {
    ...BAR,
    ...SCREWED,
    ...CHILDREN,
  }),
  when("terminals in a moulded block that does not open", "holds", "416.2.4", {
    ...BAR,
    ...CLOSED,
    "cover-opens": "destruction",
  }),
  when("panel with a door interlock that works", "holds", "416.2.4: dead before it opens", {
    ...BAR,
    ...CLOSED,
    "cover-opens": "interlock",
    "lock-works": "yes",
  }),
  when("cubicle locked, its one keeper is known", "holds", "416.2.4: a key", { ...BAR, ...KEYED, ...KEEPER }),
  when("cubicle locked, the key with skilled persons", "holds", "416.2.4: a key", { ...BAR, ...KEYED, ...SKILLED }),
  when("lid opens by hand onto a screwed inner barrier", "holds", "416.2.4: a further barrier behind", {
    ...BAR,
    "gets-in": "nothing",
    "cover-opens": "hand",
    "barrier-behind": "yes",
  }),
  when("door left open, the inner barrier in place", "holds", "416.2.4", {
    ...BAR,
    "gets-in": "nothing",
    "cover-opens": "stands-open",
    "barrier-behind": "yes",
    ...ANYONE,
  }),
  when("ceiling rose, whole, cover unscrews by hand", "holds", "416.2.4, the note on accessories left out", {
    ...BAR,
    ...CLOSED,
    "cover-opens": "hand",
    "allowed-opening": "yes",
  }),
  when("ventilation gaps, a finger goes in and falls short", "holds", "416.2.1: IPXXB is enough", {
    ...BAR,
    ...SCREWED,
    "gets-in": "finger-short",
  }),
  when("thin slot in the top that a wire gets through", "holds", "416.2.2: short of IPXXD, no finger", {
    ...BAR,
    ...SCREWED,
    "gets-in": "wire-on-top",
  }),
  when("hairline crack in a stiff cover", "holds", "416.2.3; trade practice: improvement", {
    ...BAR,
    ...SCREWED,
    "cover-fixing": "slight",
  }),

  // One thing gives way
  when("lid on two of its six screws", "one-event", "416.2.3", {
    ...BAR,
    ...SCREWED,
    "cover-fixing": "part-held",
    ...ANYONE,
    ...NO_DISTANCE,
  }),
  when("lid on two of its six screws, key holders only", "one-event", "416.2.3: whoever is in may lift it", {
    ...BAR,
    ...SCREWED,
    "cover-fixing": "part-held",
    ...KEEPER,
    ...NO_DISTANCE,
  }),
  when("cover of a board taped on", "one-event", "416.2.3; trade practice: further breakage opens the way", {
    ...BAR,
    ...SCREWED,
    "cover-fixing": "loose",
    ...ANYONE,
    ...NO_DISTANCE,
  }),
  when("socket-outlet cracked through, nothing live in reach", "one-event", "trade practice", {
    ...BAR,
    ...SCREWED,
    "cover-fixing": "loose",
    ...ANYONE,
    ...NO_DISTANCE,
  }),
  when("blank missing, busbar too deep for a finger", "one-event", "416.2.1: a thin object reaches it", {
    ...BAR,
    ...SCREWED,
    "gets-in": "finger-short",
    "cover-fixing": "hole",
    ...ANYONE,
    ...NO_DISTANCE,
  }),
  when("connector block, cover held by a clip that a hand opens", "one-event", "416.2.4", {
    ...BAR,
    ...BY_HAND,
    ...ANYONE,
    ...NO_DISTANCE,
  }),
  when(
    "connector block, cover held by a clip that a hand opens, held to be no layer because it opens in use",
    "gone",
    "416.2.4",
    { ...BAR, ...BY_HAND, ...ANYONE, ...NO_DISTANCE },
    { "door-only-shuts": "does-not-count" },
  ),
  when("lid opens by hand onto bare bars in a nursery", "gone", "416.2.4: a child opens it in play", {
    ...BAR,
    ...BY_HAND,
    ...CHILDREN,
    ...NO_DISTANCE,
  }),
  when(
    "connector block, lid lifts off by hand, cupboard locked by skilled persons",
    "one-event",
    "416.2.4; one layer",
    {
      ...BAR,
      ...BY_HAND,
      ...SKILLED,
      ...NO_DISTANCE,
    },
  ),
  when(
    "connector block, lid lifts off by hand, cupboard locked by skilled persons, a lid that a hand opens held to be none",
    "one-event",
    "the lock of the place is the layer left",
    { ...BAR, ...BY_HAND, ...SKILLED, ...NO_DISTANCE },
    { "door-only-shuts": "does-not-count" },
  ),
  when(
    "connector block, lid lifts off by hand, cupboard locked by skilled persons, with many keys about",
    "gone",
    "nobody answers for the lock",
    { ...BAR, ...BY_HAND, ...MANY, ...NO_DISTANCE },
    { "door-only-shuts": "does-not-count" },
  ),
  when(
    "connector block, lid lifts off by hand, cupboard locked by skilled persons, every lock held to count",
    "one-event",
    "416.2.4 names no number of keys",
    { ...BAR, ...BY_HAND, ...MANY, ...NO_DISTANCE },
    { "door-only-shuts": "does-not-count", "many-keys": "counts" },
  ),
  when("panel whose interlock has failed", "one-event", "416.2.4: it opens as if by hand", {
    ...BAR,
    ...CLOSED,
    "cover-opens": "interlock",
    "lock-works": "no",
    "allowed-opening": "no",
    ...ANYONE,
    ...NO_DISTANCE,
  }),
  when("cubicle whose lock is broken, door shut", "one-event", "416.2.3, 416.2.4: it opens as if by hand", {
    ...BAR,
    ...KEYED,
    "lock-works": "no",
    ...ANYONE,
    ...NO_DISTANCE,
  }),
  when("cubicle whose lock is broken, in a school corridor", "gone", "416.2.4: as if by hand, and children come", {
    ...BAR,
    ...KEYED,
    "lock-works": "no",
    ...CHILDREN,
    ...NO_DISTANCE,
  }),
  when("cubicle locked with a common key", "one-event", "416.2.4; trade practice", {
    ...BAR,
    ...KEYED,
    ...MANY,
    ...NO_DISTANCE,
  }),
  when(
    "cubicle locked with a common key, every lock held to count",
    "holds",
    "416.2.4: a key is needed",
    { ...BAR, ...KEYED, ...MANY },
    { "many-keys": "counts" },
  ),
  when("cubicle locked, the key hangs beside it for anyone", "one-event", "416.2.4: as if by hand", {
    ...BAR,
    ...KEYED,
    ...ANYONE,
    ...NO_DISTANCE,
  }),

  // Nothing left between
  when("bare bar, nothing around, anyone comes", "gone", "416.1, 416.2.1", {
    ...BAR,
    ...NOTHING_AROUND,
    ...NO_DISTANCE,
    ...ANYONE,
  }),
  when("board without its cover in a hallway", "gone", "416.2.1", {
    ...BAR,
    ...NOTHING_AROUND,
    ...NO_DISTANCE,
    ...ANYONE,
  }),
  when("blank missing, a finger reaches the busbar", "gone", "416.2.1", {
    ...BAR,
    ...SCREWED,
    "gets-in": "finger",
    "cover-fixing": "hole",
    "allowed-opening": "no",
    ...NO_DISTANCE,
    ...ANYONE,
  }),
  when("hand-sized slot in a panel, live metal within its reach", "gone", "416.2.1", {
    ...BAR,
    ...SCREWED,
    "gets-in": "hand",
    ...NO_DISTANCE,
    ...ANYONE,
  }),
  when("hand-sized slot in a panel, the rest locked with a key", "gone", "416.2.1: a slot needs no key", {
    ...BAR,
    ...KEYED,
    "gets-in": "hand",
    ...NO_DISTANCE,
    ...ANYONE,
  }),
  when("door of a cubicle hangs by one hinge", "gone", "416.2.3: it does not close", {
    ...BAR,
    ...KEYED,
    "cover-fixing": "open",
    ...NO_DISTANCE,
    ...ANYONE,
  }),
  when("hinge gone, the door does not stay shut", "gone", "416.2.3", {
    ...BAR,
    ...KEYED,
    "hinges-carry": "no",
    ...NO_DISTANCE,
    ...ANYONE,
  }),
  when("door stands open in use, bars behind it", "gone", "416.2.4", {
    ...BAR,
    "gets-in": "hand",
    "cover-opens": "stands-open",
    "barrier-behind": "no",
    ...NO_DISTANCE,
    ...ANYONE,
  }),
  when("broken socket-outlet, live terminal shows", "gone", "416.2.1", {
    ...BAR,
    ...SCREWED,
    "gets-in": "finger",
    "allowed-opening": "no",
    "cover-fixing": "hole",
    ...NO_DISTANCE,
    ...ANYONE,
  }),
  when("ceiling rose without its cover, terminals in reach from a bed", "gone", "416.2.1", {
    ...BAR,
    ...NOTHING_AROUND,
    ...NO_DISTANCE,
    ...ANYONE,
  }),

  // A locked place
  when("board without cover in a room that only skilled persons open", "one-event", "416.2.4; trade practice", {
    ...BAR,
    ...NOTHING_AROUND,
    ...NO_DISTANCE,
    ...SKILLED,
  }),
  when(
    "board without cover in a room that only skilled persons open, the lock held not to count",
    "gone",
    "trade discussion of a locked electrical cupboard",
    { ...BAR, ...NOTHING_AROUND, ...NO_DISTANCE, ...SKILLED },
    { "locked-board": "does-not-count" },
  ),
  when("board without cover in a cupboard with a common key", "gone", "trade practice: others can get the key", {
    ...BAR,
    ...NOTHING_AROUND,
    ...NO_DISTANCE,
    ...MANY,
  }),
  when(
    "board without cover in a cupboard with a common key, every lock held to count",
    "one-event",
    "416.2.4 names no number of keys",
    { ...BAR, ...NOTHING_AROUND, ...NO_DISTANCE, ...MANY },
    { "many-keys": "counts" },
  ),

  // Distance and obstacles
  when("overhead bars beyond reach, locked switchroom of skilled persons", "holds", "417.1, 417.3", {
    ...BAR,
    ...SKILLED,
    "arms-reach": "beyond",
    "wet-or-conductive": "no",
  }),
  when("bars behind a fixed rail, locked switchroom of skilled persons", "holds", "417.1, 417.2", {
    ...BAR,
    ...SKILLED,
    obstacle: "secured",
    "wet-or-conductive": "no",
  }),
  when("bars behind a fixed rail, a caretaker has the key", "one-event", "410.3.5: a keeper is not skilled control", {
    ...BAR,
    ...NOTHING_AROUND,
    ...KEEPER,
    "arms-reach": "within",
    obstacle: "secured",
  }),
  when("bars behind a rail that lifts out, skilled persons only", "one-event", "417.2: not secured", {
    ...BAR,
    ...NOTHING_AROUND,
    ...SKILLED,
    "arms-reach": "within",
    obstacle: "not-secured",
    "wet-or-conductive": "no",
  }),
  when("overhead bars, ladders are carried, skilled persons only", "one-event", "417.3: reach counts long things", {
    ...BAR,
    ...NOTHING_AROUND,
    ...SKILLED,
    "arms-reach": "long-things",
    obstacle: "none",
    "wet-or-conductive": "no",
  }),
  when("bare bars behind a rail, anyone enters", "gone", "410.3.5, 417.1: no measure where anyone comes", {
    ...BAR,
    ...NOTHING_AROUND,
    ...ANYONE,
    "arms-reach": "within",
    obstacle: "secured",
  }),
  when(
    "bare bars behind a rail, anyone enters, an obstacle held to be a layer",
    "one-event",
    "trade discussion of obstacles",
    { ...BAR, ...NOTHING_AROUND, ...ANYONE, "arms-reach": "within", obstacle: "secured", "wet-or-conductive": "no" },
    { distance: "counts" },
  ),
  when("crane conductors 4 m up in a workshop open to all", "gone", "410.3.5, 417.1", {
    ...BAR,
    ...NOTHING_AROUND,
    ...ANYONE,
    "arms-reach": "beyond",
    obstacle: "none",
  }),
  when(
    "crane conductors 4 m up in a workshop open to all, height held to be a layer",
    "one-event",
    "trade discussion of height",
    { ...BAR, ...NOTHING_AROUND, ...ANYONE, "arms-reach": "beyond", obstacle: "none", "wet-or-conductive": "no" },
    { distance: "counts" },
  ),
  when(
    "a rail that lifts out where anyone comes, whatever is held of obstacles",
    "gone",
    "417.2: it has to stay where it is",
    { ...BAR, ...NOTHING_AROUND, ...ANYONE, "arms-reach": "within", obstacle: "not-secured" },
    { distance: "counts" },
  ),
  when(
    "bars out of reach over a pool plant, skilled persons only",
    "one-event",
    "702.410.3.5: no measure in wet places",
    {
      ...BAR,
      ...NOTHING_AROUND,
      ...SKILLED,
      "arms-reach": "beyond",
      obstacle: "none",
      "wet-or-conductive": "yes",
    },
  ),

  // Insulation with something around it
  when("single-insulated tails in a box that needs a tool", "holds", "416.2, 521.10.1", { ...SINGLE, ...SCREWED }),
  when(
    "single cores in trunking with its lid on, hot place",
    "holds",
    "521.10.1: the enclosure is a measure by itself",
    {
      ...SINGLE,
      ...SCREWED,
      wears: "heat-weather-rodents",
    },
  ),
  when("single-insulated tails behind a door that shuts, nothing stored there", "holds", "trade practice: two layers", {
    ...SINGLE,
    ...BY_HAND,
    ...ANYONE,
    wears: "nothing",
  }),
  when("single-insulated tails behind a door that shuts, prams rub them", "one-event", "522.8.1: the door is no help", {
    ...SINGLE,
    ...BY_HAND,
    ...ANYONE,
    "arms-reach": "within",
    obstacle: "none",
    wears: "moved",
  }),
  when(
    "single-insulated tails behind a door that shuts, prams rub them, under lock",
    "one-event",
    "522.8.1: a place that is locked and used to store",
    {
      ...SINGLE,
      ...BY_HAND,
      ...KEEPER,
      "arms-reach": "within",
      obstacle: "none",
      wears: "moved",
    },
  ),
  when("single-insulated tails in an outside cupboard without door", "one-event", "522.8.1; one layer left", {
    ...SINGLE,
    ...NOTHING_AROUND,
    ...ANYONE,
    "arms-reach": "within",
    obstacle: "none",
    wears: "knocks",
  }),
  when(
    "tails behind a door that shuts, knocked from outside, the door held to be none",
    "one-event",
    "416.2.4, 522.8.1",
    { ...SINGLE, ...BY_HAND, ...ANYONE, ...NO_DISTANCE, wears: "knocks" },
    { "door-only-shuts": "does-not-count" },
  ),
  when("crumbling rubber in a screwed box", "holds", "416.2: what lies behind may be bare", { ...DAMAGED, ...SCREWED }),
  when(
    "crumbling rubber in a screwed box, held that no cover makes up for it",
    "one-event",
    "416.1; trade discussion of rubber cable",
    { ...DAMAGED, ...SCREWED },
    { "damaged-behind-cover": "one-event" },
  ),
  when(
    "core bared by heat in a screwed box, held that no cover makes up for it",
    "one-event",
    "416.1",
    { ...STRIPPED, ...SCREWED },
    { "damaged-behind-cover": "one-event" },
  ),
  when(
    "busbar behind a screwed cover, held that no cover makes up for failed insulation",
    "holds",
    "416.2: a bar is made bare",
    { ...BAR, ...SCREWED },
    { "damaged-behind-cover": "one-event" },
  ),
  when("crumbling rubber tails behind a door that shuts", "one-event", "trade practice: insulation failing", {
    ...DAMAGED,
    ...BY_HAND,
    ...ANYONE,
    "arms-reach": "within",
    obstacle: "none",
  }),
  when("crumbling rubber in a damp cupboard that shuts", "one-event", "416.1, 416.2.4: the door is what is left", {
    ...DAMAGED,
    ...BY_HAND,
    ...ANYONE,
    "wet-or-conductive": "yes",
  }),

  // Lampholders
  when("empty lampholder, whole, a finger gets at its contact", "holds", "416.2.1: free while a lamp is changed", {
    ...BAR,
    ...SCREWED,
    "gets-in": "finger",
    "allowed-opening": "yes",
  }),
  when(
    "empty lampholder, whole, a finger gets at its contact, held to be live metal in reach",
    "gone",
    "416.2.1: it is not being changed",
    { ...BAR, ...SCREWED, ...ANYONE, ...NO_DISTANCE, "gets-in": "finger", "allowed-opening": "yes" },
    { "lamp-contact": "in-reach" },
  ),
  when("lampholder with its ring off, terminals in reach", "gone", "416.2.1: a part is missing", {
    ...BAR,
    ...CLOSED,
    "cover-opens": "hand",
    "gets-in": "finger",
    "allowed-opening": "no",
    "cover-fixing": "hole",
    ...NO_DISTANCE,
    ...ANYONE,
  }),
]);
