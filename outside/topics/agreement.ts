import type { Answer, Classification } from "@good-grounds/core";

/** What an observation of the trade says, in the words of a topic. */
export interface Reading {
  readonly topic: string;
  readonly facts: Readonly<Record<string, Answer>>;
  readonly positions?: Readonly<Record<string, string>>;
}

/** An observation as read, and what differs for each of the alternatives it names. */
export interface GivenReading extends Reading {
  readonly alternatives?: Partial<Record<Classification, Partial<Omit<Reading, "topic">>>>;
}

const cannot = (reason: string): Answer => ({ notKnown: "limited", reason });

/** Each given observation by its id. Facts are those its situation states, or that its class takes for granted. */
export const READINGS: Readonly<Record<string, GivenReading>> = {
  "live-cu-no-cover": {
    topic: "board-cover-missing",
    facts: { "gets-in": "hand", "cover-fixing": "open", "who-comes": "anyone" },
  },
  "live-blank-missing": {
    topic: "board-blank-missing",
    facts: { "gets-in": "finger", "cover-fixing": "hole", "who-comes": "anyone" },
    alternatives: { C2: { facts: { "gets-in": "finger-short" } } },
  },
  "live-blank-missing-dead-way": {
    topic: "board-blank-missing",
    facts: { "gets-in": "finger-short", "cover-fixing": "hole", "who-comes": "anyone" },
    alternatives: { C3: { facts: { "cover-fixing": "slight" } } },
  },
  "live-locked-room-blank": {
    topic: "board-blank-missing",
    facts: { "gets-in": "finger", "cover-fixing": "hole", "who-comes": "skilled-only" },
    alternatives: { C1: { facts: { "who-comes": "many-keys" } } },
  },
  "live-top-opening": {
    topic: "board-top-opening",
    facts: { "gets-in": "wire-on-top", "cover-fixing": "whole", "top-reached": true, "drops-likely": false },
    alternatives: { C2: { facts: { "drops-likely": true } } },
  },
  "live-socket-cracked": {
    topic: "accessory-broken",
    facts: { "gets-in": "nothing", "cover-fixing": "loose" },
    alternatives: { C3: { facts: { "cover-fixing": "slight" } } },
  },
  "live-metalwork": { topic: "metalwork-live", facts: { voltage: "228 V", "made-dead": false } },
  "basic-ins-broken-door": {
    topic: "meter-tails-exposed",
    facts: {
      "live-covering": "basic-sound",
      "gets-in": "hand",
      "cover-fixing": "open",
      wears: "heat-weather-rodents",
      "who-comes": "anyone",
      heat: "none",
    },
    alternatives: { C3: { facts: { wears: "nothing" } } },
  },
  "basic-ins-downlight": {
    topic: "sheath-missing",
    facts: { "live-covering": "basic-sound", "gets-in": "nothing", "cover-opens": "tool", joint: "none" },
    alternatives: { C2: { facts: { joint: "open-combustible" } } },
  },
  "socket-no-cpc": { topic: "socket-no-cpc", facts: { "earth-path": "open", feeds: "class-1" } },
  "earthing-10": {
    topic: "earthing-conductor-undersized",
    facts: { adiabatic: true, "table-size": false, "below-pme-size": false, heat: "none" },
    alternatives: { C3: { positions: { method: "selection-only" } } },
  },
  "earthing-fails-adiabatic": {
    topic: "earthing-conductor-undersized",
    facts: { adiabatic: false, "table-size": false, heat: "none" },
  },
  "bond-absent-gas": {
    topic: "main-bonding-absent",
    facts: { lightning: false, bond: "none", extraneous: "shown-earthy", heat: "none" },
  },
  "bond-absent-water": {
    topic: "main-bonding-absent",
    facts: { lightning: false, bond: "none", extraneous: "metal-entry", heat: "none" },
  },
  "rcd-socket-near-door": {
    topic: "sockets-no-rcd",
    facts: { "rcd-30ma": false, "outdoor-use": "likely", "other-socket": false },
    alternatives: {
      C3: { facts: { "fault-cleared": true, "other-socket": true, "used-by": "ordinary", "risk-assessment": false } },
    },
  },
  "rcd-lighting": {
    topic: "lighting-no-rcd",
    facts: { "rcd-30ma": false, "fault-cleared": true, premises: "home", "asked-when-made": false },
  },
  "rcd-bath-with-bonding": {
    topic: "bath-rcd-and-bonding",
    facts: { "rcd-30ma": false, bonding: true, "in-time": true, "electric-shower": false },
  },
  "rcd-bath-plastic": {
    topic: "bath-rcd-and-bonding",
    facts: { "rcd-30ma": false, bonding: false, "in-time": true, parts: "nothing", "electric-shower": false },
    alternatives: { C2: { facts: { parts: "taps-only" }, positions: { "metal-on-plastic": "counted" } } },
  },
  "rcd-cable-wall": {
    topic: "cable-in-wall",
    facts: { depth: "20 mm", zone: "in-zone", covering: false, "rcd-30ma": false },
    alternatives: { C2: { positions: { "shallow-in-zone": "danger" } } },
  },
  "rcd-cable-wall-metal": {
    topic: "cable-metal-partition",
    facts: { edges: "bare", protection: "neither", cut: "whole" },
    alternatives: { C3: { facts: { edges: "guarded" } } },
  },
  "rcd-cable-zone": {
    topic: "cable-in-wall",
    facts: { depth: "20 mm", zone: "outside", covering: false, "rcd-30ma": false },
    alternatives: { C3: { facts: { "rcd-30ma": true } } },
  },
  "rcd-slow-5x": {
    topic: "rcd-slow-at-five-times",
    facts: { "rcd-operates": true, "in-time-at-five": false, "rcd-role": "additional" },
    alternatives: {
      none: { positions: { "five-times": "not-counted" } },
      C3: { positions: { "five-times": "advise" } },
    },
  },
  "rcd-shared-trips": {
    topic: "supply-division",
    facts: { division: "one-device", "small-and-content": false, "dark-hurts": false },
    alternatives: {
      C2: { facts: { "dark-hurts": true } },
      none: { facts: { "small-and-content": true } },
    },
  },
  "cu-plastic-stairs": {
    topic: "board-combustible",
    facts: {
      combustible: true,
      premises: "home",
      "asked-when-fitted": false,
      "heat-or-loose": "none",
      "only-way-out": true,
    },
    alternatives: { none: { positions: { standing: "met-its-edition" } } },
  },
  "afdd-absent-dwelling": { topic: "arc-detection-absent", facts: { fitted: false, use: "ordinary" } },
  "ir-trend": {
    topic: "insulation-falling",
    facts: { fall: "fallen", cause: cannot("the circuit has to be taken apart to find it") },
    alternatives: { none: { positions: { trend: "meets-limit" } } },
  },
  "zs-high-rcd": {
    topic: "zs-over-limit",
    facts: { disconnects: "in-time", by: "rcd-only", "rcd-tested": true, unaccounted: false },
    alternatives: {
      C3: { facts: { "earthing-system": "tn-c-s" }, positions: { "rcd-in-place": "improve" } },
      FI: { facts: { unaccounted: true, "failing-joint": cannot("the joint could not be found") } },
    },
  },
  "zs-0.8-fail": {
    topic: "zs-over-limit",
    facts: { disconnects: "in-time", by: "overcurrent", unaccounted: false },
  },
  "zs-tt-mcb": { topic: "zs-over-limit", facts: { disconnects: "not-in-time", by: "overcurrent" } },
  "double-pole-fuse": {
    topic: "neutral-fused",
    facts: { "in-neutral": "fuse" },
  },
  "cpc-light-class2": {
    topic: "lighting-no-cpc",
    facts: { "cpc-present": false, fittings: "insulated", notice: true },
    alternatives: { C2: { facts: { notice: false, "users-change-fittings": true } } },
  },
  "cpc-unsleeved": {
    topic: "cpc-unsleeved",
    facts: { sleeve: "bare", "near-terminals": false },
    alternatives: { none: { facts: { "proof-of-earth": true }, positions: { "marking-only": "leave-it" } } },
  },
  "water-outdoor-socket": { topic: "outdoor-enclosure", facts: { closed: "worn", place: "exposed", inside: "marks" } },
  "outdoor-IP": {
    topic: "outdoor-enclosure",
    facts: { closed: "indoor-type", place: "exposed", inside: "dry" },
    alternatives: { C3: { facts: { place: "sheltered" } } },
  },
  "fuse-wire-big": { topic: "fuse-wire-oversize", facts: { element: "larger", "cable-suits": false } },
  "fuse-3036-ok": { topic: "rewirable-fuses", facts: { "wire-right": true, "cables-adequate": true } },
  "accessory-loose": {
    topic: "accessory-loose",
    facts: { fixing: "loose", "gets-in": "nothing", strain: false },
    alternatives: { C2: { facts: { strain: true } } },
  },
  "mixed-makes": {
    topic: "mixed-devices",
    facts: { devices: "other", fit: "good", "heat-or-loose": "none" },
    alternatives: {
      none: { positions: { weight: "no-danger-shown" } },
      C2: { facts: { fit: "poor", "heat-or-loose": "marks" } },
    },
  },
  "breaking-capacity-backed": {
    topic: "breaking-capacity-exceeded",
    facts: { rated: true, conditions: "kept", "backed-up": true },
  },
  "drawing-chart": { topic: "circuit-chart-missing", facts: { chart: "missing", marked: false } },
  "isolation-main": {
    topic: "main-switch-poles",
    facts: { poles: "line-only", phases: "one", "earthing-system": "tn-c-s", "otherwise-sound": true },
    alternatives: { C3: { facts: { "earthing-system": "tn-s" } } },
  },
  "firestop-missing": {
    topic: "fire-stopping",
    facts: { element: "escape-route", opening: "bunch" },
    alternatives: { C3: { facts: { opening: "single-cable" } } },
  },
  "downlight-insulation": { topic: "downlight-insulation", facts: { covered: true, scorch: true } },
  "vir-bare": {
    topic: "rubber-or-lead-cable",
    facts: { "live-covering": "bare", "gets-in": "hand", "who-comes": "anyone" },
  },
  "supply-unknown": {
    topic: "means-of-earthing-hidden",
    facts: { "means-seen": "nothing", "loop-usual": true, path: cannot("the plaster would have to be opened") },
    alternatives: { none: { positions: { "reading-alone": "enough" } } },
  },
  "immersion-metal": {
    topic: "immersion-cutout",
    facts: { "cut-out": false, cistern: "metal", "thermostat-fails": false },
    alternatives: { none: { positions: { "standard-of-its-day": "leave-it" } } },
  },
  "ev-no-open-pen": { topic: "ev-open-pen", facts: { earthing: "tn-c-s", outdoors: true, measure: "none" } },
  "ev-tt-ok": { topic: "ev-open-pen", facts: { earthing: "tt", outdoors: true, "electrode-met": true } },
  "pv-isolator-unlabelled": {
    topic: "pv-isolation",
    facts: { "ac-isolator": "lockable", "ac-label": false, "dc-isolator": "rated", "dc-marked": true },
    alternatives: { C2: { facts: { "dc-isolator": "absent" } } },
  },
  "gen-no-interlock": {
    topic: "generator-changeover",
    facts: { changeover: "nothing", connection: "shrouded-inlet" },
    alternatives: { C1: { facts: { connection: "bare-pins", "lead-in-use": true } } },
  },
  "bess-no-isolation": { topic: "battery-isolation", facts: { isolator: "absent", label: false } },
  "shaver-non-iso": { topic: "shaver-outlet", facts: { isolating: false, place: "zone-2", sprayed: false } },
  "cut-out-crack": {
    topic: "distributor-equipment-damaged",
    facts: { "gets-in": "finger", "cover-fixing": "hole", "who-comes": "anyone" },
  },
};
