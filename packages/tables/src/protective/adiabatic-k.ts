import {
  type ConductorMaterial,
  type CpcArrangement,
  type Insulation,
  type NotKnown,
  type Published,
  published,
  type Source,
  TERM,
} from "@good-grounds/core";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";

/** Materials a protective conductor may be of: armour is steel, old sheaths are lead. */
export type ProtectiveMaterial = ConductorMaterial | "steel" | "lead";

type InsulationColumn = "70C-thermoplastic" | "90C-thermoplastic" | "90C-thermosetting";
/** k up to 300 mm² and above, A√s/mm². */
type Pair = readonly [upTo300: number, above300: number];

const P = (table: string) =>
  source(`BS 7671 Table ${table}; contractor-body pocket guide 14, page 25`, "2008 to 2018+A4", "published");
const M = (table: string) => source(`BS 7671 Table ${table}`, "2008 to 2018+A4", "memory");

interface Row {
  readonly table: string;
  readonly material: ProtectiveMaterial;
  readonly source: Source;
  readonly k: Readonly<Record<InsulationColumn, Pair>>;
}

const same = (k: number): Pair => [k, k];
const columns = (a: Pair, b: Pair, c: Pair): Row["k"] => ({
  "70C-thermoplastic": a,
  "90C-thermoplastic": b,
  "90C-thermosetting": c,
});

const SEPARATE: readonly Row[] = [
  { table: "54.2", material: "copper", source: P("54.2"), k: columns([143, 133], [143, 133], same(176)) },
  { table: "54.2", material: "aluminium", source: P("54.2"), k: columns([95, 88], [95, 88], same(116)) },
  { table: "54.2", material: "steel", source: P("54.2"), k: columns(same(52), same(52), same(64)) },
];
const IN_CABLE: readonly Row[] = [
  { table: "54.3", material: "copper", source: P("54.3"), k: columns([115, 103], [100, 86], same(143)) },
  { table: "54.3", material: "aluminium", source: M("54.3"), k: columns([76, 68], [66, 57], same(94)) },
];
const SHEATH: readonly Row[] = [
  { table: "54.4", material: "aluminium", source: P("54.4"), k: columns(same(93), same(85), same(85)) },
  { table: "54.4", material: "steel", source: P("54.4"), k: columns(same(51), same(46), same(46)) },
  { table: "54.4", material: "lead", source: P("54.4"), k: columns(same(26), same(23), same(23)) },
];
const CONDUIT: readonly Row[] = [
  { table: "54.5", material: "steel", source: P("54.5"), k: columns(same(47), same(44), same(58)) },
];

/** Rows of Tables 54.2 to 54.5 by what serves as protective conductor. */
export const PROTECTIVE_K: Readonly<Record<Exclude<CpcArrangement, "none">, readonly Row[]>> = Object.freeze({
  separate: SEPARATE,
  "in-cable": IN_CABLE,
  armour: SHEATH,
  sheath: SHEATH,
  conduit: CONDUIT,
});

const NODES = new Map<string, Published<"adiabatic-k">>();
for (const [arrangement, rows] of Object.entries(PROTECTIVE_K)) {
  for (const { table, material, k, source: from } of rows) {
    for (const [insulation, pair] of Object.entries(k)) {
      for (const [i, value] of pair.entries()) {
        const row = `Table ${table}, ${material}, ${insulation}, ${i === 0 ? "up to" : "above"} 300 mm²`;
        NODES.set(`${arrangement} ${material} ${insulation} ${i}`, published(TERM.adiabaticK, value, from, row));
      }
    }
  }
}

/** Factor k of a protective conductor, A√s/mm², by material, insulation, arrangement and size in mm². */
export function protectiveConductorK(
  material: ProtectiveMaterial,
  insulation: Insulation,
  arrangement: CpcArrangement,
  area: number,
): Published<"adiabatic-k"> | NotKnown<"adiabatic-k"> {
  const found = NODES.get(`${arrangement} ${material} ${insulation} ${area > 300 ? 1 : 0}`);
  return found ?? notTabulated(TERM.adiabaticK, "Tables 54.2 to 54.5", `${material}, ${insulation}, ${arrangement}`);
}

const LIVE: Readonly<Record<ConductorMaterial, Readonly<Partial<Record<Insulation, Pair>>>>> = {
  copper: {
    "70C-thermoplastic": [115, 103],
    "90C-thermoplastic": [100, 86],
    "60C-rubber": same(141),
    "90C-thermosetting": same(143),
    "mineral-covered": same(115),
    "mineral-bare": same(135),
  },
  aluminium: { "70C-thermoplastic": [76, 68], "90C-thermoplastic": [66, 57], "90C-thermosetting": same(94) },
};

const LIVE_NODES = new Map<string, Published<"adiabatic-k">>();
for (const [material, rows] of Object.entries(LIVE)) {
  for (const [insulation, pair] of Object.entries(rows)) {
    for (const [i, value] of pair.entries()) {
      const row = `Table 43.1, ${material}, ${insulation}, ${i === 0 ? "up to" : "above"} 300 mm²`;
      const from = material === "copper" ? P("43.1") : M("43.1");
      LIVE_NODES.set(`${material} ${insulation} ${i}`, published(TERM.adiabaticK, value, from, row));
    }
  }
}

/** Factor k of a live conductor (Table 43.1). */
export function liveConductorK(
  material: ConductorMaterial,
  insulation: Insulation,
  area: number,
): Published<"adiabatic-k"> | NotKnown<"adiabatic-k"> {
  const found = LIVE_NODES.get(`${material} ${insulation} ${area > 300 ? 1 : 0}`);
  return found ?? notTabulated(TERM.adiabaticK, "Table 43.1", `${material}, ${insulation}`);
}
