import { source } from "../sources.ts";
import type { CapacityRow } from "./capacity-row.ts";

const P = source("BS 7671 Table 4E4A", "2008 to 2018+A4", "published");
const DOUBT = source("BS 7671 Table 4E4A", "2008 to 2018+A4", "published", {
  doubt: "one copy prints 46; 43 fits the progression 33, 43, 53",
});
const D = source("BS 7671 Table 4E4B", "2008 to 2018+A4", "published");

/**
 * Table 4E4, armoured, 90 °C thermosetting: tabulated capacity in A by reference method and number of loaded
 * conductors, and voltage drop in mV/A/m single-phase and three-phase, at 30 °C ambient (ground 20 °C), by size in
 * mm². Where the equipment connected is made for 70 °C, Table 4D4 applies instead (512.1.5).
 */
export const ARMOURED_90: readonly CapacityRow[] = Object.freeze([
  {
    size: 1.5,
    capacities: [
      ["C", 2, 27, P],
      ["C", 3, 23, P],
      ["E", 2, 29, P],
      ["E", 3, 25, P],
      ["D", 2, 25, P],
      ["D", 3, 21, P],
    ],
    drop: [31, 27],
    dropSource: D,
  },
  {
    size: 2.5,
    capacities: [
      ["C", 2, 36, P],
      ["C", 3, 31, P],
      ["E", 2, 39, P],
      ["E", 3, 33, P],
      ["D", 2, 33, P],
      ["D", 3, 28, P],
    ],
    drop: [19, 16],
    dropSource: D,
  },
  {
    size: 4,
    capacities: [
      ["C", 2, 49, P],
      ["C", 3, 42, P],
      ["E", 2, 52, P],
      ["E", 3, 44, P],
      ["D", 2, 43, DOUBT],
      ["D", 3, 36, P],
    ],
    drop: [12, 10],
    dropSource: D,
  },
  {
    size: 6,
    capacities: [
      ["C", 2, 62, P],
      ["C", 3, 53, P],
      ["E", 2, 66, P],
      ["E", 3, 56, P],
      ["D", 2, 53, P],
      ["D", 3, 44, P],
    ],
    drop: [7.9, 6.8],
    dropSource: D,
  },
  {
    size: 10,
    capacities: [
      ["C", 2, 85, P],
      ["C", 3, 73, P],
      ["E", 2, 90, P],
      ["E", 3, 78, P],
      ["D", 2, 71, P],
      ["D", 3, 58, P],
    ],
    drop: [4.7, 4.0],
    dropSource: D,
  },
  {
    size: 16,
    capacities: [
      ["C", 2, 110, P],
      ["C", 3, 94, P],
      ["E", 2, 115, P],
      ["E", 3, 99, P],
      ["D", 2, 91, P],
      ["D", 3, 75, P],
    ],
    drop: [2.9, 2.5],
    dropSource: D,
  },
  {
    size: 25,
    capacities: [
      ["C", 2, 146, P],
      ["C", 3, 124, P],
      ["E", 2, 152, P],
      ["E", 3, 131, P],
      ["D", 2, 116, P],
      ["D", 3, 96, P],
    ],
    drop: [1.9, 1.65],
    dropSource: D,
  },
  {
    size: 35,
    capacities: [
      ["C", 2, 180, P],
      ["C", 3, 154, P],
      ["E", 2, 188, P],
      ["E", 3, 162, P],
      ["D", 2, 139, P],
      ["D", 3, 115, P],
    ],
    drop: [1.35, 1.15],
    dropSource: D,
  },
]);
