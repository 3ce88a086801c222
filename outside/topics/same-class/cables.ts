import type { SameClass } from "./row.ts";

type Facts = SameClass["facts"];
const row = (topic: string, situation: string, facts: Facts): SameClass => ({ topic, situation, facts });

const ANYONE: Facts = { "who-comes": "anyone" };
const OPEN: Facts = { "gets-in": "hand" };
const SCREWED: Facts = { "gets-in": "nothing", "cover-opens": "tool" };
const BY_HAND: Facts = { "gets-in": "nothing", "cover-opens": "hand" };
const DRY: Facts = { "wet-or-conductive": "no" };
const WET: Facts = { "wet-or-conductive": "yes" };
const REACHED: Facts = { ...OPEN, ...ANYONE, "arms-reach": "within" };

/** Cables and what they are joined to: damaged, without sheath, in trunking, jointed, hung outdoors, of rubber, or flexible. */
const UNBURNT: Facts = { "beside-combustible": "no" };
const NO_JOINT: Facts = { joint: "none" };
const PLASTIC: Facts = { metal: "not-metal" };
const LEFT: Facts = { enclosure: "cover-off", connection: "tight", combustible: "no" };
const OLD: Facts = { rubber: "hard", "metal-sheath": "not-metal", "hot-ends": "yes" };
const HUNG: Facts = { "made-for-weather": "yes", struck: "no", carried: "yes", ends: "held" };
const CORD: Facts = {
  heat: "none",
  "used-as-fixed": "no",
  "within-cable": "yes",
  ends: "held",
};
const LEAD: Facts = { use: "lasting", load: "light", heat: "none" };
const PLUGGED: Facts = { joined: "open", "fuse-over-flex": "no" };

