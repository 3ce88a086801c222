/** The three conductors of a ring final circuit of a single phase. */
export const CONDUCTORS = ["line", "neutral", "cpc"] as const;
export type Conductor = (typeof CONDUCTORS)[number];

/** Two conductors that are read against each other. */
export const PAIRS = ["line-neutral", "line-cpc", "neutral-cpc"] as const;
export type Pair = (typeof PAIRS)[number];

/** The conductors of a pair, by their place in {@link CONDUCTORS}. */
export const OF_PAIR: Readonly<Record<Pair, readonly [number, number]>> = Object.freeze({
  "line-neutral": [0, 1],
  "line-cpc": [0, 2],
  "neutral-cpc": [1, 2],
});

/**
 * What may be true of the ring as a whole. Legs are numbered from 0, from the board to the first point, up to the number
 * of points, from the last point back to the board.
 */
export type RingState =
  | { readonly kind: "sound" }
  /** Conductors that end in one leg. */
  | { readonly kind: "open"; readonly conductors: readonly Conductor[]; readonly leg: number }
  /** A joint of some resistance in a conductor of a leg. */
  | { readonly kind: "joint"; readonly conductor: Conductor; readonly leg: number }
  /** A cable of all three conductors from one place of the ring to another. */
  | { readonly kind: "interconnection" }
  /** Two conductors change places within a leg, so that neither closes upon itself. */
  | { readonly kind: "crossed-in-leg"; readonly pair: Pair; readonly leg: number }
  /** The two ends at the board belong to two different rings. */
  | { readonly kind: "crossed-rings" }
  /** The leads were not nulled before these readings. */
  | { readonly kind: "leads-not-nulled"; readonly readings: "all" | "r1" | "rn" | "r2" }
  /** The cross-connection was made between conductors of the same end instead of opposite ends. */
  | { readonly kind: "same-ends-joined"; readonly pairs: readonly Pair[] };

/** What may be true at one point beside it. Points are numbered from 0. */
export type PointState =
  /** The point hangs on a spur; how long is fitted. */
  | { readonly kind: "spur"; readonly point: number }
  /** A connection at the point, beside the ring, of some resistance. */
  | { readonly kind: "terminal"; readonly point: number; readonly conductor: Conductor }
  /** Two conductors at each other's terminals; the ring passes through. */
  | { readonly kind: "swapped"; readonly point: number; readonly pair: Pair }
  /** A conductor not connected to its terminal; the ring passes through. */
  | { readonly kind: "off"; readonly point: number; readonly conductor: Conductor };

/** One explanation: the state of the ring and of any points that need their own. */
export interface Hypothesis {
  readonly ring: RingState;
  /** Size of the protective conductor, mm², where it is not the one written down. */
  readonly cpc?: number;
  readonly points: readonly PointState[];
}

/** How the ends at the board stand when a reading is taken. */
export type Arrangement =
  /** Ends apart, each conductor read from end to end. */
  | "ends-apart"
  /** Each conductor's one end joined to the other conductor's opposite end. */
  | "cross-connected"
  /** The two conductors joined at the outgoing end only, so that the ring is read as a radial. */
  | "joined-at-one-end";

/** One reading: how the ends stand, between which conductors, and at which point; −1 stands for the ends at the board. */
export interface Asked {
  readonly arrangement: Arrangement;
  readonly pair: Pair;
  /** The terminals at the point that are read, where they are not those of the conductors joined. */
  readonly terminals?: Pair;
  /** The conductor, for a reading end to end. */
  readonly conductor?: Conductor;
  readonly point: number;
}
