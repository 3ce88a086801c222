import type { ExpectedReading } from "@good-grounds/core";
import type { CircuitBlock } from "./circuit-model.ts";
import type { Slot } from "./slot.ts";

/** What a circuit would show to readings taken anew, in Ω. Undefined where the hypothesis does not say. */
export interface Truth {
  readonly r1r2?: number;
  readonly r2?: number;
  /** Line and neutral joined at the far end, read at the board. */
  readonly r1rn?: number;
  readonly zs?: number;
  /** From metal earthed at the far end to the main earthing terminal, the circuit's own protective conductor off. */
  readonly beyond?: number;
  /** Size of the protective conductor, mm². */
  readonly cpcSize?: number;
  /** Length of the cable, m. */
  readonly length?: number;
}

/** One size of a fault: what it does to the recorded readings and what is true under it. */
export interface Effect {
  /** What is added to the reading of a sound circuit, Ω. */
  readonly shift: (slot: Slot) => number;
  /** Half of what one step of the size more and one step less differ by, Ω. */
  readonly step: (slot: Slot) => number;
  /** How far the loop before the circuit still bears on its live readings, 1 for all of it. */
  readonly beforeShare: number;
  /** Readings that are not of this circuit: how dense each is wherever it comes from, per Ω, as a logarithm. */
  readonly foreign?: readonly { readonly slot: Slot; readonly logDensity: number }[];
  /** What stands in the place of a reading: that of another slot, or so many times its own. */
  readonly standsAt?: (slot: Slot) => { readonly of: Slot; readonly times: number };
  /** Evidence that was worked out apart, with what the readings would be. */
  readonly outright?: { readonly log: number; readonly expected: () => readonly ExpectedReading[] };
  readonly logWeight: number;
  /** Made when asked for: only the likeliest size is ever shown. */
  readonly truth: () => Truth;
  /** The size in words: "0.55 Ω", "circuit 5". */
  readonly size: () => string;
}

/** An explanation of a circuit's readings. */
export interface CircuitFault {
  readonly id: string;
  readonly innocent: boolean;
  /** Share among the explanations before any reading is looked at. */
  readonly prior: number | ((block: CircuitBlock, around: Surroundings) => number);
  /** The word under which something seen at the circuit speaks for it. */
  readonly seenAs?: string;
  readonly words: (size: string) => string;
  readonly effects: (block: CircuitBlock, around: Surroundings) => readonly Effect[];
}

/** What is known around a circuit that its explanations draw on. */
export interface Surroundings {
  /** Loop before the circuit as the rest of the board has it, Ω. */
  readonly before: number;
  /** Line to neutral loop at the board, Ω; undefined where nothing settles it. */
  readonly lineNeutral: number | undefined;
  /** Whether the earth is an electrode, not the supply's. */
  readonly tt: boolean;
  /** Whether neutral and earth of the supply are one conductor. */
  readonly combined: boolean;
  /** The other circuits of the board. */
  readonly others: readonly CircuitBlock[];
  /** How well this circuit's readings go with the cables of others, and theirs with this one's. */
  readonly rows: () => readonly RowOfAnother[];
}

/** Another circuit of the board to whose row the readings may belong. */
export interface RowOfAnother {
  readonly other: CircuitBlock;
  /** Log density of this circuit's readings on the other's cable. */
  readonly mine: number;
  readonly expected: () => readonly ExpectedReading[];
  /** Log density of the other's readings on this circuit's cable, less what it is where they stand. */
  readonly theirs: number;
}

/** Sizes evenly spaced on a logarithmic scale, with the ratio of neighbours. */
export function logGrid(low: number, high: number, count: number): { values: number[]; ratio: number } {
  const ratio = (high / low) ** (1 / count);
  return { values: Array.from({ length: count }, (_, i) => low * ratio ** (i + 0.5)), ratio };
}
