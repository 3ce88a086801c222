import type { Ground } from "./grounds/evidence.ts";
import type { Path } from "./issue/issue.ts";
import type { Unit } from "./quantity/unit.ts";

/** What a set of readings that cannot all be true is about. */
export const MISFIT_KINDS = [
  "circuit-readings",
  "board-loop",
  "leads-not-nulled",
  "supply-loop",
  "fault-current",
  "earthing-system",
  "insulation",
  "between-neutrals",
  "residual-device",
  "polarity",
  "ring",
] as const;
export type MisfitKind = (typeof MISFIT_KINDS)[number];

/** A value with the band in which it is expected, 95 % of the time. */
export interface ExpectedReading {
  /** The reading in the file. */
  readonly path: Path;
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** A reading taken into account, beside what the other readings would have it be were everything sound. */
export interface MisfitReading extends ExpectedReading {
  /** The trade's symbol or name: "R1+R2". */
  readonly name: string;
  readonly unit: Unit;
  /** As the display showed it. */
  readonly shown: string;
  readonly measured: number;
}

/** One explanation of readings that do not agree. */
export interface Explanation {
  readonly id: string;
  /** In words, with the size of what it takes where that is a number. */
  readonly words: string;
  /** Its share among the explanations looked at, 0 to 1. The explanations looked at are not all there are. */
  readonly share: number;
  /** Nothing is wrong with the installation where this is so: a matter of how the reading was taken or written down. */
  readonly innocent: boolean;
  /** What each reading would be under it, given the others. */
  readonly would: readonly ExpectedReading[];
}

/** What would separate the two leading explanations. */
export interface NextReading {
  readonly id: string;
  readonly words: string;
  /** What each of the two leads one to expect of it. */
  readonly expects: readonly { readonly explanation: string; readonly words: string }[];
}

/**
 * Readings that cannot all be true at once, with the explanations looked at. Nothing here is a classification: a misfit
 * asks for another look.
 */
export interface Misfit {
  readonly kind: MisfitKind;
  /** Circuit, board, device or supply in the file. */
  readonly path: Path;
  readonly title: string;
  /** Odds of the explanations together against everything being sound, as a power of ten. */
  readonly odds: number;
  /** Whether the odds are such that it is shown unasked. */
  readonly clear: boolean;
  readonly readings: readonly MisfitReading[];
  /** Most likely first. */
  readonly explanations: readonly Explanation[];
  /** Whether the readings tell the two leading explanations apart; true where there is one only. */
  readonly toldApart: boolean;
  /** How many explanations, from the first on, cannot be told apart, where that is known better than by their shares. */
  readonly tied?: number;
  readonly next: NextReading | null;
  /** Causes that are no fault, worth ruling out first. */
  readonly innocentCauses: readonly string[];
  /** The relation the readings were held against. */
  readonly formula: string;
  /** Leaves: what was read and what was assumed. */
  readonly grounds: readonly Ground[];
}
