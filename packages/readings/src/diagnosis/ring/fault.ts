import type { Observed, Uncertain } from "./readings.ts";
import type { RingModel } from "./ring-model.ts";

/** A size that is fitted: what is known of it before anything is read, and where it means something. */
export interface Size extends Uncertain {
  readonly low: number;
  readonly high: number;
}

/** What is known of the conductors before anything is read: Ω of the line end to end, and ratios to it. */
export interface Known {
  readonly line: Uncertain;
  readonly neutralRatio: Uncertain;
  readonly cpcRatio: Uncertain;
}

/** Readings as an explanation takes them, with what that costs beside their misfit, as −2 ln. */
export interface Taken {
  readonly observed: readonly Observed[];
  readonly cost: number;
}

/** What an explanation says in the end, by its kind; the points are numbered. */
export interface Said {
  readonly kind: string;
  readonly point?: number;
}

/** A fitted figure and the band in which it lies with a probability of about 90 %. */
export interface Banded {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** A place of the ring, from the board along the outgoing leg. */
export interface RingPlace {
  /** By parts of the ring's length, 0 to 1. */
  readonly part: Banded;
  /** In metres, where the conductor's resistance per metre is known. */
  readonly metres: Banded | undefined;
  /** Legs the place may lie in, most probable first: leg 0 leads from the board to the first point. */
  readonly legs: readonly number[];
}

/** What a fault can say of itself once it is fitted. */
export interface Fitted {
  /** Its sizes, in their order, times a unit. */
  readonly band: (size: number, unit?: number) => Banded;
  /** The place of its leg; undefined where the readings hold none. */
  readonly place: RingPlace | undefined;
  /** A place as a part of the ring; undefined where the order of the points is not known. */
  readonly placeAt: (part: Banded) => RingPlace | undefined;
  /** Length of the ring, m, and end-to-end resistance of its line, Ω. */
  readonly metres: number | undefined;
  readonly line: number;
  /** The conductors' ratio, the cpc over the line. */
  readonly cpcRatio: Banded;
}

/**
 * One thing that may be so of a ring, of a point or of the way the readings were taken or written down. An explanation of
 * a ring's readings is a list of them; none for a sound ring.
 */
export interface Fault<S extends Said = Said> {
  /** What it is, apart from the leg it lies in and its sizes. Explanations of the same keys are one. */
  readonly key: string;
  /** How common it is before anything is read, against a sound ring taken as 1. */
  readonly common: number;
  /** The leg it lies in; the search tries all of them. */
  readonly leg?: number;
  /** The same in another leg. */
  readonly inLeg?: (leg: number) => Fault<S>;
  /** The point it is at. */
  readonly point?: number;
  readonly sizes: readonly Size[];
  /** It is in the way the readings were taken or written: a reading taken anew has nothing of it. */
  readonly ofMethod?: boolean;
  /** What it does to the ring. Its sizes are at `values[at]` and after; `cut` is the place of its leg. */
  readonly bears?: (model: RingModel, values: Float64Array, at: number, cut: number) => void;
  /** Keeps its sizes in order among themselves. */
  readonly hold?: (values: Float64Array, at: number) => void;
  /** What it takes for known of the conductors. What it leaves wider than it was is paid for. */
  readonly supposes?: (known: Known) => Known;
  /** What it makes of the readings as written. */
  readonly takes?: (observed: readonly Observed[]) => Taken;
  readonly says: (fitted: Fitted) => S;
}

/** One explanation of all readings: the faults that are there. Empty: a sound ring. */
export interface Hypothesis {
  readonly faults: readonly Fault[];
}
