import type { SameClass } from "./row.ts";

const row = (
  topic: string,
  situation: string,
  facts: SameClass["facts"],
  positions?: SameClass["positions"],
): SameClass => (positions === undefined ? { topic, situation, facts } : { topic, situation, facts, positions });

const DRY = { "wet-or-conductive": "no" };
const ALL_DAY = { connectors: "matched", "rubbing-or-hanging": "no", heat: "none" };
const BARE_AROUND_NOTHING = { "arms-reach": "within", obstacle: "none", ...DRY };
const STORE = { terminals: "bare", "dc-voltage": "high", "dc-switch": "rated", "dc-fuse": "yes", heat: "none" };
const COUNTS = { distance: "counts" };

export const PLACES: readonly SameClass[] = [
  row("garden-cable-unprotected", "sheathed cable, sound, on a garage wall", {
    cable: "armoured",
    route: "out-of-harm",
    "live-covering": "sheathed",
  }),
  row("garden-cable-unprotected", "sound cores in the sun and rain outdoors", {
    cable: "armoured",
    route: "out-of-harm",
    "live-covering": "basic-sound",
  }),
  row("garden-cable-unprotected", "cores with cut insulation by the skirting, no metal showing", {
    cable: "armoured",
    route: "out-of-harm",
    "live-covering": "basic-damaged",
    ...DRY,
  }),
  row("garden-cable-unprotected", "rubber cores that crumble, in a damp cellar, in the open", {
    "live-covering": "basic-damaged",
    "wet-or-conductive": "yes",
  }),
  row("garden-cable-unprotected", "copper showing on a cable by the skirting", {
    "live-covering": "bare",
    "arms-reach": "within",
  }),
  row(
    "garden-cable-unprotected",
    "crane conductors 4 m up in a workshop open to all, height held to be a layer",
    { cable: "armoured", route: "out-of-harm", "live-covering": "bare", "arms-reach": "beyond", ...DRY },
    COUNTS,
  ),
  row("outdoor-enclosure", "blank missing, a finger reaches the busbar", {
    closed: "broken-open",
    "arms-reach": "within",
  }),
  row("outdoor-enclosure", "crane conductors 4 m up in a workshop open to all", {
    closed: "broken-open",
    "arms-reach": "beyond",
    obstacle: "none",
  }),
  row(
    "outdoor-enclosure",
    "crane conductors 4 m up in a workshop open to all, height held to be a layer",
    { closed: "broken-open", "arms-reach": "beyond", obstacle: "none", ...DRY },
    COUNTS,
  ),
  row("outdoor-luminaire-damaged", "bare bar, nothing around, anyone comes", {
    light: "showing",
    ...BARE_AROUND_NOTHING,
  }),
  row("outdoor-luminaire-damaged", "crane conductors 4 m up in a workshop open to all", {
    light: "showing",
    "arms-reach": "beyond",
    obstacle: "none",
  }),
  row(
    "outdoor-luminaire-damaged",
    "crane conductors 4 m up in a workshop open to all, height held to be a layer",
    { light: "showing", "arms-reach": "beyond", obstacle: "none", ...DRY },
    COUNTS,
  ),
  row(
    "outdoor-luminaire-damaged",
    "bare bars behind a rail, anyone enters, an obstacle held to be a layer",
    { light: "showing", "arms-reach": "within", obstacle: "secured", ...DRY },
    COUNTS,
  ),
  row("bath-heater-in-reach", "bare bar, nothing around, anyone comes", { "live-element": "yes", reach: "out" }),
  row("farm-protection", "broken socket-outlet, live terminal shows", { damage: "live-parts" }),
  row("pitch-or-mooring-supply", "broken socket-outlet, live terminal shows", { outlet: "live-parts" }),
  row("site-distribution", "broken socket-outlet, live terminal shows", { state: "showing" }),
  row("generator-changeover", "bare bar, nothing around, anyone comes", {
    connection: "bare-pins",
    "lead-in-use": "yes",
  }),
  row("pv-cable-damaged", "double-insulated cable clipped along a wall", {
    ...ALL_DAY,
    "live-covering": "double-or-reinforced",
  }),
  row("pv-cable-damaged", "sheath worn through at one place, insulation sound, still rubbed", {
    ...ALL_DAY,
    ...BARE_AROUND_NOTHING,
    "live-covering": "basic-sound",
    "who-comes": "anyone",
    wears: "knocks",
  }),
  row("pv-cable-damaged", "sheath slit once, insulation sound, nothing acts on it", {
    ...ALL_DAY,
    "live-covering": "basic-sound",
    "who-comes": "anyone",
    wears: "nothing",
  }),
  row("pv-cable-damaged", "sound cores in the sun and rain outdoors", {
    ...ALL_DAY,
    "live-covering": "basic-sound",
    "who-comes": "anyone",
    "arms-reach": "within",
    obstacle: "none",
    wears: "heat-weather-rodents",
  }),
  row("pv-cable-damaged", "copper showing on a cable by the skirting", {
    ...ALL_DAY,
    ...BARE_AROUND_NOTHING,
    "live-covering": "bare",
    "who-comes": "anyone",
  }),
  row("pv-cable-damaged", "copper showing on a cable, children play there", {
    ...ALL_DAY,
    ...BARE_AROUND_NOTHING,
    "live-covering": "bare",
    "who-comes": "children-or-less-able",
  }),
  row("battery-direct-current", "bare bar, nothing around, anyone comes", {
    ...STORE,
    ...BARE_AROUND_NOTHING,
    "who-comes": "anyone",
  }),
  row("battery-direct-current", "board without cover in a room that only skilled persons open", {
    ...STORE,
    ...BARE_AROUND_NOTHING,
    "who-comes": "skilled-only",
  }),
  row(
    "battery-direct-current",
    "board without cover in a room that only skilled persons open, the lock held not to count",
    { ...STORE, ...BARE_AROUND_NOTHING, "who-comes": "skilled-only" },
    { "locked-board": "does-not-count" },
  ),
  row("battery-direct-current", "board without cover in a cupboard with a common key", {
    ...STORE,
    ...BARE_AROUND_NOTHING,
    "who-comes": "many-keys",
  }),
  row("battery-direct-current", "bars behind a fixed rail, a caretaker has the key", {
    ...STORE,
    "who-comes": "named-keeper",
    "arms-reach": "within",
    obstacle: "secured",
  }),
  row("battery-direct-current", "bare bars behind a rail, anyone enters", {
    ...STORE,
    "who-comes": "anyone",
    "arms-reach": "within",
    obstacle: "secured",
  }),
];
