/**
 * Every link from a computation to a fact, looked at: does the finding of the place answer what the fact asks, for the
 * same conductor, bond, device or circuit? `met` and `notMet` are what a finding answers; left out where it has to leave
 * the fact open. `leaves` says what it must leave open, and why.
 */
export interface Link {
  readonly topic: string;
  readonly fact: string;
  /** The computation and the matter within it. */
  readonly by: string;
  readonly matter?: string;
  readonly met?: string;
  readonly notMet?: string;
  readonly leaves: string;
}

const CAPACITY = { by: "cable-capacity", matter: "device-within-cable" };
const RCD_30 = { by: "additional-protection", met: "yes", notMet: "no" };
const RCD_LEAVES =
  "a circuit for which today's edition asks no RCD by what it supplies, and one whose RCD is not recorded";
const BY_HAND = {
  leaves: "everything: no check of the file looks at it; figures given with the observation answer it",
};
const OPENING = { "gets-in": { by: "opening-access", ...BY_HAND } };
const FIXING = { "cover-fixing": { by: "barrier-secured", ...BY_HAND } };
const OPENS = { "cover-opens": { by: "enclosure-opening", ...BY_HAND } };
const COVERING = { "live-covering": { by: "live-insulation", ...BY_HAND } };
const WHICH_BOND = "several bonds that do not say the same: which of them is meant is not known";
const WHICH_RCD = "several RCDs of a board that do not say the same, and an RCD without readings";
const RCD_DISCONNECTS = {
  by: "maximum-zs",
  matter: "residual-disconnects",
  leaves: "an RCD that was not tested, and one whose current or loop is not recorded",
};
const JOINT = { by: "r1r2-length", matter: "resistance-not-above" };

const GAPS = {
  "gets-in": { by: "opening-access", ...BY_HAND },
  "cover-fixing": { by: "barrier-secured", ...BY_HAND },
};
const LID = { ...GAPS, "cover-opens": { by: "enclosure-opening", ...BY_HAND } };

