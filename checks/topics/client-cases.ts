import type { Answer, Classification } from "@good-grounds/core";

/** A situation in which a plain sentence chosen by the classification alone says what the facts deny. */
export interface ClientCase {
  readonly topic: string;
  readonly facts: Readonly<Record<string, Answer>>;
  readonly positions?: Readonly<Record<string, string>>;
  /** The inspector's choice, where it is not what follows. */
  readonly chosen?: Classification;
  /** Words that are not so. */
  readonly untrue: string;
  /** Words that are so; empty where nothing is said. */
  readonly said: string;
}

const limited: Answer = { notKnown: "limited", reason: "not within the agreed extent" };

export const CLIENT_CASES: readonly ClientCase[] = [
  {
    topic: "board-cover-missing",
    facts: { "live-touchable": true, cover: "weak", access: "anyone" },
    untrue: "has lost its cover",
    said: "Live metal can be touched",
  },
  {
    topic: "board-cover-missing",
    facts: { "live-touchable": true, cover: "off", access: "skilled-only" },
    untrue: "If it comes off",
    said: "A lock keeps people away",
  },
  {
    topic: "board-cover-missing",
    facts: { "live-touchable": true, cover: "off", access: "locked-off" },
    untrue: "It still keeps you safe",
    said: "out of use and locked",
  },
  {
    topic: "board-blank-missing",
    facts: { "finger-reaches-live": true, gap: "in-line", access: "skilled-only" },
    untrue: "Something pushed in",
    said: "A finger can touch live metal",
  },
  {
    topic: "board-blank-missing",
    facts: { "finger-reaches-live": true, gap: "in-line", access: "locked-off" },
    untrue: "small gap",
    said: "out of use",
  },
  {
    topic: "board-blank-missing",
    facts: { "finger-reaches-live": false, gap: limited, access: "anyone" },
    untrue: "There is a hole",
    said: "We could not find out if a gap",
  },
  {
    topic: "old-wooden-board",
    facts: { wood: "live-on-wood", "live-reach": false, heat: "active", insulation: "supple" },
    untrue: "Live metal can be touched",
    said: "hot or smells of burning",
  },
  {
    topic: "board-combustible",
    facts: {
      combustible: false,
      premises: "home",
      "asked-when-fitted": false,
      heat: "marks",
      "only-way-out": false,
      "alarm-near": true,
    },
    untrue: "The fuse box can burn",
    said: "parts have been hot",
  },
  {
    topic: "board-terminations",
    facts: {
      grip: "loose",
      strands: "all",
      "clamps-insulation": false,
      "in-one-terminal": "as-made-for",
      "put-right": true,
    },
    positions: { "found-or-left": "as-found" },
    untrue: "is loose",
    said: "It was put right",
  },
  {
    topic: "mixed-devices",
    facts: { devices: "own-range", fit: "good", heat: "loose" },
    untrue: "do not fit or are too weak",
    said: "is loose or has been hot",
  },
  {
    topic: "device-faulty",
    facts: { behaviour: "stays-off", "circuit-sound": false, "left-off": false },
    untrue: "does not work as it should",
    said: "its wiring has a fault",
  },
  {
    topic: "fuse-wire-oversize",
    facts: { element: "no-fuse", "cable-suits": true },
    untrue: "too big for its wire",
    said: "no fuse stands in the place",
  },
  {
    topic: "fuse-carrier-broken",
    facts: { carrier: "whole", "finger-reaches-live": true, access: "anyone" },
    untrue: "is gone or broken",
    said: "Live metal can be touched",
  },
  {
    topic: "fuse-carrier-broken",
    facts: { carrier: "cracked", "finger-reaches-live": false, access: "locked-off" },
    untrue: "is chipped",
    said: "out of use",
  },
  {
    topic: "distributor-equipment-damaged",
    facts: { "live-reachable": false, damage: "surface", heat: true, reported: false },
    untrue: "is damaged",
    said: "signs of heat",
  },
  {
    topic: "distributor-equipment-damaged",
    facts: { "live-reachable": false, damage: "cracked", heat: false, reported: true },
    positions: { "not-the-clients": "reported-instead" },
    untrue: "are in order",
    said: "has been told",
  },
  {
    topic: "looped-supply",
    facts: { shared: "nothing", "earth-from": "own-link", "notice-and-isolation": true, heat: false },
    untrue: "shares wires",
    said: "joined the earth",
  },
  {
    topic: "supply-polarity-reversed",
    facts: { correct: true, "earth-live": true, "all-double-pole": true },
    untrue: "wrong way round",
    said: "Metal here is live",
  },
  {
    topic: "meter-tails-exposed",
    facts: { insulation: "bare", around: "enclosed", knocks: "unlikely" },
    untrue: "If they get cut",
    said: "bare inside a closed box",
  },
  {
    topic: "meter-tails-size",
    facts: { "fuse-within": true, load: "limited", "demand-within-fuse": true, heat: true },
    untrue: "too thin",
    said: "have been hot",
  },
  {
    topic: "earthing-conductor-undersized",
    facts: { adiabatic: true, "table-size": true, "below-pme-size": false, "heat-damage": true },
    untrue: "too thin",
    said: "has been hot",
  },
  {
    topic: "earthing-conductor-condition",
    facts: { connection: "tight", run: "worn", "metal-live": true, label: true },
    untrue: "is not joined",
    said: "off, loose or worn",
  },
  {
    topic: "external-impedance-high",
    facts: { usual: true, disconnects: false },
    untrue: "from the street is not good enough",
    said: "some metal could stay live",
  },
  {
    topic: "earth-neutral-joined",
    facts: { joined: limited, "designed-so": false, "metal-live": false },
    untrue: "where two wires are joined",
    said: "We could not find out if two wires are joined",
  },
  {
    topic: "rcd-slow-at-five-times",
    facts: { "in-time-at-rated": false, "in-time-at-five": true, "additional-protection": false },
    untrue: "It passed the main test",
    said: "too slow",
  },
  {
    topic: "rcd-does-not-trip",
    facts: { operates: true, button: false, role: "additional" },
    untrue: "Other parts of the wiring",
    said: "The test button",
  },
  {
    topic: "rcd-none-tt",
    facts: { system: "tt", rcd: "voltage-operated", "breaker-disconnects": true, "loop-lasts": false },
    untrue: "a fault would not cut the power",
    said: "may go",
  },
  {
    topic: "sockets-no-rcd",
    facts: {
      "rcd-30ma": false,
      "outdoor-use": "unlikely",
      "other-socket": false,
      "used-by": "ordinary",
      "exception-recorded": false,
    },
    untrue: "lack a fast safety switch",
    said: "No fast safety switch that works",
  },
  {
    topic: "cable-in-wall",
    facts: { depth: "20 mm", zone: "outside", covering: false, "rcd-30ma": true },
    untrue: "lack a fast safety switch",
    said: "A fast safety switch guards you",
  },
  {
    topic: "cable-in-wall",
    facts: { depth: "20 mm", zone: "in-zone", covering: false, "rcd-30ma": false },
    positions: { "shallow-in-zone": "danger" },
    untrue: "where nobody would expect it",
    said: "just under the wall face",
  },
  {
    topic: "overload-device-oversize",
    facts: { "within-cable": true, load: "stays-under", heat: "marks" },
    untrue: "too big for its cable",
    said: "has been too hot",
  },
  {
    topic: "spur-overloaded",
    facts: { outlets: "one", fused: true, "cable-carries": true, load: "light", heat: "marks" },
    untrue: "Too many sockets",
    said: "has been too hot",
  },
  {
    topic: "zs-over-limit",
    facts: { disconnects: "in-time", by: "rcd-only", "rcd-tested": true, unaccounted: true, "failing-joint": true },
    untrue: "may not go off fast enough",
    said: "A joint or a wire here is bad",
  },
  {
    topic: "zs-over-limit",
    facts: { disconnects: "voltage-held", by: "overcurrent", "rcd-tested": false, unaccounted: false },
    untrue: "the power goes off in time",
    said: "stays at a safe level",
  },
  {
    topic: "cpc-undersized",
    facts: { withstands: true, evidence: "by-table", marks: "parted" },
    untrue: "too thin",
    said: "has burnt through",
  },
  {
    topic: "socket-no-cpc",
    facts: { "earth-path": "open", feeds: "class-1", "rcd-30ma": true },
    positions: { "rcd-instead-of-earth": "counts" },
    untrue: "does not need one",
    said: "guards you for now",
  },
  {
    topic: "lighting-no-cpc",
    facts: { "cpc-present": false, fittings: "insulated", notice: false, "users-change-fittings": true },
    untrue: "Some lights have metal parts",
    said: "If a metal light is put up",
  },
  {
    topic: "metalwork-live",
    facts: { voltage: "10 V", "holds-under-load": false, earthed: false, "made-dead": false },
    untrue: "was live and is now off",
    said: "is not earthed",
  },
  {
    topic: "metalwork-live",
    facts: { voltage: "230 V", "holds-under-load": true, earthed: false, "made-dead": true },
    positions: { "left-dead": "as-found" },
    untrue: "is live",
    said: "was live",
  },
  {
    topic: "insulation-low",
    facts: {
      "reaches-limit": false,
      lies: "equipment",
      between: "neutral-earth",
      "heavy-leak": false,
      "metal-earthed": true,
    },
    untrue: "The cover of the wires is failing",
    said: "An item on the circuit",
  },
  {
    topic: "polarity-reversed-at-point",
    facts: {
      swapped: "neutral-earth",
      switching: "both-poles",
      "live-when-off": "needs-tool",
      "class-1-metal": false,
    },
    untrue: "It can stay live when it is switched off",
    said: "If one of them breaks",
  },
  {
    topic: "sheath-missing",
    facts: { cores: "live-bare", place: "closed", joint: "none" },
    untrue: "only a thin cover",
    said: "bare live metal lies in a closed space",
  },
  {
    topic: "rubber-or-lead-cable",
    facts: { insulation: "supple", enclosure: "closed", "metal-sheath": "unearthed", "hot-ends": true },
    untrue: "is falling apart",
    said: "is not earthed",
  },
  {
    topic: "joint-not-enclosed",
    facts: {
      enclosure: "closed",
      terminals: "shrouded",
      place: "closed",
      combustible: false,
      connection: "doubtful",
    },
    untrue: "has no closed box",
    said: "is loose or strained",
  },
  {
    topic: "flexible-cord-as-fixed-wiring",
    facts: {
      "used-as-fixed": false,
      exposure: "protected",
      state: "live-bare",
      "within-cable": true,
      ends: "held",
    },
    untrue: "in place of a proper cable",
    said: "Live metal shows",
  },
  {
    topic: "accessory-connection-loose",
    facts: { connection: "arcing", "put-right": true, "burns-nearby": true },
    positions: { "as-found": "as-found" },
    untrue: "is sparking",
    said: "It was put right",
  },
  {
    topic: "back-box-missing",
    facts: { behind: "box", heat: true },
    untrue: "has no box behind it",
    said: "marks of heat",
  },
  {
    topic: "bath-equipment-in-zone",
    facts: { zone: "zone-2", suited: true, voltage: "mains", wetted: "water-inside" },
    untrue: "is not made for wet places",
    said: "Water has got into",
  },
  {
    topic: "bath-heater-in-reach",
    facts: { reach: "stretch", "live-element": true, suited: true },
    untrue: "is not made for wet rooms",
    said: "Live parts of a bathroom heater",
  },
  {
    topic: "immersion-cutout",
    facts: { "cut-out": true, cistern: "plastic", "thermostat-fails": true },
    untrue: "It needs a safety cut-out",
    said: "thermostat",
  },
  {
    topic: "battery-place",
    facts: { place: "inside-apart", condition: "damaged", "as-maker-asks": true, detection: true },
    untrue: "a fire could trap you",
    said: "The battery is damaged",
  },
  {
    topic: "ev-open-pen",
    facts: { earthing: "tt", outdoors: true, "electrode-met": false },
    untrue: "cable in the street breaks",
    said: "earth rod",
  },
  {
    topic: "generator-changeover",
    facts: {
      changeover: "interlocked",
      connection: "bare-pins",
      "lead-in-use": false,
      "earth-reference": true,
    },
    untrue: "feed back into the mains",
    said: "bare pins",
  },
  {
    topic: "conductor-colours",
    facts: { colours: "line-looks-neutral", marked: false, notice: true },
    positions: { "switch-line": "leave-it" },
    untrue: "show what they are",
    said: "",
  },
  {
    topic: "fire-stopping",
    facts: { element: "fire-resisting", opening: "bunch", detection: true },
    untrue: "small gap",
    said: "There is a hole",
  },
  // A choice that the facts do not bear out: the inspector's own words stand alone.
  {
    topic: "board-blank-missing",
    facts: { "finger-reaches-live": false, gap: "out-of-line", access: "anyone" },
    chosen: "C1",
    untrue: "A finger can touch live metal",
    said: "",
  },
  {
    topic: "rcd-test-not-possible",
    facts: { operates: true, "button-reach": "covered", notice: true },
    chosen: "C2",
    untrue: "does not work",
    said: "",
  },
  {
    topic: "accessory-broken",
    facts: { "finger-touches-live": true, damage: "cracked-through" },
    chosen: "C3",
    untrue: "It is not a danger now",
    said: "",
  },
  // A choice while facts are open: nothing is said that is not known.
  {
    topic: "board-blank-missing",
    facts: { gap: "in-line", access: "anyone" },
    chosen: "C1",
    untrue: "A finger can touch live metal",
    said: "",
  },
  {
    topic: "sockets-no-rcd",
    facts: {},
    chosen: "C3",
    untrue: "safety switch",
    said: "",
  },
  // A choice that another position on a contested point bears out.
  {
    topic: "cable-in-wall",
    facts: { depth: "20 mm", zone: "in-zone", covering: false, "rcd-30ma": false },
    chosen: "C2",
    untrue: "where nobody would expect it",
    said: "just under the wall face",
  },
];
