/** Dangers told as a state, a thing and a place; every combination of a row leads to one of its topics. */
export interface DangerCombination {
  readonly states: readonly string[];
  readonly things: readonly string[];
  readonly places: readonly string[];
  readonly topics: readonly string[];
}

function row(states: string, things: string, places: string, topics: string): DangerCombination {
  const [s = [], t = [], p = []] = [states, things, places].map((text) => text.split(", "));
  return { states: s, things: t, places: p, topics: topics.split(" ") };
}

const INDOORS = "kitchen, hallway, loft, bedroom, garage";
const SHOWING = "bare, live parts showing, exposed, copper showing, can touch live";
const HOT = "scorched, burnt, melted, browned, smoking";

export const DANGER_COMBINATIONS: readonly DangerCombination[] = [
  row(SHOWING, "socket, light switch, fcu", INDOORS, "accessory-broken live-conductors-unterminated accessory-loose"),
  row("smashed, cracked, broken", "socket, light switch", INDOORS, "accessory-broken"),
  row(HOT, "socket, switch, fused spur", INDOORS, "accessory-overheated"),
  row("hanging, hanging off, loose, pulled off", "socket, double socket", INDOORS, "accessory-loose"),
  row(
    SHOWING,
    "consumer unit, fuse board, db, fusebox",
    INDOORS,
    "board-cover-missing board-blank-missing board-inner-shield",
  ),
  row(HOT, "consumer unit, fuse board, mcb, busbar", INDOORS, "board-overheating"),
  row("wet, rusty, water dripping into", "consumer unit, fuse board, cu", INDOORS, "board-damp"),
  row(
    SHOWING,
    "tails, meter tails",
    "meter cupboard, hallway, under stairs",
    "meter-tails-exposed connector-block-open",
  ),
  row(
    "cracked, scorched, broken, leaking",
    "cut out, service head",
    "meter cupboard, hallway",
    "distributor-equipment-damaged",
  ),
  row(SHOWING, "ceiling rose, lampholder, pendant", INDOORS, "lampholder-or-rose-open"),
  row("hanging, hanging by wires, falling off", "light fitting, batten, chandelier", INDOORS, "luminaire-unsupported"),
  row("cut, nicked, worn through, chewed, copper showing", "cable, t&e, flex", INDOORS, "cable-damaged"),
  row(
    "cut, nicked, worn through, bare",
    "cable, t&e, flex",
    "garden, lawn, fence",
    "cable-damaged garden-cable-unprotected",
  ),
  row("nicked, dug up, damaged", "swa, armoured cable", "garden, underground, trench", "cable-damaged cable-buried"),
  row(SHOWING, "jb, choc block, joint", INDOORS, "joint-not-enclosed live-conductors-unterminated"),
  row(
    "bare ends, live ends, live wires hanging",
    "of cable, where light was, cut off",
    INDOORS,
    "live-conductors-unterminated",
  ),
  row("bare, live, showing", "singles trunking lid off, singles conduit broken", INDOORS, "trunking-or-conduit-open"),
  row("smashed, broken, bare", "light", "outside, garden, patio", "outdoor-luminaire-damaged"),
  row("full of water, wet", "socket, switch", "outside, garden, patio", "outdoor-enclosure"),
  row("wet, full of water, water in", "light, socket", "kitchen, hallway, bedroom", "water-in-equipment"),
  row("snapped, loose, corroded, cut", "earth rod, earth rod clamp", "garden, pit", "electrode-condition"),
  row("frayed, melted, damaged, bare", "solar cable, mc4, pv cable", "roof, tiles", "pv-cable-damaged"),
  row("tingle off, shock off, live", "tap, metal case, sink", "kitchen, utility", "metalwork-live"),
];