const links = {
  "intake-hot": GAPS,
  "distributor-equipment-damaged": GAPS,
  "supply-tampered": GAPS,
  "origin-isolator": GAPS,
  "connector-block-open": LID,
  "meter-tails-exposed": { ...LID, "live-covering": { by: "live-insulation", ...BY_HAND } },
  "supply-polarity-reversed": {
    correct: { by: "supply-polarity", met: "yes", notMet: "no", leaves: "polarity not tested" },
  },
  "supply-voltage-out-of-limits": {
    within: { by: "supply-voltage", met: "yes", notMet: "no", leaves: "voltage not measured" },
  },
  "meter-tails-size": {
    "demand-within-fuse": {
      by: "maximum-demand",
      matter: "demand-within-fuse",
      met: "yes",
      notMet: "no",
      leaves: "a demand beyond the main switch alone",
    },
  },
  "means-of-earthing-hidden": {
    "loop-usual": { by: "external-impedance", met: "yes", notMet: "no", leaves: "what the earth path is made of" },
  },
  "external-impedance-high": {
    usual: {
      by: "external-impedance",
      met: "yes",
      leaves: "a value above the usual that the distributor may have declared",
    },
  },
  "earthing-conductor-undersized": {
    adiabatic: {
      by: "earthing-conductor-size",
      matter: "earthing-by-energy",
      met: "yes",
      notMet: "no",
      leaves: "a fuse or a loop not recorded",
    },
    "table-size": {
      by: "earthing-conductor-size",
      matter: "earthing-by-selection",
      met: "yes",
      notMet: "no",
      leaves: "a conductor that is not of copper",
    },
  },
  "electrode-resistance": {
    "suits-rcds": { by: "electrode", met: "yes", notMet: "no", leaves: "an electrode not measured" },
  },
  "electrode-condition": {
    "suits-rcds": { by: "electrode", met: "yes", notMet: "no", leaves: "its connection and conductor" },
  },
  "main-bonding-absent": { extraneous: { by: "part-isolated", ...BY_HAND } },
  "main-bonding-undersized": { "table-size": { by: "bonding-size", met: "yes", notMet: "no", leaves: WHICH_BOND } },
  "main-bonding-hidden": { continuous: { by: "bonding-continuity", met: "yes", notMet: "no", leaves: WHICH_BOND } },
  "main-bonding-resistance": {
    "reading-fits": { by: "bonding-continuity", met: "yes", notMet: "no", leaves: WHICH_BOND },
  },
  "supplementary-bonding-needed": {
    "in-time": {
      by: "maximum-zs",
      matter: "overcurrent-disconnects",
      met: "yes",
      notMet: "no",
      leaves: "a circuit that its RCD alone disconnects: the fuse or breaker is judged by itself",
    },
    "rcd-in-time": { ...RCD_DISCONNECTS, met: "yes", notMet: "no" },
  },
  "board-blank-missing": {
    "gets-in": { by: "opening-access", ...BY_HAND },
    "cover-fixing": { by: "barrier-secured", ...BY_HAND },
  },
  "board-cover-missing": {
    "gets-in": { by: "opening-access", ...BY_HAND },
    "cover-fixing": { by: "barrier-secured", ...BY_HAND },
    "cover-opens": { by: "enclosure-opening", ...BY_HAND },
  },
  "board-inner-shield": { "cover-opens": { by: "enclosure-opening", ...BY_HAND } },
  "board-top-opening": {
    "gets-in": { by: "opening-access", ...BY_HAND },
    "cover-fixing": { by: "barrier-secured", ...BY_HAND },
  },
  "board-cable-entry": {
    "gets-in": { by: "opening-access", ...BY_HAND },
    "cover-fixing": { by: "barrier-secured", ...BY_HAND },
  },
  "fuse-carrier-broken": {
    "gets-in": { by: "opening-access", ...BY_HAND },
    "cover-fixing": { by: "barrier-secured", ...BY_HAND },
  },
  "live-parts-out-of-reach": { obstacle: { by: "obstacles", ...BY_HAND } },
  "old-wooden-board": { "gets-in": { by: "opening-access", ...BY_HAND } },
  "device-faulty": {
    "circuit-sound": {
      by: "insulation-resistance",
      notMet: "no",
      leaves: "good insulation: it says nothing of a short circuit in what is plugged in, nor of the load",
    },
  },
  "basic-protection": {
    "gets-in": { by: "opening-access", ...BY_HAND },
    "allowed-opening": { by: "larger-opening", ...BY_HAND },
    "cover-fixing": { by: "barrier-secured", ...BY_HAND },
    "cover-opens": { by: "enclosure-opening", ...BY_HAND },
    obstacle: { by: "obstacles", ...BY_HAND },
    "live-covering": { by: "live-insulation", ...BY_HAND },
  },
  "breaking-capacity-exceeded": {
    rated: {
      by: "breaking-capacity",
      matter: "fault-within-rating",
      met: "yes",
      notMet: "no",
      leaves: "whether the conditions of the conditional rating are kept",
    },
  },
  "rewirable-fuses": {
    "cables-adequate": { ...CAPACITY, notMet: "no", leaves: "one circuit that is adequate says nothing of the others" },
  },
  "fuse-wire-oversize": {
    "cable-suits": { ...CAPACITY, leaves: "both: the file records the fuse it should be, not the wire found" },
  },
  "maximum-demand-exceeded": {
    within: {
      by: "maximum-demand",
      notMet: "no",
      leaves: "a demand within fuse and switch: tails and board are not looked at",
    },
  },
  "selectivity-lacking": { grades: { by: "devices-grade", ...BY_HAND } },
  "board-damp": {
    "insulation-good": {
      by: "insulation-resistance",
      notMet: "no",
      leaves: "one good circuit says nothing of the board and its other circuits",
    },
  },
  "rcd-none-tt": {
    rcd: { ...RCD_DISCONNECTS, met: "working", notMet: "proved-voltage-operated | none" },
    "breaker-disconnects": {
      by: "maximum-zs",
      matter: "overcurrent-disconnects",
      met: "yes",
      notMet: "no",
      leaves: "a circuit that its RCD alone disconnects: the fuse or breaker is judged by itself",
    },
  },
  "rcd-does-not-trip": {
    "rcd-operates": { by: "rcd-time", matter: "rcd-not-slow", met: "yes", notMet: "no", leaves: WHICH_RCD },
    button: { by: "rcd-time", matter: "rcd-button", met: "yes", notMet: "no", leaves: WHICH_RCD },
  },
  "rcd-test-not-possible": {
    "rcd-operates": { by: "rcd-time", matter: "rcd-not-slow", met: "yes", notMet: "no", leaves: WHICH_RCD },
  },
  "rcd-slow-at-five-times": {
    "rcd-operates": { by: "rcd-time", matter: "rcd-not-slow", met: "yes", notMet: "no", leaves: WHICH_RCD },
    "in-time-at-five": { by: "rcd-time", matter: "rcd-five", met: "yes", notMet: "no", leaves: WHICH_RCD },
  },
  "rcd-standing-leakage": { "over-share": { by: "leakage-within", ...BY_HAND } },
  "rcd-time-delay-missing": { series: { by: "rcds-grade", ...BY_HAND } },
  "sockets-no-rcd": { "rcd-30ma": { ...RCD_30, leaves: RCD_LEAVES } },
  "mobile-outdoors-no-rcd": { "rcd-or-separated": { ...RCD_30, leaves: RCD_LEAVES } },
  "lighting-no-rcd": { "rcd-30ma": { ...RCD_30, leaves: RCD_LEAVES } },
  "fixed-equipment-no-rcd": { "rcd-30ma": { ...RCD_30, leaves: RCD_LEAVES } },
  "socket-no-cpc": { "rcd-30ma": { ...RCD_30, leaves: RCD_LEAVES } },
  "circuit-unidentified": {
    "gets-in": { by: "opening-access", ...BY_HAND },
    "cover-fixing": { by: "barrier-secured", ...BY_HAND },
    "cover-opens": { by: "enclosure-opening", ...BY_HAND },
  },
  "live-conductors-unterminated": {
    "gets-in": { by: "opening-access", ...BY_HAND },
    "cover-fixing": { by: "barrier-secured", ...BY_HAND },
    "cover-opens": { by: "enclosure-opening", ...BY_HAND },
    "live-covering": { by: "live-insulation", ...BY_HAND },
    obstacle: { by: "obstacles", ...BY_HAND },
  },
  "circuits-mixed": {
    "smallest-carries": {
      ...CAPACITY,
      notMet: "no",
      leaves: "the cable recorded carries the device: the smaller one is another",
    },
  },
  "overload-device-oversize": {
    "within-cable": { ...CAPACITY, notMet: "no", leaves: "another cable than the one recorded of the circuit" },
    excess: {
      by: "cable-capacity",
      matter: "device-within-tenth",
      met: "slight",
      notMet: "large",
      leaves: "a method of installation that was not seen",
    },
  },
  "voltage-drop-high": {
    within: { by: "voltage-drop", met: "yes", notMet: "no", leaves: "a load or length not recorded" },
  },
  "spur-overloaded": {
    "cable-carries": { ...CAPACITY, leaves: "both: the cable of the ring is not the cable of the spur" },
  },
  "zs-over-limit": {
    disconnects: {
      by: "maximum-zs",
      met: "in-time",
      notMet: "not-in-time",
      leaves: "a reading or device not recorded",
    },
    by: {
      by: "maximum-zs",
      matter: "overcurrent-disconnects",
      met: "overcurrent",
      notMet: "rcd-only",
      leaves: "a reading or device not recorded",
    },
    "rcd-tested": { ...RCD_DISCONNECTS, met: "yes", notMet: "none | no" },
    unaccounted: {
      ...JOINT,
      met: "no",
      notMet: "yes",
      leaves: "R1+R2 that fits while Zs was not held against it: both have to agree",
    },
  },
  "cpc-undersized": {
    withstands: { by: "cpc-adiabatic", met: "yes", notMet: "no", leaves: "a fault current not recorded" },
  },
  "lighting-no-cpc": {
    "cpc-present": {
      by: "cpc-continuity",
      notMet: "no",
      leaves: "a conductor that reads through at the furthest point: whether every point has it is not shown",
    },
  },
  "cpc-resistance-high": {
    "fits-length": {
      ...JOINT,
      notMet: "no",
      leaves: "readings that fit: whether neighbouring points read the same is not shown",
    },
    disconnects: { by: "maximum-zs", met: "yes", notMet: "no", leaves: "a reading or device not recorded" },
  },
  "insulation-low": {
    "reaches-limit": { by: "insulation-resistance", met: "yes", notMet: "no", leaves: "a reading not taken" },
  },
  "cable-in-wall": { "rcd-30ma": { ...RCD_30, leaves: RCD_LEAVES } },
  "cable-metal-partition": {
    protection: {
      by: "additional-protection",
      met: "earthed-metal | rcd",
      notMet: "earthed-metal | neither",
      leaves: "whether earthed metal is round the cable",
    },
  },
  "pvc-exudation": {
    insulation: {
      by: "insulation-resistance",
      notMet: "no",
      leaves: "a good reading: brittle cores read well until they are moved",
    },
  },
  "cable-under-insulation": {
    "within-cable": {
      ...CAPACITY,
      notMet: "no",
      leaves: "a method recorded for another part of the route than the one in insulation",
    },
  },
  "cable-bunched-or-hot": {
    "within-cable": {
      ...CAPACITY,
      notMet: "no",
      leaves: "the other cables of the bunch, and a bunch that is not recorded",
    },
  },
  "cable-through-joist": { "rcd-30ma": { ...RCD_30, leaves: RCD_LEAVES } },
  "flexible-cord-as-fixed-wiring": {
    ...COVERING,
    "within-cable": { ...CAPACITY, leaves: "both: the cable of the circuit is not the cord" },
    excess: {
      by: "cable-capacity",
      matter: "device-within-tenth",
      leaves: "both: the cable of the circuit is not the cord",
    },
  },
  "joint-inaccessible": {
    "poor-joint": {
      ...JOINT,
      notMet: "yes",
      leaves: "readings that fit: a joint that heats may read well, and signs are not looked at",
    },
  },
  "aluminium-or-mixed-conductors": {
    "within-cable": {
      ...CAPACITY,
      notMet: "no",
      leaves: "the conductor recorded carries the device: the weakest is another",
    },
  },
  "accessory-broken": { ...OPENING, ...FIXING },
  "accessory-loose": OPENING,
  "accessory-overheated": OPENING,
  "luminaire-heat": OPENING,
  "lampholder-or-rose-open": { ...OPENING, ...FIXING, "allowed-opening": { by: "larger-opening", ...BY_HAND } },
  "adaptors-as-fixed-wiring": COVERING,
  "equipment-connection-open": COVERING,
  "cable-damaged": { ...COVERING, ...OPENING, ...OPENS },
  "sheath-missing": { ...COVERING, ...OPENING, ...OPENS },
  "joint-not-enclosed": { ...COVERING, ...OPENING, ...OPENS },
  "rubber-or-lead-cable": { ...COVERING, ...OPENING, ...OPENS },
  "trunking-or-conduit-open": { ...COVERING, ...OPENING, ...FIXING },
  "overhead-cable": COVERING,
  "shower-overloaded": {
    "device-over-cable": {
      ...CAPACITY,
      met: "no",
      notMet: "yes",
      leaves: "a load that cannot overload, behind a device that is too large",
    },
  },
  "socket-near-water": { "rcd-30ma": { ...RCD_30, leaves: RCD_LEAVES } },
  "bath-rcd-and-bonding": {
    "in-time": {
      by: "maximum-zs",
      notMet: "no",
      leaves: "one circuit that disconnects in time says nothing of every circuit of the room",
    },
    "room-rcds": {
      by: "additional-protection",
      notMet: "no",
      leaves: "one circuit with an RCD says nothing of every circuit of the room",
    },
    bonding: { by: "supplementary-bonding", ...BY_HAND },
  },
  "bath-socket-position": { "rcd-30ma": { ...RCD_30, leaves: RCD_LEAVES } },
  "garden-cable-unprotected": {
    "rcd-30ma": { ...RCD_30, leaves: RCD_LEAVES },
    "live-covering": { by: "live-insulation", ...BY_HAND },
  },
  "outdoor-enclosure": { obstacle: { by: "obstacles", ...BY_HAND } },
  "outdoor-luminaire-damaged": { obstacle: { by: "obstacles", ...BY_HAND } },
  "battery-direct-current": { obstacle: { by: "obstacles", ...BY_HAND } },
  "pv-cable-damaged": {
    obstacle: { by: "obstacles", ...BY_HAND },
    "live-covering": { by: "live-insulation", ...BY_HAND },
  },
  "hot-tub-outdoors": {
    "suited-rcd": {
      by: "additional-protection",
      notMet: "no",
      leaves: "whether the type of an RCD that is there suits the tub",
    },
  },
  "pond-or-water-feature": { "rcd-30ma": { ...RCD_30, leaves: RCD_LEAVES } },
  "farm-protection": {
    bonding: { by: "bonding-continuity", leaves: "both: a main bond of water or oil is not the bond of a stall" },
  },
  "electric-fence": { "rcd-30ma": { ...RCD_30, leaves: RCD_LEAVES } },
  "floor-heating": {
    "rcd-30ma": { ...RCD_30, leaves: RCD_LEAVES },
    insulation: {
      by: "insulation-resistance",
      leaves: "both: the reading of the circuit may be without the heating unit",
    },
  },
  "pool-equipment": {
    bonding: { by: "bonding-continuity", leaves: "both: a main bond is not the bonding of the pool's zones" },
  },
  "ev-open-pen": {
    "electrode-met": { by: "electrode", leaves: "both: the electrode of the supply is not that of the charging point" },
  },
} satisfies Readonly<Record<string, Readonly<Record<string, Omit<Link, "topic" | "fact">>>>>;

export const LINKS: readonly Link[] = Object.entries(links).flatMap(([topic, facts]) =>
  Object.entries(facts).map(([fact, link]) => ({ topic, fact, ...link })),
);
