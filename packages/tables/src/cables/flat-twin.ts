import { source } from "../sources.ts";
import type { CapacityRow } from "./capacity-row.ts";

const P = source("BS 7671 Table 4D5A", "2008 to 2018+A4", "published");
const M = source("BS 7671 Table 4D5A", "2008 to 2018+A4", "memory");
const D = source("BS 7671 Table 4D5", "2008 to 2018+A4", "published");
const SAME = source("BS 7671 Table 4D5", "2008 to 2018+A4", "derived", {
  formula: "as Table 4D1B: the same conductor, as warm",
});

/**
 * Table 4D5, flat twin and cpc, 70 °C thermoplastic: tabulated capacity in A by reference method and number of loaded
 * conductors, and voltage drop in mV/A/m single-phase and three-phase, at 30 °C ambient (ground 20 °C), by size in
 * mm². Methods 100 and 101: above a ceiling, under insulation up to 100 mm and over 100 mm deep. Methods 102 and 103:
 * in a stud wall, touching its inner face and not.
 */
export const FLAT_TWIN: readonly CapacityRow[] = Object.freeze([
  {
    size: 1,
    capacities: [
      ["100", 2, 13, P],
      ["101", 2, 10.5, P],
      ["102", 2, 13, P],
      ["103", 2, 8, P],
      ["C", 2, 16, P],
      ["A", 2, 11.5, P],
    ],
    drop: [44, null],
    dropSource: D,
  },
  {
    size: 1.5,
    capacities: [
      ["100", 2, 16, P],
      ["101", 2, 13, P],
      ["102", 2, 16, P],
      ["103", 2, 10, P],
      ["C", 2, 20, P],
      ["A", 2, 14.5, P],
    ],
    drop: [29, null],
    dropSource: D,
  },
  {
    size: 2.5,
    capacities: [
      ["100", 2, 21, M],
      ["101", 2, 17, M],
      ["102", 2, 21, M],
      ["103", 2, 13.5, M],
      ["C", 2, 27, P],
      ["A", 2, 20, P],
    ],
    drop: [18, null],
    dropSource: SAME,
  },
  {
    size: 4,
    capacities: [
      ["100", 2, 27, M],
      ["101", 2, 22, M],
      ["102", 2, 27, M],
      ["103", 2, 17.5, P],
      ["C", 2, 37, P],
      ["A", 2, 26, M],
    ],
    drop: [11, null],
    dropSource: SAME,
  },
  {
    size: 6,
    capacities: [
      ["100", 2, 34, M],
      ["101", 2, 27, M],
      ["102", 2, 35, M],
      ["103", 2, 23.5, M],
      ["C", 2, 47, M],
      ["A", 2, 32, M],
    ],
    drop: [7.3, null],
    dropSource: SAME,
  },
  {
    size: 10,
    capacities: [
      ["100", 2, 45, P],
      ["101", 2, 36, M],
      ["102", 2, 47, M],
      ["103", 2, 32, P],
      ["C", 2, 64, M],
      ["A", 2, 44, M],
    ],
    drop: [4.4, null],
    dropSource: SAME,
  },
  {
    size: 16,
    capacities: [
      ["100", 2, 57, M],
      ["101", 2, 46, M],
      ["102", 2, 63, M],
      ["103", 2, 42.5, M],
      ["C", 2, 85, M],
      ["A", 2, 57, M],
    ],
    drop: [2.8, null],
    dropSource: SAME,
  },
]);
