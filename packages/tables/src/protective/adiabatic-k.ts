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
import { byKey } from "../by-key.ts";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";
import { type BySize, LARGE, sizeWords, uniform } from "./by-size.ts";

/** Materials a protective conductor may be of: armour is steel, old sheaths are lead. */
export type ProtectiveMaterial = ConductorMaterial | "steel" | "lead";

const P = (table: string) =>
  source(`BS 7671 Table ${table}, seen on a page reproducing it`, "2008 to 2018+A4", "published");
const M = (table: string) => source(`BS 7671 Table ${table}`, "2008 to 2018+A4", "memory");

interface Row {
  readonly table: "54.2" | "54.3" | "54.4" | "54.5";
  readonly material: ProtectiveMaterial;
  readonly source: Source;
  readonly k: Readonly<Record<"70C-thermoplastic" | "90C-thermoplastic" | "90C-thermosetting", BySize>>;
}

const columns = (thermoplastic70: BySize, thermoplastic90: BySize, thermosetting90: BySize): Row["k"] => ({
  "70C-thermoplastic": thermoplastic70,
  "90C-thermoplastic": thermoplastic90,
  "90C-thermosetting": thermosetting90,
});

const P542 = P("54.2");
const SEPARATE: readonly Row[] = [
  { table: "54.2", material: "copper", source: P542, k: columns([143, 133], [143, 133], uniform(176)) },
  { table: "54.2", material: "aluminium", source: P542, k: columns([95, 88], [95, 88], uniform(116)) },
  { table: "54.2", material: "steel", source: P542, k: columns(uniform(52), uniform(52), uniform(64)) },
];
const IN_CABLE: readonly Row[] = [
  { table: "54.3", material: "copper", source: P("54.3"), k: columns([115, 103], [100, 86], uniform(143)) },
  { table: "54.3", material: "aluminium", source: M("54.3"), k: columns([76, 68], [66, 57], uniform(94)) },
];
const P544 = P("54.4");
const SHEATH: readonly Row[] = [
  { table: "54.4", material: "aluminium", source: P544, k: columns(uniform(93), uniform(85), uniform(85)) },
  { table: "54.4", material: "steel", source: P544, k: columns(uniform(51), uniform(46), uniform(46)) },
  { table: "54.4", material: "lead", source: P544, k: columns(uniform(26), uniform(23), uniform(23)) },
];
const CONDUIT: readonly Row[] = [
  { table: "54.5", material: "steel", source: P("54.5"), k: columns(uniform(47), uniform(44), uniform(58)) },
];

/** Rows of Tables 54.2 to 54.5 by what serves as protective conductor. */
export const PROTECTIVE_K: Readonly<Record<Exclude<CpcArrangement, "none">, readonly Row[]>> = Object.freeze({
  separate: SEPARATE,
  "in-cable": IN_CABLE,
  armour: SHEATH,
  sheath: SHEATH,
  conduit: CONDUIT,
});

type Nodes = ReadonlyMap<ProtectiveMaterial, ReadonlyMap<string, readonly Published<"adiabatic-k">[]>>;

const nodesOf = (rows: readonly Row[]): Nodes =>
  byKey(
    rows.map(({ table, material, k, source: from }) => {
      const pairs = Object.entries(k).map(([insulation, pair]) => {
        const node = (value: number, size: number) =>
          published(TERM.adiabaticK, value, from, `Table ${table}, ${material}, ${insulation}, ${sizeWords(size)}`);
        return [insulation, pair.map(node)] as const;
      });
      return [material, byKey(pairs)] as const;
    }),
  );

const NODES: ReadonlyMap<string, Nodes> = new Map(
  Object.entries(PROTECTIVE_K).map(([arrangement, rows]) => [arrangement, nodesOf(rows)]),
);

/**
 * Factor k of a protective conductor, A√s/mm², by material, insulation, arrangement and size in mm². Aluminium and lead
 * under "armour" and "sheath" are read from the one Table 54.4.
 */
export function protectiveConductorK(
  material: ProtectiveMaterial,
  insulation: Insulation,
  arrangement: CpcArrangement,
  area: number,
): Published<"adiabatic-k"> | NotKnown<"adiabatic-k"> {
  const found = area > 0 ? NODES.get(arrangement)?.get(material)?.get(insulation)?.[area > LARGE ? 1 : 0] : undefined;
  return (
    found ??
    notTabulated(TERM.adiabaticK, "Tables 54.2 to 54.5", `${material} of ${area} mm², ${insulation}, ${arrangement}`)
  );
}
