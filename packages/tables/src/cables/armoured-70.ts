import { source } from "../sources.ts";
import type { CapacityRow } from "./capacity-row.ts";

const P = source("BS 7671 Table 4D4A", "2008 to 2018+A4", "published");
const M = source("BS 7671 Table 4D4A", "2008 to 2018+A4", "memory");
const SAME = source("BS 7671 Table 4D4B", "2008 to 2018+A4", "derived", {
  formula: "as Table 4D1B: the same conductor, as warm",
});
const DM = source("BS 7671 Table 4D4B", "2008 to 2018+A4", "memory", {
  doubt: "equals Table 4D1B for cables that touch",
});

/**
 * Table 4D4, armoured, 70 °C thermoplastic: tabulated capacity in A by reference method and number of loaded
 * conductors, and voltage drop in mV/A/m single-phase and three-phase, at 30 °C ambient (ground 20 °C), by size in
 * mm².
 */
export const ARMOURED_70: readonly CapacityRow[] = Object.freeze([
  {
    size: 1.5,
    capacities: [
      ["C", 2, 21, M],
      ["C", 3, 18, M],
      ["E", 2, 22, M],
      ["E", 3, 19, M],
      ["D", 2, 22, M],
      ["D", 3, 18, M],
    ],
    drop: [29, 25],
    dropSource: SAME,
  },
  {
    size: 2.5,
    capacities: [
      ["C", 2, 28, M],
      ["C", 3, 25, M],
      ["E", 2, 31, M],
      ["E", 3, 26, M],
      ["D", 2, 29, M],
      ["D", 3, 24, M],
    ],
    drop: [18, 15],
    dropSource: SAME,
  },
  {
    size: 4,
    capacities: [
      ["C", 2, 38, M],
      ["C", 3, 33, M],
      ["E", 2, 41, M],
      ["E", 3, 35, M],
      ["D", 2, 37, M],
      ["D", 3, 30, M],
    ],
    drop: [11, 9.5],
    dropSource: SAME,
  },
  {
    size: 6,
    capacities: [
      ["C", 2, 49, M],
      ["C", 3, 42, M],
      ["E", 2, 53, M],
      ["E", 3, 45, M],
      ["D", 2, 46, M],
      ["D", 3, 38, M],
    ],
    drop: [7.3, 6.4],
    dropSource: SAME,
  },
  {
    size: 10,
    capacities: [
      ["C", 2, 67, M],
      ["C", 3, 58, M],
      ["E", 2, 72, M],
      ["E", 3, 62, P],
      ["D", 2, 60, M],
      ["D", 3, 50, M],
    ],
    drop: [4.4, 3.8],
    dropSource: SAME,
  },
  {
    size: 16,
    capacities: [
      ["C", 2, 89, M],
      ["C", 3, 77, M],
      ["E", 2, 97, M],
      ["E", 3, 83, M],
      ["D", 2, 78, M],
      ["D", 3, 64, M],
    ],
    drop: [2.8, 2.4],
    dropSource: SAME,
  },
  {
    size: 25,
    capacities: [
      ["C", 2, 118, M],
      ["C", 3, 102, M],
      ["E", 2, 128, M],
      ["E", 3, 110, M],
      ["D", 2, 99, M],
      ["D", 3, 82, M],
    ],
    drop: [1.75, 1.5],
    dropSource: DM,
  },
  {
    size: 35,
    capacities: [
      ["C", 2, 145, M],
      ["C", 3, 125, M],
      ["E", 2, 157, M],
      ["E", 3, 135, M],
      ["D", 2, 119, M],
      ["D", 3, 98, M],
    ],
    drop: [1.25, 1.1],
    dropSource: DM,
  },
]);
