import type { Conductor, Pair } from "./asked.ts";
import type { Fault, Said } from "./fault.ts";
import type { Fit, Problem } from "./fit.ts";

/** What an explanation is tried beside: the readings, and what is supposed already. */
export interface Around {
  readonly problem: Problem;
  /** The fit to which a fault is added; a sound ring at first. */
  readonly base: Fit;
  /** Conductors that read open from end to end and that the base does not make open. */
  readonly open: readonly Conductor[];
}

/** A fault to be tried, or one that is tried in every leg, with sizes to start from. */
export type Tried<S extends Said = Said> = {
  readonly sizes?: readonly number[];
  /** Places of the points to start from, where not those of the base. */
  readonly places?: readonly number[];
  /** Times what the line has in the base. */
  readonly line?: number;
} & ({ readonly fault: Fault<S> } | { readonly inLeg: (leg: number) => Fault<S> });

/** What an open reading at a point leaves of its two readings; `none` for one that was not taken or says nothing. */
export type SeenAtPoint = Readonly<Record<Pair, "open" | "closed" | "none">>;

/**
 * One entry of the list of explanations. How to add one: a file here that makes its faults, its line in `index.ts`, and
 * its words in the report's `ring-faults-en.ts`.
 */
export interface Explanation<S extends Said = Said> {
  readonly id: string;
  /** Nothing is wrong with the ring. */
  readonly innocent: boolean;
  /** It makes conductors read open from end to end; while one does unexplained, nothing else is tried. */
  readonly opens?: boolean;
  /** It explains anything, and is tried where others leave something over. */
  readonly lastly?: boolean;
  /** Faults of the ring or of all its readings. */
  readonly tried?: (around: Around) => readonly Tried<S>[];
  /** Faults of a point that reads higher than expected. */
  readonly high?: (point: number) => readonly Fault<S>[];
  /** Faults of a point with open readings, commonest first. */
  readonly openAt?: (point: number, seen: SeenAtPoint) => readonly Fault<S>[];
}