export const CABLES: readonly SameClass[] = [
  row("cable-damaged", "sheathed cable, sound, on a garage wall", {
    "live-covering": "sheathed",
    wears: "nothing",
    ...REACHED,
    ...UNBURNT,
  }),
  row("cable-damaged", "sheathed cable that children brush past", {
    "live-covering": "sheathed",
    ...OPEN,
    "who-comes": "children-or-less-able",
    wears: "knocks",
  }),
  row("cable-damaged", "sheath worn through at one place, insulation sound, still rubbed", {
    "live-covering": "basic-sound",
    wears: "knocks",
    ...REACHED,
    ...DRY,
  }),
  row("cable-damaged", "sheath slit once, insulation sound, nothing acts on it", {
    "live-covering": "basic-sound",
    wears: "nothing",
    ...REACHED,
  }),
  row("cable-damaged", "sheath slit once, insulation sound, nothing acts on it, held to be one layer wherever it is", {
    "live-covering": "basic-sound",
    wears: "nothing",
    ...REACHED,
    ...DRY,
  }),
  row("cable-damaged", "sound cores in the sun and rain outdoors", {
    "live-covering": "basic-sound",
    wears: "heat-weather-rodents",
    ...REACHED,
  }),
  row("cable-damaged", "cores with cut insulation by the skirting, no metal showing", {
    "live-covering": "basic-damaged",
    ...REACHED,
    ...DRY,
  }),
  row("cable-damaged", "copper showing on a cable by the skirting", { "live-covering": "bare", ...REACHED, ...DRY }),
  row("cable-damaged", "copper showing on a cable, children play there", {
    "live-covering": "bare",
    ...OPEN,
    "who-comes": "children-or-less-able",
    "arms-reach": "within",
  }),
  row("cable-damaged", "crumbling rubber in a screwed box", {
    "live-covering": "basic-damaged",
    ...SCREWED,
    wears: "nothing",
    ...UNBURNT,
  }),
  row("cable-damaged", "crumbling rubber in a screwed box, held that no cover makes up for it", {
    "live-covering": "basic-damaged",
    ...SCREWED,
    wears: "nothing",
    ...UNBURNT,
  }),
  row("cable-damaged", "core bared by heat in a screwed box, held that no cover makes up for it", {
    "live-covering": "bare",
    ...SCREWED,
  }),
  row("cable-damaged", "connector block, cover held by a clip that a hand opens", {
    "live-covering": "bare",
    ...BY_HAND,
    ...ANYONE,
    "arms-reach": "within",
  }),

  row("sheath-missing", "sheathed cable, sound, on a garage wall", { "live-covering": "sheathed", ...NO_JOINT }),
  row("sheath-missing", "single-insulated tails in a box that needs a tool", {
    "live-covering": "basic-sound",
    ...SCREWED,
    ...NO_JOINT,
  }),
  row("sheath-missing", "single-insulated tails behind a door that shuts, nothing stored there", {
    "live-covering": "basic-sound",
    ...BY_HAND,
    ...ANYONE,
    wears: "nothing",
    ...NO_JOINT,
  }),
  row("sheath-missing", "single-insulated tails behind a door that shuts, prams rub them", {
    "live-covering": "basic-sound",
    ...BY_HAND,
    ...ANYONE,
    wears: "moved",
    ...NO_JOINT,
    ...DRY,
  }),
  row("sheath-missing", "single-insulated tails behind a door that shuts, prams rub them, under lock", {
    "live-covering": "basic-sound",
    ...BY_HAND,
    "who-comes": "named-keeper",
    wears: "moved",
    ...NO_JOINT,
  }),
  row("sheath-missing", "tails behind a door that shuts, knocked from outside, the door held to be none", {
    "live-covering": "basic-sound",
    ...BY_HAND,
    ...ANYONE,
    wears: "knocks",
    "arms-reach": "within",
    ...NO_JOINT,
  }),
  row("sheath-missing", "crumbling rubber tails behind a door that shuts", {
    "live-covering": "basic-damaged",
    ...BY_HAND,
    ...ANYONE,
    ...DRY,
    ...NO_JOINT,
  }),
  row("sheath-missing", "crumbling rubber in a damp cupboard that shuts", {
    "live-covering": "basic-damaged",
    ...BY_HAND,
    ...ANYONE,
    ...WET,
    ...NO_JOINT,
  }),
  row("sheath-missing", "rubber cores that crumble, in a damp cellar, in the open", {
    "live-covering": "basic-damaged",
    ...REACHED,
    ...WET,
  }),
  row("sheath-missing", "copper showing on a cable by the skirting", { "live-covering": "bare", ...REACHED, ...DRY }),

  row("trunking-or-conduit-open", "single cores in trunking with its lid on, hot place", {
    "live-covering": "basic-sound",
    "gets-in": "nothing",
    "cover-fixing": "whole",
    wears: "heat-weather-rodents",
    ...PLASTIC,
  }),
  row("trunking-or-conduit-open", "sheath worn through at one place, insulation sound, still rubbed", {
    "live-covering": "basic-sound",
    ...REACHED,
    "cover-fixing": "open",
    wears: "knocks",
    ...PLASTIC,
    ...DRY,
  }),
  row("trunking-or-conduit-open", "sheath slit once, insulation sound, nothing acts on it", {
    "live-covering": "basic-sound",
    ...REACHED,
    "cover-fixing": "open",
    wears: "nothing",
    ...PLASTIC,
  }),
  row("trunking-or-conduit-open", "copper showing on a cable by the skirting", {
    "live-covering": "bare",
    ...REACHED,
    "cover-fixing": "open",
  }),
  row("trunking-or-conduit-open", "cover of a board taped on", {
    "live-covering": "bare",
    "gets-in": "nothing",
    "cover-fixing": "loose",
    ...ANYONE,
    "arms-reach": "within",
  }),
  row("trunking-or-conduit-open", "lid on two of its six screws", {
    "live-covering": "bare",
    "gets-in": "nothing",
    "cover-fixing": "part-held",
    ...ANYONE,
    "arms-reach": "within",
  }),
  row("trunking-or-conduit-open", "crane conductors 4 m up in a workshop open to all, height held to be a layer", {
    "live-covering": "bare",
    ...OPEN,
    ...ANYONE,
    "cover-fixing": "open",
    "arms-reach": "beyond",
    ...DRY,
  }),
  row("trunking-or-conduit-open", "crane conductors 4 m up in a workshop open to all", {
    "live-covering": "bare",
    ...OPEN,
    ...ANYONE,
    "cover-fixing": "open",
    "arms-reach": "beyond",
  }),

  row("joint-not-enclosed", "copper showing on a cable by the skirting", {
    ...LEFT,
    "live-covering": "bare",
    ...REACHED,
  }),
  row("joint-not-enclosed", "connector block, cover held by a clip that a hand opens", {
    ...LEFT,
    "live-covering": "bare",
    ...BY_HAND,
    ...ANYONE,
  }),
  row(
    "joint-not-enclosed",
    "connector block, cover held by a clip that a hand opens, held to be no layer because it opens in use",
    {
      ...LEFT,
      "live-covering": "bare",
      ...BY_HAND,
      ...ANYONE,
      "arms-reach": "within",
    },
  ),
  row("joint-not-enclosed", "connector block, lid lifts off by hand, cupboard locked by skilled persons", {
    ...LEFT,
    "live-covering": "bare",
    ...BY_HAND,
    "who-comes": "skilled-only",
    "arms-reach": "within",
  }),
  row(
    "joint-not-enclosed",
    "connector block, lid lifts off by hand, cupboard locked by skilled persons, with many keys about",
    {
      ...LEFT,
      "live-covering": "bare",
      ...BY_HAND,
      "who-comes": "many-keys",
      "arms-reach": "within",
    },
  ),
  row("joint-not-enclosed", "lid opens by hand onto bare bars in a nursery", {
    ...LEFT,
    "live-covering": "bare",
    ...BY_HAND,
    "who-comes": "children-or-less-able",
    "arms-reach": "within",
  }),
  row("joint-not-enclosed", "cores with cut insulation by the skirting, no metal showing", {
    ...LEFT,
    "live-covering": "basic-damaged",
    ...REACHED,
    ...DRY,
  }),
  row("joint-not-enclosed", "crumbling rubber in a screwed box", {
    ...LEFT,
    "live-covering": "basic-damaged",
    ...SCREWED,
  }),

  row("overhead-cable", "double-insulated cable clipped along a wall", {
    "live-covering": "sheathed",
    ...HUNG,
    "arms-reach": "beyond",
  }),
  row("overhead-cable", "sound cores in the sun and rain outdoors", {
    "live-covering": "basic-sound",
    ...HUNG,
    "arms-reach": "within",
  }),
  row("overhead-cable", "copper showing on a cable by the skirting", {
    "live-covering": "bare",
    "arms-reach": "within",
  }),
  row("overhead-cable", "crane conductors 4 m up in a workshop open to all, height held to be a layer", {
    "live-covering": "bare",
    ...HUNG,
    "arms-reach": "beyond",
    ...DRY,
  }),

  row("rubber-or-lead-cable", "rubber cores that crumble, in a damp cellar, in the open", {
    ...OLD,
    "live-covering": "basic-damaged",
    ...OPEN,
    ...ANYONE,
    ...WET,
  }),
  row("rubber-or-lead-cable", "cores with cut insulation by the skirting, no metal showing", {
    ...OLD,
    "live-covering": "basic-damaged",
    ...OPEN,
    ...ANYONE,
    ...DRY,
  }),
  row("rubber-or-lead-cable", "copper showing on a cable by the skirting", {
    "live-covering": "bare",
    ...OPEN,
    ...ANYONE,
  }),
  row("rubber-or-lead-cable", "crumbling rubber tails behind a door that shuts", {
    ...OLD,
    "live-covering": "basic-damaged",
    ...BY_HAND,
    ...ANYONE,
    ...DRY,
  }),
  // Rubber that crumbles is worn out, so that the topic does not ask whether a cover makes up for it.
  {
    topic: "rubber-or-lead-cable",
    situation: "crumbling rubber in a screwed box, held that no cover makes up for it",
    facts: { ...OLD, "live-covering": "basic-damaged", ...SCREWED, ...ANYONE },
    positions: {},
  },

  row("flexible-cord-as-fixed-wiring", "sheathed cable, sound, on a garage wall", {
    ...CORD,
    "live-covering": "sheathed",
    wears: "nothing",
  }),
  row("flexible-cord-as-fixed-wiring", "sheath slit once, insulation sound, nothing acts on it", {
    ...CORD,
    "live-covering": "basic-sound",
    wears: "nothing",
  }),
  row("flexible-cord-as-fixed-wiring", "sheath worn through at one place, insulation sound, still rubbed", {
    ...CORD,
    "live-covering": "basic-sound",
    wears: "knocks",
  }),
  row("flexible-cord-as-fixed-wiring", "copper showing on a cable by the skirting", { "live-covering": "bare" }),

  row("adaptors-as-fixed-wiring", "copper showing on a cable by the skirting", { ...LEAD, "live-covering": "bare" }),
  row("adaptors-as-fixed-wiring", "cores with cut insulation by the skirting, no metal showing", {
    ...LEAD,
    "live-covering": "basic-damaged",
    ...DRY,
  }),
  row("equipment-connection-open", "copper showing on a cable by the skirting", {
    ...PLUGGED,
    "live-covering": "bare",
  }),
  row("equipment-connection-open", "cores with cut insulation by the skirting, no metal showing", {
    ...PLUGGED,
    "live-covering": "basic-damaged",
    ...DRY,
  }),
];

