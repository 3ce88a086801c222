import { here, truthOf } from "../circuit-effects.ts";
import type { CircuitBlock } from "../circuit-model.ts";
import type { CircuitFault, Effect, RowOfAnother, Surroundings } from "../fault.ts";

/** Readings that stand in another circuit's row. */
export const ROWS: readonly CircuitFault[] = [
  {
    id: "rows-exchanged",
    innocent: true,
    prior: 0.1,
    words: (size) => `the rows of this circuit and of circuit ${size} changed places in the schedule`,
    effects: (block, around) => ofRows(block, around, ({ mine, theirs }) => mine + theirs),
  },
  {
    id: "row-copied",
    innocent: true,
    prior: 0.1,
    words: (size) => `the readings are those of circuit ${size} to the digit, copied whole`,
    effects: (block, around) => ofRows(block, around, ({ other }) => copied(block, other)),
  },
  {
    id: "row-of-another-circuit",
    innocent: true,
    prior: 0.02,
    words: (size) => `the readings are of circuit ${size} and not of this one`,
    effects: (block, around) => ofRows(block, around, ({ mine }) => mine),
  },
];

function ofRows(block: CircuitBlock, around: Surroundings, logOf: (row: RowOfAnother) => number): readonly Effect[] {
  const rows = around.rows();
  return rows.map((row) => ({
    shift: NONE,
    step: NONE,
    beforeShare: 1,
    outright: { log: logOf(row), expected: row.expected },
    logWeight: -Math.log(around.others.length),
    truth: () => truthOf(here(block, around)),
    size: () => row.other.circuit.designation,
  }));
}

const NONE = () => 0;

/** A copy is the same to the digit, of two readings or more. */
function copied(block: CircuitBlock, other: CircuitBlock): number {
  let log = 0;
  for (const [i, { evidence }] of block.readings.entries()) {
    const slot = block.slots[i];
    const theirs = slot === undefined ? undefined : other.readings[other.slots.indexOf(slot)];
    if (theirs?.evidence.detail.text !== evidence.detail.text) return Number.NEGATIVE_INFINITY;
    log -= Math.log(evidence.detail.resolution);
  }
  return block.readings.length < 2 ? Number.NEGATIVE_INFINITY : log;
}
