import type { Answer, Classification } from "@good-grounds/core";

/** What an alternative says differently, and when it is taken. */
interface FurtherAlternative {
  readonly condition: string;
  readonly facts?: Readonly<Record<string, Answer>>;
  readonly positions?: Readonly<Record<string, string>>;
}

/** An observation as met on site, the more usual classification, and what others may say and when. */
export interface FurtherObservation {
  readonly situation: string;
  readonly topic: string;
  /** Only what the situation states. */
  readonly facts: Readonly<Record<string, Answer>>;
  readonly usual: Classification;
  readonly alternatives?: Partial<Record<Classification, FurtherAlternative>>;
}

/** Common practice, without a source: situations made up for the purpose, classified as inspectors usually do. */
export const FURTHER_OBSERVATIONS: Readonly<Record<string, FurtherObservation>> = {
  // Live parts and basic insulation
  "live-socket-smashed": {
    situation: "A socket-outlet in a bedroom is smashed, and a live terminal can be touched.",
    topic: "accessory-broken",
    facts: { "gets-in": "finger", "cover-fixing": "hole" },
    usual: "C1",
    alternatives: { C2: { condition: "a finger goes in and falls short", facts: { "gets-in": "finger-short" } } },
  },
  "live-switch-no-plate": {
    situation: "A light switch has no plate; bare terminals at 1.4 m.",
    topic: "accessory-broken",
    facts: { "cover-fixing": "open" },
    usual: "C1",
  },
  "live-lampholder": {
    situation: "A pendant lampholder is broken, and live metal other than the lamp contacts is in reach.",
    topic: "lampholder-or-rose-open",
    facts: { "gets-in": "finger", "allowed-opening": false, "cover-fixing": "hole" },
    usual: "C1",
    alternatives: {
      C2: {
        condition: "only from steps",
        facts: { "arms-reach": "long-things", "wet-or-conductive": false },
        positions: { distance: "counts" },
      },
    },
  },
  "live-cable-end": {
    situation: "The cable of a removed cooker sticks out of the kitchen wall, live, its cores bare.",
    topic: "live-conductors-unterminated",
    facts: {
      live: "live",
      "live-covering": "bare",
      "gets-in": "hand",
      "arms-reach": "within",
      obstacle: "none",
      "who-comes": "anyone",
    },
    usual: "C1",
    alternatives: {
      C2: {
        condition: "ends in taped connectors",
        facts: { "live-covering": "basic-damaged", "wet-or-conductive": false },
      },
    },
  },
  "live-knockout-side": {
    situation: "A 20 mm knockout is open in the side of a consumer unit; the finger touches nothing live.",
    topic: "board-blank-missing",
    facts: { "gets-in": "finger-short", "cover-fixing": "hole", "who-comes": "anyone" },
    usual: "C2",
    alternatives: {
      C3: { condition: "live metal lies well out of line", facts: { "cover-fixing": "slight" } },
      C1: { condition: "the finger touches live metal", facts: { "gets-in": "finger" } },
    },
  },
  "live-jb-no-lid": {
    situation: "A junction box in a loft used for storage has no lid; bare terminals can be touched.",
    topic: "joint-not-enclosed",
    facts: { enclosure: "cover-off", "live-covering": "bare", "gets-in": "hand", "who-comes": "anyone" },
    usual: "C1",
    alternatives: {
      C2: {
        condition: "nobody enters the loft in use, its hatch is shut",
        facts: { "gets-in": "nothing", "cover-opens": "hand", connection: "tight", combustible: false },
      },
    },
  },
  "live-board-door": {
    situation: "The outer door of a distribution board is gone; its inner cover is whole and screwed on.",
    topic: "board-cover-missing",
    facts: { "gets-in": "nothing", "cover-fixing": "slight", "hinges-carry": true, "cover-opens": "tool" },
    usual: "C3",
    alternatives: { none: { condition: "the cover is whole without the door", facts: { "cover-fixing": "whole" } } },
  },
  "live-shield-timer": {
    situation: "A panel opened by hand to set a timer has lost the shield over its terminals.",
    topic: "board-inner-shield",
    facts: { "barrier-behind": false, "cover-opens": "stands-open", "who-comes": "anyone" },
    usual: "C1",
    alternatives: { C2: { condition: "only skilled persons open it", facts: { "who-comes": "skilled-only" } } },
  },
  "basic-ins-meter-box": {
    situation: "Sound single-insulated tails inside a meter cupboard that shuts.",
    topic: "meter-tails-exposed",
    facts: {
      "live-covering": "basic-sound",
      "gets-in": "nothing",
      "cover-fixing": "whole",
      "hinges-carry": true,
      "cover-opens": "hand",
      wears: "nothing",
      "who-comes": "anyone",
      heat: "none",
    },
    usual: "C3",
    alternatives: { none: { condition: "the cupboard counts as enclosure", positions: { cupboard: "enough" } } },
  },
  "basic-ins-tails-hall": {
    situation: "Single-insulated tails cross a hallway wall at knee height.",
    topic: "meter-tails-exposed",
    facts: {
      "live-covering": "basic-sound",
      "gets-in": "hand",
      "cover-fixing": "open",
      wears: "knocks",
      "who-comes": "anyone",
      heat: "none",
    },
    usual: "C2",
    alternatives: { C3: { condition: "high up, out of the way", facts: { wears: "nothing" } } },
  },
  "basic-ins-sheath-short": {
    situation: "The sheath of a flat cable ends 50 mm before a consumer unit in a cupboard; sound cores show.",
    topic: "sheath-missing",
    facts: {
      "live-covering": "basic-sound",
      "gets-in": "nothing",
      "cover-opens": "hand",
      "who-comes": "anyone",
      wears: "nothing",
      joint: "none",
    },
    usual: "C3",
    alternatives: { C2: { condition: "stored things pull at them", facts: { wears: "moved" } } },
  },
  "basic-ins-choc-block": {
    situation: "A connector strip without a box joins cables above a light, lying on timber.",
    topic: "joint-not-enclosed",
    facts: {
      enclosure: "none",
      "live-covering": "basic-sound",
      "gets-in": "nothing",
      "cover-opens": "tool",
      combustible: true,
      connection: "tight",
    },
    usual: "C2",
    alternatives: { C3: { condition: "nothing that burns is near", facts: { combustible: false } } },
  },
  "basic-ins-trunking": {
    situation: "A trunking lid is missing at shoulder height; single cores show.",
    topic: "trunking-or-conduit-open",
    facts: {
      "cover-fixing": "open",
      "gets-in": "hand",
      "live-covering": "basic-sound",
      "arms-reach": "within",
      "who-comes": "anyone",
      wears: "knocks",
      metal: "not-metal",
    },
    usual: "C2",
    alternatives: {
      C3: { condition: "above arm's reach, nothing knocks it", facts: { "arms-reach": "beyond", wears: "nothing" } },
      C1: { condition: "bare metal shows", facts: { "live-covering": "bare" } },
    },
  },
  // Sockets
  "socket-reversed": {
    situation: "Line and neutral are reversed at a socket-outlet.",
    topic: "polarity-reversed-at-point",
    facts: { swapped: "line-neutral", switching: "both-poles" },
    usual: "C2",
    alternatives: { C3: { condition: "a plug parts both poles", positions: { "double-pole-swap": "improve" } } },
  },
  "socket-line-earth": {
    situation: "Line and earth are swapped at a socket-outlet into which a metal kettle is plugged.",
    topic: "polarity-reversed-at-point",
    facts: { swapped: "line-earth", "class-1-metal": true },
    usual: "C1",
    alternatives: { C2: { condition: "nothing class I is connected", facts: { "class-1-metal": false } } },
  },
  "socket-near-sink": {
    situation: "A socket-outlet is 150 mm from a kitchen sink and stays dry.",
    topic: "socket-near-water",
    facts: { wetting: "near" },
    usual: "C3",
    alternatives: {
      none: { condition: "no distance is laid down", positions: { "near-and-dry": "leave-it" } },
      C2: { condition: "splashed, no RCD", facts: { wetting: "splashed", "rcd-30ma": false } },
    },
  },
  "socket-bath-2m": {
    situation: "An ordinary socket-outlet without RCD is 2 m from the edge of zone 1.",
    topic: "bath-socket-position",
    facts: { distance: "2 m", outlet: "mains", "rcd-30ma": false },
    usual: "C2",
    alternatives: {
      C3: { condition: "RCD held enough", facts: { "rcd-30ma": true }, positions: { "rcd-enough": "enough" } },
    },
  },
  "socket-scorched": {
    situation: "A socket-outlet is browned round the pins of a heater's plug.",
    topic: "accessory-overheated",
    facts: { "heat-marks": "browned", "cause-removed": false, "hot-now": false, "gets-in": "nothing" },
    usual: "C2",
    alternatives: { C3: { condition: "the plug was the cause and is gone", facts: { "cause-removed": true } } },
  },
  "socket-earth-high": {
    situation: "One socket-outlet reads 3 ohm to earth where its neighbours read 0.4; its terminal is loose.",
    topic: "cpc-resistance-high",
    facts: { "fits-length": false, cause: "poor-joint" },
    usual: "C2",
    alternatives: {
      C3: {
        condition: "the resistance still fits its length, and faults are cleared in time",
        facts: { "fits-length": true, disconnects: true },
        positions: { "joint-that-still-clears": "improve" },
      },
    },
  },
  "socket-round-pin": {
    situation: "A round-pin socket-outlet without shutters serves a table lamp switched at the door.",
    topic: "socket-old-type",
    facts: { shutters: "never-had", "earth-contact": "earthed", purpose: "special" },
    usual: "none",
    alternatives: { C3: { condition: "general use", facts: { purpose: "general" } } },
  },
  // Earthing and bonding
  "earthing-none": {
    situation: "There is no earthing conductor and no electrode.",
    topic: "no-means-of-earthing",
    facts: { means: "absent", "metal-live": false },
    usual: "C2",
    alternatives: { C1: { condition: "metal is live now", facts: { "metal-live": true } } },
  },
  "earthing-off": {
    situation: "The earthing conductor is out of the main earthing terminal.",
    topic: "earthing-conductor-condition",
    facts: { connection: "off", "metal-live": false },
    usual: "C2",
    alternatives: { C1: { condition: "metal is live now", facts: { "metal-live": true } } },
  },
  "earthing-water-pipe": {
    situation: "The public water pipe is the only means of earthing.",
    topic: "no-means-of-earthing",
    facts: { means: "pipe-only", "metal-live": false },
    usual: "C2",
  },
  "earthing-label": {
    situation: "The label at the earth clamp is missing.",
    topic: "notice-missing",
    facts: { which: "earth-connection", notice: "missing" },
    usual: "C3",
  },
  "earthing-6": {
    situation: "A sound 6 mm² earthing conductor on PME; the adiabatic check is met.",
    topic: "earthing-conductor-undersized",
    facts: { adiabatic: true, "table-size": false, "below-pme-size": true, heat: "none" },
    usual: "C3",
    alternatives: { C2: { condition: "below bonding size on PME", positions: { "pme-current": "danger" } } },
  },
  "bond-6mm": {
    situation: "A 6 mm² gas bond, long in service, never hot, on PME with 25 mm² tails.",
    topic: "main-bonding-undersized",
    facts: { "table-size": false, size: "6 mm²", pme: true, heat: "none" },
    usual: "C3",
    alternatives: {
      none: { condition: "no danger shown", positions: { "small-bond": "nothing" } },
      C2: { condition: "terms of the PME supply", positions: { "small-bond": "danger-on-pme" } },
    },
  },
  "bond-clamp-loose": {
    situation: "The bonding clamp on the gas pipe turns by hand.",
    topic: "main-bonding-position",
    facts: { clamp: "loose" },
    usual: "C2",
  },
  "bond-plastic-service": {
    situation: "The water service is plastic; copper pipes indoors are not bonded.",
    topic: "main-bonding-absent",
    facts: { lightning: false, bond: "none", extraneous: "insulated", heat: "none" },
    usual: "none",
    alternatives: { C2: { condition: "measured earthy", facts: { extraneous: "shown-earthy" } } },
  },
  "bond-clamp-hidden": {
    situation: "The bonding clamp cannot be seen; the pipe reads as its conductor gives.",
    topic: "main-bonding-hidden",
    facts: { "clamp-reached": false, continuous: true },
    usual: "C3",
  },
  "bond-steel-frame": {
    situation: "The steel frame of a shop stands in the ground, without bonding.",
    topic: "main-bonding-absent",
    facts: { lightning: false, bond: "none", extraneous: "metal-entry", heat: "none" },
    usual: "C2",
  },
  "tt-no-rcd": {
    situation: "A TT house with breakers only; the loop is 60 ohm.",
    topic: "rcd-none-tt",
    facts: { "earthing-system": "tt", rcd: "none", "breaker-disconnects": false },
    usual: "C2",
  },
  "tt-electrode-high": {
    situation: "An electrode of 450 ohm in poor soil, the same as at the last report; 30 mA RCDs trip.",
    topic: "electrode-resistance",
    facts: { "earthing-system": "tt", "suits-rcds": true, "above-200": true, cause: "soil" },
    usual: "C3",
    alternatives: {
      none: { condition: "within 50 V", positions: { "high-value": "within-limit" } },
      C2: { condition: "not stable", positions: { "high-value": "not-stable" } },
    },
  },
  "tt-metal-board": {
    situation: "Double-insulated tails enter a metal board on TT by a bare hole; the first RCD is inside.",
    topic: "tt-unprotected-length",
    facts: { "earthing-system": "tt", tails: "double", board: "metal", upstream: false },
    usual: "C2",
    alternatives: { C3: { condition: "tails double insulated", positions: { "metal-board": "improvement" } } },
  },
  "tt-electrode-off": {
    situation: "The conductor is off the earth rod.",
    topic: "electrode-condition",
    facts: { "earthing-system": "tt", connected: "off" },
    usual: "C2",
  },
  // Boards
  "cu-loose-terminal": {
    situation: "A line terminal is found loose, without marks of heat, and is left.",
    topic: "board-terminations",
    facts: { grip: "loose", "put-right": false },
    usual: "C2",
    alternatives: {
      none: { condition: "tightened during the inspection", facts: { "put-right": true } },
    },
  },
  "cu-burnt-switch": {
    situation: "The main switch is charred at a terminal; the cause is still there.",
    topic: "board-overheating",
    facts: { marks: "burnt", cause: "still-there" },
    usual: "C2",
    alternatives: { C1: { condition: "hot and smelling now", facts: { marks: "active" } } },
  },
  "cu-wooden-back": {
    situation: "A board is open at its rear to the wood it is screwed to; connections lie open to the wood.",
    topic: "old-wooden-board",
    facts: { wood: "live-on-wood", "gets-in": "nothing", "heat-or-loose": "none", insulation: "supple" },
    usual: "C3",
    alternatives: { C2: { condition: "a terminal is loose", facts: { "heat-or-loose": "loose" } } },
  },
  "cu-hanging": {
    situation: "The consumer unit hangs by its cables.",
    topic: "board-fixing",
    facts: { fixing: "hanging" },
    usual: "C2",
  },
  "cu-no-grommet": {
    situation: "Cables enter a steel board over a bare edge, sheath whole, circuits with tested earth.",
    topic: "board-cable-entry",
    facts: { "gets-in": "nothing", "cover-fixing": "whole", edge: "sharp", "case-fault-cleared": true },
    usual: "C3",
    alternatives: { C2: { condition: "the edge has cut in", facts: { edge: "cut-in" } } },
  },
  "cu-leaking-pipe": {
    situation: "A consumer unit is wet inside under a leaking pipe.",
    topic: "board-damp",
    facts: { inside: "wet-now" },
    usual: "C1",
    alternatives: {
      C2: {
        condition: "dry now, marks on live parts, pipe still leaks",
        facts: { inside: "on-live-parts", "source-stopped": false },
      },
    },
  },
  "cu-high": {
    situation: "A consumer unit is at 2.6 m over a door, reached from steps.",
    topic: "board-position",
    facts: { water: "dry", reach: "awkward" },
    usual: "C3",
  },
  "cu-stored": {
    situation: "Coats and paper lie against a sound consumer unit under the stairs.",
    topic: "board-things-stored",
    facts: { stored: "burns", heat: "none", closed: true },
    usual: "C3",
    alternatives: { C2: { condition: "marks of heat in the board", facts: { heat: "marks" } } },
  },
  "cu-no-main-switch": {
    situation: "There is no main switch.",
    topic: "main-switch-missing-or-faulty",
    facts: { switch: "none" },
    usual: "C2",
  },
  "cu-breaker-40": {
    situation: "A 40 A breaker protects 2.5 mm² to sockets in a wall, 24 A as installed.",
    topic: "overload-device-oversize",
    facts: { "within-cable": false, excess: "large", "cable-load": "can-exceed", heat: "none" },
    usual: "C2",
    alternatives: {
      C3: {
        condition: "one fixed load",
        facts: { "cable-load": "stays-under", excess: "slight", heat: "none" },
        positions: { "load-today": "counts" },
      },
    },
  },
  "cu-switch-63": {
    situation: "A 63 A RCD main switch behind a 100 A fuse; demand logged at 40 A.",
    topic: "switch-rating-low",
    facts: { "rating-enough": false, "load-within": true },
    usual: "C3",
    alternatives: { C2: { condition: "load beyond its rating", facts: { "load-within": false } } },
  },
  "cu-two-in-one": {
    situation: "Two circuits share one breaker that protects both cables; the terminal holds both.",
    topic: "circuits-mixed",
    facts: { mix: "doubled", "smallest-carries": true, terminal: "holds", heat: "none" },
    usual: "C3",
    alternatives: {
      none: { condition: "one circuit with branches", positions: { doubling: "nothing" } },
      C2: { condition: "the smaller cable is not protected", facts: { "smallest-carries": false } },
    },
  },
  "spd-absent": {
    situation: "No surge protective device in a house wired in 2010.",
    topic: "surge-protection-absent",
    facts: { state: "none", "what-hangs-on-it": "goods", "asked-when-made": false },
    usual: "C3",
    alternatives: { none: { condition: "older than the requirement", positions: { "older-board": "no-entry" } } },
  },
  "spd-spent": {
    situation: "The window of a surge protective device is red.",
    topic: "surge-protection-absent",
    facts: { state: "spent" },
    usual: "C3",
  },
  "fuse-bolt": {
    situation: "A bolt replaces a fuse in its carrier.",
    topic: "fuse-wire-oversize",
    facts: { element: "no-fuse" },
    usual: "C2",
  },
  "fuse-carrier-broken": {
    situation: "A fuse carrier is cracked; no live metal is touched.",
    topic: "fuse-carrier-broken",
    facts: { "cover-fixing": "loose", "gets-in": "nothing", "who-comes": "anyone" },
    usual: "C2",
    alternatives: { C1: { condition: "the way is open", facts: { "cover-fixing": "hole", "gets-in": "finger" } } },
  },
  "breaking-capacity": {
    situation: "Fault current 7.7 kA, breakers of 3 kA, no conditional rating, supply fuse of 100 A ahead.",
    topic: "breaking-capacity-exceeded",
    facts: { rated: false, "supply-fuse-ahead": true, "backed-up": false },
    usual: "C2",
    alternatives: { C3: { condition: "the supply fuse counts", positions: { "supply-fuse": "fuse-counts" } } },
  },
  // RCDs
  "rcd-no-trip": {
    situation: "A 30 mA RCD for sockets does not trip by instrument.",
    topic: "rcd-does-not-trip",
    facts: { "rcd-operates": false, "rcd-role": "additional" },
    usual: "C2",
    alternatives: { C3: { condition: "as if absent", positions: { "fitted-but-dead": "same-as-absent" } } },
  },
  "rcd-button": {
    situation: "The test button does nothing; by instrument the RCD trips in 22 ms.",
    topic: "rcd-does-not-trip",
    facts: { "rcd-operates": true, button: false },
    usual: "C3",
    alternatives: {
      C2: {
        condition: "a failing device",
        facts: { "rcd-role": "additional" },
        positions: { "button-only": "failing" },
      },
    },
  },
  "rcd-type-ac": {
    situation: "Type AC RCDs of 2012 serve the sockets of a TN flat.",
    topic: "rcd-type-ac",
    facts: { "rcd-type": "ac", loads: "pulsating", "rcd-role": "additional", "asked-when-made": false },
    usual: "C3",
    alternatives: {
      none: { condition: "older than the restriction", positions: { "older-type": "no-entry" } },
      C2: { condition: "a charger leaks smooth d.c.", facts: { loads: "smooth" } },
    },
  },
  "rcd-one-way": {
    situation: "A one-way RCBO is fed backwards by solar panels and gives additional protection.",
    topic: "rcd-one-way-fed-backwards",
    facts: { "fed-from-load": true, direction: "one-way", "rcd-role": "additional" },
    usual: "C3",
    alternatives: {
      C2: { condition: "fault protection", facts: { "rcd-role": "fault-protection" } },
      none: { condition: "maker's paper", facts: { direction: "either-way" } },
    },
  },
  "rcd-outdoor-socket": {
    situation: "An outdoor socket-outlet has no RCD.",
    topic: "sockets-no-rcd",
    facts: { "rcd-30ma": false, "outdoor-use": "likely", "other-socket": false },
    usual: "C2",
  },
  "rcd-shower": {
    situation: "An electric shower has no RCD; its breaker opens on an earth fault.",
    topic: "fixed-equipment-no-rcd",
    facts: { "rcd-30ma": false, "fault-cleared": true, place: "wet" },
    usual: "C3",
    alternatives: { C2: { condition: "wet and no RCD", positions: { "wet-use": "layer-lost" } } },
  },
  "rcd-half-trips": {
    situation: "A 30 mA RCD opens at 15 mA with its load off, and never trips in use.",
    topic: "rcd-too-sensitive",
    facts: { "holds-at-half": false, trips: "never" },
    usual: "C3",
  },
  "rcd-crossed": {
    situation: "Neutral on another RCD's bar; the line is behind its own.",
    topic: "rcd-neutrals-crossed",
    facts: { neutral: "wrong-bar", "line-moved": false },
    usual: "C3",
  },
  // Circuits
  "ir-low": {
    situation: "0.3 megohm between live conductors and earth with everything disconnected, metal earthed.",
    topic: "insulation-low",
    facts: { "reaches-limit": false, lies: "wiring", between: "live-earth", "metal-earthed": true },
    usual: "C2",
    alternatives: { none: { condition: "a load was left connected", facts: { lies: "test-only" } } },
  },
  "zs-no-rcd": {
    situation: "2.4 ohm on B32 without RCD.",
    topic: "zs-over-limit",
    facts: { disconnects: "not-in-time" },
    usual: "C2",
  },
  "ring-broken-line": {
    situation: "The line of a 32 A kitchen ring is open.",
    topic: "ring-broken",
    facts: { "live-conductor-open": true, legs: "overloadable", heat: "none" },
    usual: "C2",
    alternatives: {
      C3: {
        condition: "light loads",
        facts: { legs: "light-load", heat: "none", cpc: "whole" },
        positions: { "light-load": "counts" },
      },
    },
  },
  "ring-broken-cpc": {
    situation:
      "The protective conductor of a ring is open once; every point still reaches earth; nothing has been hot.",
    topic: "ring-broken",
    facts: { "live-conductor-open": false, cpc: "open-once", heat: "none" },
    usual: "C3",
    alternatives: { C2: { condition: "a point has lost its earth", facts: { cpc: "point-lost" } } },
  },
  "ring-bridged": {
    situation: "A ring is bridged within itself; no section is overloaded.",
    topic: "ring-interconnected",
    facts: { joined: "within", sections: "even" },
    usual: "C3",
    alternatives: {
      none: { condition: "more paths do no harm", positions: { "bridge-alone": "nothing" } },
      C2: { condition: "a section is overloaded", facts: { sections: "uneven" } },
    },
  },
  "spur-two-twins": {
    situation: "An unfused 2.5 mm² spur feeds two twin sockets with light loads, no heat.",
    topic: "spur-overloaded",
    facts: { outlets: "several", fused: false, "cable-carries": false, load: "light", heat: "none" },
    usual: "C3",
    alternatives: { C2: { condition: "heavy loads", facts: { load: "heavy" } } },
  },
  "cpc-light-metal": {
    situation: "No protective conductor in lighting with metal switch plates.",
    topic: "lighting-no-cpc",
    facts: { "cpc-present": false, fittings: "class-1" },
    usual: "C2",
  },
  "cpc-off-luminaire": {
    situation: "The protective conductor is off in a metal luminaire.",
    topic: "metal-accessory-unearthed",
    facts: { earthing: "none", metal: "plate" },
    usual: "C2",
  },
  "cpc-undersized": {
    situation: "A fault lets through more than the protective conductor withstands.",
    topic: "cpc-undersized",
    facts: { withstands: false },
    usual: "C2",
  },
  "polarity-switch": {
    situation: "The single-pole light switch is in the neutral.",
    topic: "neutral-switched-or-fused",
    facts: { opens: "by-switch", "live-when-off": "needs-tool" },
    usual: "C2",
    alternatives: {
      C1: { condition: "live in ordinary use", facts: { "live-when-off": "in-use", "line-also": false } },
    },
  },
  "polarity-es": {
    situation: "The outer contact of a screw lampholder is the line, switched by one pole.",
    topic: "polarity-reversed-at-point",
    facts: { swapped: "line-neutral", switching: "one-pole", "live-when-off": "in-use" },
    usual: "C1",
    alternatives: { C2: { condition: "reached with a tool only", facts: { "live-when-off": "needs-tool" } } },
  },
  "polarity-supply": {
    situation: "The incoming supply is reversed.",
    topic: "supply-polarity-reversed",
    facts: {
      correct: false,
      "metal-live": false,
      "all-double-pole": false,
      heat: "none",
      "live-when-off": "needs-tool",
    },
    usual: "C2",
    alternatives: {
      C1: { condition: "live metal is met in ordinary use", facts: { "live-when-off": "in-use" } },
    },
  },
  "borrowed-neutral": {
    situation: "Up and down stairs lighting share a neutral on two breakers.",
    topic: "borrowed-neutral",
    facts: { shared: true, switching: "apart" },
    usual: "C2",
    alternatives: {
      C3: {
        condition: "one RCD and a notice",
        facts: { switching: "same-rcd", notice: true, "neutral-carries": true },
      },
      none: { condition: "one linked device", facts: { switching: "together", notice: true, "neutral-carries": true } },
    },
  },
  "voltage-drop": {
    situation: "The drop at the end is 9 %; lamps dim.",
    topic: "voltage-drop-high",
    facts: { within: false, effect: "nuisance", "poor-joint": false },
    usual: "C3",
    alternatives: { C2: { condition: "a poor joint", facts: { "poor-joint": true } } },
  },
  // Cables
  "vir-sound": {
    situation: "Rubber insulation, supple, in closed boxes.",
    topic: "rubber-or-lead-cable",
    facts: {
      "live-covering": "basic-sound",
      rubber: "supple",
      "gets-in": "nothing",
      "metal-sheath": "not-metal",
      "hot-ends": true,
    },
    usual: "none",
    alternatives: { C3: { condition: "hard, still whole", facts: { rubber: "hard" } } },
  },
  "vir-brittle": {
    situation: "Rubber insulation crumbles at a touch, in closed boxes.",
    topic: "rubber-or-lead-cable",
    facts: { "live-covering": "basic-damaged", "gets-in": "nothing", "cover-opens": "tool" },
    usual: "C2",
  },
  "pvc-green": {
    situation: "Green matter at a socket, contacts clean, good readings.",
    topic: "pvc-exudation",
    facts: { seen: true, reaches: "on-cores", contacts: "clean", insulation: true },
    usual: "C3",
    alternatives: {
      none: { condition: "by itself nothing", positions: { "matter-alone": "nothing" } },
      C2: { condition: "corroded contacts", facts: { contacts: "corroded" } },
    },
  },
  "cable-escape-plastic": {
    situation: "Many cables in plastic trunking cross the common way out with no metal fixings.",
    topic: "cable-unsupported",
    facts: { support: "held", "early-fall": true, bulk: "much", "way-out": true },
    usual: "C2",
    alternatives: {
      C3: { condition: "one light cable", facts: { bulk: "little" } },
      none: { condition: "as in its day", positions: { "falling-cables": "nothing" } },
    },
  },
  "cable-loose": {
    situation: "A surface cable has lost its clips and sags; nothing pulls on it.",
    topic: "cable-unsupported",
    facts: { support: "sagging", "way-out": false },
    usual: "C3",
    alternatives: { C2: { condition: "pulls on connections", facts: { support: "pulling" } } },
  },
  "cable-flue": {
    situation: "A cable lies on a hot flue; its sheath is hard and browned.",
    topic: "cable-near-services",
    facts: { pipe: "heated", sheath: "marked" },
    usual: "C2",
    alternatives: { C3: { condition: "the sheath is sound", facts: { sheath: "sound" } } },
  },
  "cable-polystyrene": {
    situation: "PVC cable lies against polystyrene sheet, lightly loaded, adequate.",
    topic: "cable-under-insulation",
    facts: { polystyrene: true, "within-cable": true, heat: "none" },
    usual: "C3",
  },
  "cable-nailed": {
    situation: "A nail has gone through a cable within reach; copper shows.",
    topic: "cable-damaged",
    facts: { "live-covering": "bare", "gets-in": "hand", "who-comes": "anyone" },
    usual: "C1",
    alternatives: { C2: { condition: "under a floor", facts: { "gets-in": "nothing", "cover-opens": "tool" } } },
  },
  "cable-buried-flat": {
    situation: "Flat twin cable lies 100 mm deep in a flower bed.",
    topic: "cable-buried",
    facts: { kind: "unprotected", depth: "shallow" },
    usual: "C2",
  },
  "cable-sunlit": {
    situation: "Flat PVC cable is clipped to a sunny wall out of reach, sheath sound.",
    topic: "garden-cable-unprotected",
    facts: { cable: "indoor-type", route: "out-of-harm", condition: "sound" },
    usual: "C3",
    alternatives: { C2: { condition: "split by the sun", facts: { condition: "split" } } },
  },
  "cable-swa": {
    situation: "The armour of a shed supply is not earthed and is the only protective conductor.",
    topic: "cable-armour-unearthed",
    facts: { armour: "unearthed", "only-conductor": true },
    usual: "C2",
  },
  "cable-iz-insulation": {
    situation: "A 32 A cooker cable lies in insulation and carries 22 A there.",
    topic: "cable-under-insulation",
    facts: { covered: "surrounded", "within-cable": false, load: "heavy", heat: "none" },
    usual: "C2",
    alternatives: { C3: { condition: "lightly loaded, no heat", facts: { load: "light" } } },
  },
  "joint-under-floor": {
    situation: "Screw joint box under a fixed floor; good readings.",
    topic: "joint-inaccessible",
    facts: { kind: "screw", access: "lift-floor", "poor-joint": false },
    usual: "C3",
    alternatives: { none: { condition: "maintenance-free kind", facts: { kind: "lasting" } } },
  },
  "joint-twisted": {
    situation: "A twisted and taped joint under the floor, no box.",
    topic: "joint-not-enclosed",
    facts: {
      enclosure: "none",
      "live-covering": "basic-damaged",
      "wet-or-conductive": false,
      connection: "doubtful",
    },
    usual: "C2",
  },
  "segregation-data": {
    situation: "Data cable lies beside sheathed mains cable in one trunking.",
    topic: "wiring-not-kept-apart",
    facts: { together: "sheathed", insulation: "whole" },
    usual: "C3",
    alternatives: { C2: { condition: "single mains cores", facts: { together: "cores" } } },
  },
  // Accessories and equipment
  "elv-driver-loose": {
    situation: "A driver of downlights lies loose in the void, cool.",
    topic: "lighting-transformer",
    facts: { place: "loose", "heat-done": "none", "safe-source": true, bare: "insulated" },
    usual: "C3",
    alternatives: { C2: { condition: "a terminal is browned", facts: { "heat-done": "browned" } } },
  },
  "motor-restart": {
    situation: "A bench saw starts again by itself after a loss of supply.",
    topic: "motor-protection",
    facts: { restart: "dangerous" },
    usual: "C2",
  },
  "accessory-hot": {
    situation: "An immersion heater switch is melted and too hot to hold.",
    topic: "accessory-overheated",
    facts: { "heat-marks": "melted", "hot-now": true },
    usual: "C1",
    alternatives: {
      C2: {
        condition: "browned, cool now",
        facts: { "heat-marks": "browned", "hot-now": false, "cause-removed": false, "gets-in": "nothing" },
      },
    },
  },
  "accessory-flush-lug": {
    situation: "A metal switch plate is earthed by screws only, through a fixed lug; reads low.",
    topic: "metal-accessory-unearthed",
    facts: { earthing: "fixed-lug", metal: "plate", continuous: true },
    usual: "none",
    alternatives: { C3: { condition: "adjustable lugs", facts: { earthing: "loose-lugs" } } },
  },
  "immersion-plastic": {
    situation: "An immersion heater without cut-out under a plain plastic cistern.",
    topic: "immersion-cutout",
    facts: { "cut-out": false, cistern: "plastic", "thermostat-fails": false },
    usual: "C2",
    alternatives: { C1: { condition: "the water has boiled", facts: { "thermostat-fails": true } } },
  },
  "immersion-plug": {
    situation: "A 3 kW immersion heater on a 13 A plug; plug and flex are not marked.",
    topic: "equipment-connection-open",
    facts: { joined: "outlet", "fuse-over-flex": false },
    usual: "none",
  },
  "shower-cable": {
    situation: "A 10.5 kW shower on 6 mm² under insulation.",
    topic: "shower-overloaded",
    facts: { "load-over-cable": true, "device-over-cable": true, heat: "none" },
    usual: "C2",
    alternatives: { C3: { condition: "short use", positions: { "short-use": "is-an-answer" } } },
  },
  "isolation-shower": {
    situation: "An electric shower has no local isolator; its breaker can be locked off and is labelled.",
    topic: "fixed-equipment-isolation",
    facts: { means: "secured", beside: false, "own-device": true },
    usual: "none",
    alternatives: { C3: { condition: "recorded", positions: { elsewhere: "record" } } },
  },
  "isolation-cooker": {
    situation: "The cooker plug is behind the built-in oven.",
    topic: "cooker-isolation-missing",
    facts: { switch: "hidden" },
    usual: "C3",
  },
  "isolation-machine": {
    situation: "A workshop saw has no emergency stop; its blade is open.",
    topic: "emergency-switching-missing",
    facts: { danger: "foreseeable", device: "none" },
    usual: "C2",
  },
  "downlight-fire": {
    situation: "Halogen downlights lie under insulation, no scorch.",
    topic: "downlight-insulation",
    facts: { covered: true, scorch: false, heat: "hot" },
    usual: "C3",
    alternatives: { C2: { condition: "one step from fire", positions: { "no-marks-yet": "heat-builds-up" } } },
  },
  "smoke-none": {
    situation: "A rented house has no smoke alarms.",
    topic: "smoke-alarm-absent",
    facts: { alarms: "none-fitted" },
    usual: "none",
    alternatives: { C3: { condition: "recorded", positions: { "missing-alarm": "improvement" } } },
  },
  // Baths
  "bath-light-zone1": {
    situation: "A mains light of IP20 is over a bath in zone 1.",
    topic: "bath-equipment-in-zone",
    facts: { zone: "zone-1", suited: false, voltage: "mains" },
    usual: "C2",
    alternatives: { C3: { condition: "zone 2, dry", facts: { zone: "zone-2", wetted: "dry" } } },
  },
  "bath-wall-switch": {
    situation: "An ordinary light switch in zone 2, dry.",
    topic: "bath-switch-in-reach",
    facts: { zone: "zone-2", kind: "wall", wetted: false },
    usual: "C2",
    alternatives: { C3: { condition: "stays dry", positions: { "wet-hands": "does-not-count" } } },
  },
  "bath-nothing": {
    situation: "No RCD, no bonding, metal pipes and a class I heater in reach of the bath.",
    topic: "bath-rcd-and-bonding",
    facts: { "rcd-30ma": false, bonding: false, parts: "earthed-metal" },
    usual: "C2",
  },
  "bath-heater": {
    situation: "A bar heater with open element within reach of the bath.",
    topic: "bath-heater-in-reach",
    facts: { reach: "easy", "live-element": true },
    usual: "C1",
  },
  // Outdoors and special
  "outdoor-light-open": {
    situation: "The glass of a garden light is broken; no live metal is touched.",
    topic: "outdoor-luminaire-damaged",
    facts: { state: "open" },
    usual: "C2",
    alternatives: { C1: { condition: "live metal in reach", facts: { state: "live-in-reach" } } },
  },
  "outdoor-shed-flex": {
    situation: "A flexible lead from a plug in the house feeds a shed.",
    topic: "outbuilding-supply",
    facts: { feed: "lead" },
    usual: "C2",
  },
  "caravan-pme": {
    situation: "A caravan is fed from a PME earth.",
    topic: "pitch-or-mooring-supply",
    facts: { earthing: "pme", "rcd-any": true, outlet: "sound" },
    usual: "C2",
  },
  // Intake
  "supply-looped": {
    situation: "The service is looped from next door before the main fuses; no heat.",
    topic: "looped-supply",
    facts: { shared: "before-the-fuse", "earth-from": "own", heat: "none", "metal-live": false },
    usual: "none",
    alternatives: { C3: { condition: "to be separated", positions: { loop: "improvement" } } },
  },
  "supply-seals": {
    situation: "The seal of the cut-out is missing; nothing else is changed.",
    topic: "supply-tampered",
    facts: { found: "seals", "gets-in": "nothing", "cover-fixing": "whole", heat: "none" },
    usual: "none",
    alternatives: { C3: { condition: "worth an entry", positions: { "seal-missing": "improvement" } } },
  },
  "supply-pitch": {
    situation: "Filling compound has run out of the cut-out, which is whole.",
    topic: "distributor-equipment-damaged",
    facts: { "gets-in": "nothing", "cover-fixing": "whole", fixed: true, heat: "marks" },
    usual: "C2",
  },
  "supply-tails-small": {
    situation: "16 mm² tails behind a 100 A fuse; demand assessed at 45 A; cool.",
    topic: "meter-tails-size",
    facts: { "fuse-within": false, load: "below", heat: "none" },
    usual: "C3",
    alternatives: {
      C2: { condition: "assessment does not count", positions: { "assessed-demand": "does-not-count" } },
    },
  },
  // Other sources
  "ev-no-rcd": {
    situation: "A charging point has no RCD.",
    topic: "ev-direct-current",
    facts: { "point-rcd": "none" },
    usual: "C2",
  },
  "ev-type-ac": {
    situation: "A charging point has a type AC RCD and no d.c. detection.",
    topic: "ev-direct-current",
    facts: { "point-rcd": "own", "direct-current": "type-ac" },
    usual: "C2",
    alternatives: {
      C3: { condition: "remote", facts: { "fault-protection-by-rcd": false }, positions: { "dc-blinds": "remote" } },
    },
  },
  "pv-no-isolator": {
    situation: "No isolator on the a.c. side of a solar inverter.",
    topic: "pv-isolation",
    facts: { "ac-isolator": "absent" },
    usual: "C2",
  },
  "pv-mixed-connectors": {
    situation: "Solar connectors of two kinds are mated, cool and tight; cables sound.",
    topic: "pv-cable-damaged",
    facts: { connectors: "mixed", "live-covering": "double-or-reinforced", heat: "none", "rubbing-or-hanging": false },
    usual: "C3",
    alternatives: { C2: { condition: "one is discoloured", facts: { heat: "marks" } } },
  },
  "gen-floating": {
    situation: "A backup inverter feeds circuits without a neutral-earth link.",
    topic: "island-earth-reference",
    facts: { island: true, "neutral-link": "absent" },
    usual: "C2",
  },
  "bess-loft": {
    situation: "A sound battery store stands in a loft against its maker's instructions; no alarm.",
    topic: "battery-place",
    facts: { place: "loft-or-void", condition: "sound", heat: "none", "as-maker-asks": false, detection: false },
    usual: "C2",
    alternatives: { C3: { condition: "linked alarm", facts: { detection: true } } },
  },
  // Notices and identification
  "label-mislabelled": {
    situation: "Breakers are labelled wrongly: the one marked shower leaves it live.",
    topic: "wrong-label",
    facts: { label: "misleads" },
    usual: "C2",
    alternatives: {
      C3: { condition: "only electricians", facts: { "relied-on": false }, positions: { "proving-dead": "does" } },
    },
  },
  "label-rcd": {
    situation: "The notice to press the RCD's test button is missing.",
    topic: "notice-missing",
    facts: { which: "rcd-test", notice: "missing" },
    usual: "C3",
    alternatives: { none: { condition: "told in writing", facts: { notice: "in-papers" } } },
  },
  "label-source": {
    situation: "No notice tells of the solar panels, which stop with the mains.",
    topic: "notice-missing",
    facts: { which: "other-source", notice: "missing", "stays-live": false },
    usual: "C3",
    alternatives: { C2: { condition: "a battery keeps parts live", facts: { "stays-live": true } } },
  },
  "label-voltage": {
    situation: "No warning of 400 V between accessories on two phases.",
    topic: "notice-missing",
    facts: { which: "voltage", notice: "missing" },
    usual: "C3",
  },
  "label-colours": {
    situation: "Old and new core colours, no notice.",
    topic: "notice-missing",
    facts: { which: "mixed-colours", notice: "missing" },
    usual: "C3",
  },
  "colours-earth-live": {
    situation: "A green-and-yellow core is used as a live core, unmarked.",
    topic: "conductor-colours",
    facts: { colours: "live-looks-earth", marked: false },
    usual: "C2",
    alternatives: { C3: { condition: "marked at its ends", facts: { marked: true } } },
  },
  "medical-bond": {
    situation: "Metal round the couch of a surgery (group 1) is not joined to the bonding bar.",
    topic: "medical-place",
    facts: { group: "group-1", bonding: false },
    usual: "C2",
  },
  // Danger by itself: another answer of the same observation does not take it away
  "danger-bond-browned": {
    situation: "The main bond to gas is of 10 mm², as it should be, and its insulation is browned and stiff.",
    topic: "main-bonding-undersized",
    facts: { "table-size": true, size: "10 mm²", pme: true, heat: "marks" },
    usual: "C2",
  },
  "danger-broken-neutral": {
    situation:
      "Metal of the house is live to ground, lights flare; neutral and earth are joined by the distributor only.",
    topic: "earth-neutral-joined",
    facts: { joined: "by-distributor", "metal-live": true },
    usual: "C1",
  },
  "danger-battery-outdoors": {
    situation: "A battery store outdoors, fixed as its maker asks, is swollen and cool.",
    topic: "battery-place",
    facts: { place: "outside", condition: "damaged", heat: "none", "as-maker-asks": true, detection: true },
    usual: "C2",
    alternatives: { C1: { condition: "it is too hot to touch", facts: { heat: "now" } } },
  },
  "danger-clean-store": {
    situation: "A clean store; the switch-fuse on its wall is scorched.",
    topic: "dusty-or-storage-place",
    facts: { dust: "clean", enclosure: true, "rcd-300ma": true, heat: true },
    usual: "C2",
  },
  "danger-joint-within-limits": {
    situation:
      "Zs is within the limit of the breaker; the earth joint in a socket is loose and explains an excess of 0.3 ohm.",
    topic: "zs-over-limit",
    facts: { disconnects: "in-time", by: "overcurrent", unaccounted: true, "failing-joint": true },
    usual: "C2",
  },
  "danger-poor-earth-joint": {
    situation: "A corroded earth joint; its resistance still fits the length, and faults are cleared in time.",
    topic: "cpc-resistance-high",
    facts: { "fits-length": true, cause: "poor-joint", disconnects: true },
    usual: "C2",
    alternatives: {
      C3: { condition: "to be improved while it clears", positions: { "joint-that-still-clears": "improve" } },
    },
  },
  "danger-hot-contacts": {
    situation: "Contacts of a socket are marked by heat; no matter comes out of the cable.",
    topic: "pvc-exudation",
    facts: { seen: false, reaches: "on-cores", contacts: "corroded", insulation: true },
    usual: "C2",
  },
  "danger-cut-out-smokes": {
    situation: "The cut-out smokes under load; its case is whole and the distributor has been told.",
    topic: "distributor-equipment-damaged",
    facts: { "gets-in": "nothing", "cover-fixing": "whole", fixed: true, heat: "now", reported: true },
    usual: "C1",
  },
  "danger-tail-smokes": {
    situation: "A tail smokes at the meter; its size and the load are in order.",
    topic: "meter-tails-size",
    facts: { "fuse-within": true, load: "limited", "demand-within-fuse": true, heat: "now" },
    usual: "C1",
  },
  "danger-bars-behind-rail": {
    situation: "Bare bars behind a rail in a room that anyone enters, with notices.",
    topic: "live-parts-out-of-reach",
    facts: {
      "arms-reach": "within",
      obstacle: "secured",
      "who-comes": "anyone",
      "wet-or-conductive": false,
      notice: true,
    },
    usual: "C1",
    alternatives: { C2: { condition: "the rail counts as a layer", positions: { distance: "counts" } } },
  },
  "live-crane-wires": {
    situation: "Bare crane conductors 4 m up in a workshop that anyone enters.",
    topic: "live-parts-out-of-reach",
    facts: { "arms-reach": "beyond", obstacle: "none", "who-comes": "anyone", "wet-or-conductive": false },
    usual: "C1",
    alternatives: {
      C2: { condition: "height counts as a layer", positions: { distance: "counts" } },
      none: { condition: "skilled persons only, notices", facts: { "who-comes": "skilled-only", notice: true } },
    },
  },
  "water-ceiling-light": {
    situation: "Water drips through a ceiling light that is on.",
    topic: "water-in-equipment",
    facts: { water: "running-in", circuit: "in-service" },
    usual: "C1",
    alternatives: {
      C2: { condition: "locked off", facts: { circuit: "locked-off" } },
      C3: { condition: "old marks, leak stopped", facts: { water: "dry-marks", "source-stopped": true } },
    },
  },
  // Fire
  "firestop-downlights": {
    situation: "Open-backed downlights are cut into the ceiling between two flats.",
    topic: "fire-stopping",
    facts: { element: "escape-route", opening: "fittings" },
    usual: "C2",
  },
  "emergency-light-dead": {
    situation: "No emergency light comes on in the inner stair of flats.",
    topic: "emergency-lighting",
    facts: { "relied-on": true, light: "none" },
    usual: "C2",
    alternatives: { C3: { condition: "all come on, for half their time", facts: { light: "short" } } },
  },
  "firestop-tails": {
    situation: "The hole for the tails in a plain inside wall is not sealed.",
    topic: "fire-stopping",
    facts: { element: "plain" },
    usual: "none",
  },
  "fire-flood-lamp": {
    situation: "Stock touches a halogen flood in a store.",
    topic: "luminaire-heat",
    facts: { "near-fuel": "touching", damage: "none" },
    usual: "C2",
  },
};
