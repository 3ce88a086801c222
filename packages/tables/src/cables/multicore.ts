import { source } from "../sources.ts";
import type { CapacityRow } from "./capacity-row.ts";

const P = source("BS 7671 Table 4D2A", "2008 to 2018+A4", "published");
const M = source("BS 7671 Table 4D2A", "2008 to 2018+A4", "memory");
const SAME = source("BS 7671 Table 4D2B", "2008 to 2018+A4", "derived", {
  formula: "as Table 4D1B: the same conductor, as warm",
});
const DM = source("BS 7671 Table 4D2B", "2008 to 2018+A4", "memory", {
  doubt: "equals Table 4D1B for cables that touch",
});

/**
 * Table 4D2, multicore, 70 °C thermoplastic: tabulated capacity in A by reference method and number of loaded
 * conductors, and voltage drop in mV/A/m single-phase and three-phase, at 30 °C ambient (ground 20 °C), by size in
 * mm². Methods A and B are A2 and B2 of IEC 60364-5-52.
 */
export const MULTICORE: readonly CapacityRow[] = Object.freeze([
  {
    size: 1,
    capacities: [
      ["A", 2, 11, M],
      ["A", 3, 10, M],
      ["B", 2, 13, M],
      ["B", 3, 11.5, M],
      ["C", 2, 15, M],
      ["C", 3, 13.5, M],
      ["E", 2, 17, M],
      ["E", 3, 14.5, M],
    ],
    drop: [44, 38],
    dropSource: SAME,
  },
  {
    size: 1.5,
    capacities: [
      ["A", 2, 14, M],
      ["A", 3, 13, M],
      ["B", 2, 16.5, M],
      ["B", 3, 15, P],
      ["C", 2, 19.5, M],
      ["C", 3, 17.5, P],
      ["E", 2, 22, M],
      ["E", 3, 18.5, M],
    ],
    drop: [29, 25],
    dropSource: SAME,
  },
  {
    size: 2.5,
    capacities: [
      ["A", 2, 18.5, P],
      ["A", 3, 17.5, M],
      ["B", 2, 23, P],
      ["B", 3, 20, P],
      ["C", 2, 27, M],
      ["C", 3, 24, P],
      ["E", 2, 30, M],
      ["E", 3, 25, M],
    ],
    drop: [18, 15],
    dropSource: SAME,
  },
  {
    size: 4,
    capacities: [
      ["A", 2, 25, M],
      ["A", 3, 23, M],
      ["B", 2, 30, M],
      ["B", 3, 27, P],
      ["C", 2, 36, M],
      ["C", 3, 32, P],
      ["E", 2, 40, M],
      ["E", 3, 34, M],
    ],
    drop: [11, 9.5],
    dropSource: SAME,
  },
  {
    size: 6,
    capacities: [
      ["A", 2, 32, P],
      ["A", 3, 29, M],
      ["B", 2, 38, P],
      ["B", 3, 34, P],
      ["C", 2, 46, P],
      ["C", 3, 41, P],
      ["E", 2, 51, M],
      ["E", 3, 43, M],
    ],
    drop: [7.3, 6.4],
    dropSource: SAME,
  },
  {
    size: 10,
    capacities: [
      ["A", 2, 43, P],
      ["A", 3, 39, M],
      ["B", 2, 52, P],
      ["B", 3, 46, P],
      ["C", 2, 63, P],
      ["C", 3, 57, P],
      ["E", 2, 70, M],
      ["E", 3, 60, M],
    ],
    drop: [4.4, 3.8],
    dropSource: SAME,
  },
  {
    size: 16,
    capacities: [
      ["A", 2, 57, P],
      ["A", 3, 52, M],
      ["B", 2, 69, P],
      ["B", 3, 62, P],
      ["C", 2, 85, P],
      ["C", 3, 76, P],
      ["E", 2, 94, M],
      ["E", 3, 80, M],
    ],
    drop: [2.8, 2.4],
    dropSource: SAME,
  },
  {
    size: 25,
    capacities: [
      ["A", 2, 75, M],
      ["A", 3, 68, M],
      ["B", 2, 90, M],
      ["B", 3, 80, P],
      ["C", 2, 112, M],
      ["C", 3, 96, P],
      ["E", 2, 119, M],
      ["E", 3, 101, M],
    ],
    drop: [1.75, 1.5],
    dropSource: DM,
  },
  {
    size: 35,
    capacities: [
      ["A", 2, 92, M],
      ["A", 3, 83, M],
      ["B", 2, 111, M],
      ["B", 3, 99, P],
      ["C", 2, 138, M],
      ["C", 3, 119, P],
      ["E", 2, 148, M],
      ["E", 3, 126, M],
    ],
    drop: [1.25, 1.1],
    dropSource: DM,
  },
]);
