import {
  type ConductorMaterial,
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

const TABLE = "BS 7671 Table 43.1, seen on a page reproducing it";
const SEEN = source(TABLE, "2008 to 2018+A4", "published");
const BARE = source(TABLE, "2008 to 2018+A4", "published", {
  doubt: "115 where the bare sheath can be touched",
});
const RECALLED = source("BS 7671 Table 43.1", "2008 to 2018+A4", "memory");

/** The temperatures a factor k of Table 43.1 rests on; remembered throughout. */
export const LIVE_TEMPERATURE_SOURCE = source("BS 7671 Table 43.1, temperatures", "2008 to 2018+A4", "memory");

/** A row of Table 43.1. */
interface LiveRow {
  readonly material: ConductorMaterial;
  readonly insulation: Insulation;
  readonly k: BySize;
  /** Conductor temperature before the fault, °C; null where not at hand. */
  readonly initial: number | null;
  /** Limiting temperature, °C, by size. */
  readonly final: BySize | null;
  readonly source: Source;
}

const copper = (insulation: Insulation, k: BySize, initial: number, final: BySize, from: Source = SEEN): LiveRow => ({
  material: "copper",
  insulation,
  k,
  initial,
  final,
  source: from,
});
const aluminium = (insulation: Insulation, k: BySize): LiveRow => ({
  material: "aluminium",
  insulation,
  k,
  initial: null,
  final: null,
  source: RECALLED,
});

/** Table 43.1: factor k of live conductors, A√s/mm². */
export const LIVE_K: readonly LiveRow[] = Object.freeze([
  copper("70C-thermoplastic", [115, 103], 70, [160, 140]),
  copper("90C-thermoplastic", [100, 86], 90, [160, 140]),
  copper("60C-rubber", uniform(141), 60, uniform(200)),
  copper("90C-thermosetting", uniform(143), 90, uniform(250)),
  copper("mineral-covered", uniform(115), 70, uniform(160)),
  copper("mineral-bare", uniform(135), 105, uniform(250), BARE),
  aluminium("70C-thermoplastic", [76, 68]),
  aluminium("90C-thermoplastic", [66, 57]),
  aluminium("90C-thermosetting", uniform(94)),
]);

const column = (material: ConductorMaterial) =>
  byKey(
    LIVE_K.filter((row) => row.material === material).map(({ insulation, k, source: from }) => {
      const node = (value: number, size: number) =>
        published(TERM.adiabaticK, value, from, `Table 43.1, ${material}, ${insulation}, ${sizeWords(size)}`);
      return [insulation, k.map(node)] as const;
    }),
  );

const NODES = { copper: column("copper"), aluminium: column("aluminium") };

/** Factor k of a live conductor (Table 43.1), A√s/mm², by size in mm². */
export function liveConductorK(
  material: ConductorMaterial,
  insulation: Insulation,
  area: number,
): Published<"adiabatic-k"> | NotKnown<"adiabatic-k"> {
  const found = area > 0 ? NODES[material].get(insulation)?.[area > LARGE ? 1 : 0] : undefined;
  return found ?? notTabulated(TERM.adiabaticK, "Table 43.1", `${material} of ${area} mm², ${insulation}`);
}
