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

/** How the ends at the board stand when a reading is taken. */
type Arrangement =
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
