import { source } from "../sources.ts";
import type { CapacityRow } from "./capacity-row.ts";

const P = source("BS 7671 Table 4D1A", "2008 to 2018+A4", "published");
const D = source("BS 7671 Table 4D1B", "2008 to 2018+A4", "published");
const D25 = source("BS 7671 Table 4D1B", "2008 to 2018+A4", "published", {
  doubt: "impedance in conduit or trunking; 1.75 and 1.50 for cables that touch on a surface",
});
const D35 = source("BS 7671 Table 4D1B", "2008 to 2018+A4", "published", {
  doubt: "impedance in conduit or trunking; 1.25 and 1.10 for cables that touch on a surface",
});

/**
 * Table 4D1, single-core, 70 °C thermoplastic: tabulated capacity in A by reference method and number of loaded
 * conductors, and voltage drop in mV/A/m single-phase and three-phase, at 30 °C ambient (ground 20 °C), by size in
 * mm².
 */
export const SINGLES: readonly CapacityRow[] = Object.freeze([
  {
    size: 1,
    capacities: [
      ["A", 2, 11, P],
      ["A", 3, 10.5, P],
      ["B", 2, 13.5, P],
      ["B", 3, 12, P],
      ["C", 2, 15.5, P],
      ["C", 3, 14, P],
    ],
    drop: [44, 38],
    dropSource: D,
  },
  {
    size: 1.5,
    capacities: [
      ["A", 2, 14.5, P],
      ["A", 3, 13.5, P],
      ["B", 2, 17.5, P],
      ["B", 3, 15.5, P],
      ["C", 2, 20, P],
      ["C", 3, 18, P],
    ],
    drop: [29, 25],
    dropSource: D,
  },
  {
    size: 2.5,
    capacities: [
      ["A", 2, 20, P],
      ["A", 3, 18, P],
      ["B", 2, 24, P],
      ["B", 3, 21, P],
      ["C", 2, 27, P],
      ["C", 3, 25, P],
    ],
    drop: [18, 15],
    dropSource: D,
  },
  {
    size: 4,
    capacities: [
      ["A", 2, 26, P],
      ["A", 3, 24, P],
      ["B", 2, 32, P],
      ["B", 3, 28, P],
      ["C", 2, 37, P],
      ["C", 3, 33, P],
    ],
    drop: [11, 9.5],
    dropSource: D,
  },
  {
    size: 6,
    capacities: [
      ["A", 2, 34, P],
      ["A", 3, 31, P],
      ["B", 2, 41, P],
      ["B", 3, 36, P],
      ["C", 2, 47, P],
      ["C", 3, 43, P],
    ],
    drop: [7.3, 6.4],
    dropSource: D,
  },
  {
    size: 10,
    capacities: [
      ["A", 2, 46, P],
      ["A", 3, 42, P],
      ["B", 2, 57, P],
      ["B", 3, 50, P],
      ["C", 2, 65, P],
      ["C", 3, 59, P],
    ],
    drop: [4.4, 3.8],
    dropSource: D,
  },
  {
    size: 16,
    capacities: [
      ["A", 2, 61, P],
      ["A", 3, 56, P],
      ["B", 2, 76, P],
      ["B", 3, 68, P],
      ["C", 2, 87, P],
      ["C", 3, 79, P],
    ],
    drop: [2.8, 2.4],
    dropSource: D,
  },
  {
    size: 25,
    capacities: [
      ["A", 2, 80, P],
      ["A", 3, 73, P],
      ["B", 2, 101, P],
      ["B", 3, 89, P],
      ["C", 2, 114, P],
      ["C", 3, 104, P],
    ],
    drop: [1.8, 1.55],
    dropSource: D25,
  },
  {
    size: 35,
    capacities: [
      ["A", 2, 99, P],
      ["A", 3, 89, P],
      ["B", 2, 125, P],
      ["B", 3, 110, P],
      ["C", 2, 141, P],
      ["C", 3, 129, P],
    ],
    drop: [1.3, 1.1],
    dropSource: D35,
  },
]);
