import { type DeviceStandard, type Expected, expected, TERM } from "@good-grounds/core";
import { source } from "../../sources.ts";
import type { MarkedDevice } from "../device.ts";
import { fuseCurrent } from "../operating-current.ts";
import { fuseRows } from "./index.ts";

const GATES = source("BS EN 60269-1, pre-arcing I²t of gG fuse-links at 0.01 s, least values", "current", "memory");
const WIRE = source("BS 7671 Table 53.1, tinned copper wire of semi-enclosed fuses", "2008 to 2018+A4", "memory", {
  formula:
    "5.7 × 10⁴ × (π ÷ 4 × (0.95 d)²)²: copper from 200 °C to its melting point, a twentieth thinner than its size; no more than 0.95⁴ of the energy of a known point",
  doubt: "elements of several strands or of other metal differ",
});

/** Least pre-arcing energy of gG fuse-links, A²s, by rated current, A. */
const GG: ReadonlyMap<number, number> = new Map([
  [16, 300],
  [20, 500],
  [25, 1000],
  [32, 1800],
  [40, 3000],
  [50, 5000],
  [63, 9000],
  [80, 16_000],
  [100, 27_000],
  [125, 46_000],
  [160, 86_000],
  [200, 140_000],
]);

/** Diameter of the tinned copper wire of a semi-enclosed fuse, mm, by rated current, A. */
const WIRES: ReadonlyMap<number, number> = new Map([
  [5, 0.2],
  [15, 0.5],
  [20, 0.6],
  [30, 0.85],
  [45, 1.25],
  [60, 1.53],
  [100, 2],
]);

/** A²s for each mm⁴ of copper that melts from 200 °C without losing heat. */
const MELTS = 5.7e4;
/** How much thinner than its size a wire may be. */
const THINNER = 0.95;
/** The same in energy: a known point is that of a slow wire, and a thinner one melts with so much of it. */
const OF_A_POINT = THINNER ** 4;

const GG_STANDARDS: ReadonlySet<DeviceStandard> = new Set(["BS 88-2", "BS 88-2.2", "BS 88-6"]);

/**
 * The energy below which a fuse cannot have melted, A²s: no fault that it clears lets through less. Undefined where
 * nothing is carried (BS 1361, BS 88-3, BS 1362) and for types with a characteristic of their own.
 */
export function leastMeltingEnergy(device: MarkedDevice): Expected<"ampere-squared-second"> | undefined {
  const { standard, rated } = device;
  const rows = fuseRows(device).filter((row) => row.rated === rated);
  if (rows.length === 0) return undefined;
  if (GG_STANDARDS.has(standard)) {
    const least = GG.get(rated);
    return least === undefined
      ? undefined
      : expected(TERM.letThrough, least, `a gG fuse of ${rated} A does not melt with less`, [least, least], GATES);
  }
  const diameter = standard === "BS 3036" ? WIRES.get(rated) : undefined;
  if (diameter === undefined) return undefined;
  const wire = MELTS * ((Math.PI / 4) * (THINNER * diameter) ** 2) ** 2;
  const least = Math.min(wire, ...rows.map((row) => OF_A_POINT * fuseCurrent(row) ** 2 * row.seconds));
  return expected(
    TERM.letThrough,
    least,
    `tinned copper wire of ${diameter} mm for ${rated} A does not melt with less`,
    [least, least],
    WIRE,
  );
}