const FIRM: Facts = { fixing: "loose", strain: "no" };
const COOL: Facts = { "heat-marks": "none", "cause-removed": "yes", "hot-now": "no" };
const LAMP: Facts = { lamp: "within", "near-fuel": "clear", heat: "none" };
const HOLDER: Facts = { flex: "held", "arms-reach": "within" };

/** Accessories and luminaires that anyone uses. */
export const ACCESSORIES: readonly SameClass[] = [
  row("accessory-broken", "busbar behind a screwed cover in a hallway", {
    "gets-in": "nothing",
    "cover-fixing": "whole",
  }),
  row("accessory-broken", "ventilation gaps, a finger goes in and falls short", {
    "gets-in": "finger-short",
    "cover-fixing": "whole",
  }),
  row("accessory-broken", "hairline crack in a stiff cover", { "gets-in": "nothing", "cover-fixing": "slight" }),
  row("accessory-broken", "socket-outlet cracked through, nothing live in reach", {
    "gets-in": "nothing",
    "cover-fixing": "loose",
  }),
  row("accessory-broken", "blank missing, busbar too deep for a finger", {
    "gets-in": "finger-short",
    "cover-fixing": "hole",
  }),
  row("accessory-broken", "broken socket-outlet, live terminal shows", { "gets-in": "finger", "cover-fixing": "hole" }),
  row("accessory-loose", "broken socket-outlet, live terminal shows", { ...FIRM, "gets-in": "finger" }),
  row("accessory-loose", "busbar behind a screwed cover in a hallway", { ...FIRM, "gets-in": "nothing" }),
  row("accessory-overheated", "busbar behind a screwed cover in a nursery", { ...COOL, "gets-in": "nothing" }),
  row("accessory-overheated", "broken socket-outlet, live terminal shows", { ...COOL, "gets-in": "finger" }),
  row("luminaire-heat", "busbar behind a screwed cover in a hallway", { ...LAMP, "gets-in": "nothing" }),
  row("luminaire-heat", "broken socket-outlet, live terminal shows", { ...LAMP, "gets-in": "finger" }),
  row("socket-old-type", "blank missing, busbar too deep for a finger", {
    shutters: "broken",
    "earth-contact": "earthed",
    purpose: "general",
  }),
  row("smoke-alarm-absent", "ceiling rose without its cover, terminals in reach from a bed", {
    alarms: "open-base",
    "relied-on": "no",
  }),
  row("lampholder-or-rose-open", "ceiling rose, whole, cover unscrews by hand", {
    ...HOLDER,
    "gets-in": "nothing",
    "allowed-opening": "yes",
    "cover-fixing": "whole",
  }),
  row("lampholder-or-rose-open", "empty lampholder, whole, a finger gets at its contact", {
    ...HOLDER,
    "gets-in": "finger",
    "allowed-opening": "yes",
    "cover-fixing": "whole",
  }),
  row(
    "lampholder-or-rose-open",
    "empty lampholder, whole, a finger gets at its contact, held to be live metal in reach",
    {
      ...HOLDER,
      "gets-in": "finger",
      "allowed-opening": "yes",
      "cover-fixing": "whole",
    },
  ),
  row("lampholder-or-rose-open", "lampholder with its ring off, terminals in reach", {
    ...HOLDER,
    "gets-in": "finger",
    "allowed-opening": "no",
    "cover-fixing": "hole",
  }),
  row("lampholder-or-rose-open", "ceiling rose without its cover, terminals in reach from a bed", {
    ...HOLDER,
    "gets-in": "finger",
    "allowed-opening": "no",
    "cover-fixing": "hole",
  }),
];
