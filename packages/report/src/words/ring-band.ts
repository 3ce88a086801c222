export type Conductor = "line" | "neutral" | "cpc";
export type Pair = "line-neutral" | "line-cpc" | "neutral-cpc";

/** A figure with the band in which it lies with a probability of about 90 %. */
export interface RingBandData {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** A place of a ring from the outgoing end on, by parts of its length and, where known, in m. Leg 0 leads to the first point. */
export interface RingPlaceData {
  readonly part: RingBandData;
  readonly metres: RingBandData | undefined;
  readonly legs: readonly number[];
}
