import type { Accuracy } from "@good-grounds/core";
import type { Asked } from "./asked.ts";

/** A reading as plain numbers, in Ω. */
export interface RingReading {
  readonly shown: number;
  /** One of the last digit shown. */
  readonly resolution: number;
  /** `above` for a display beyond the end of its range, such as ">99.9 Ω"; `below` for one such as "<0.01 Ω". */
  readonly bound: "exact" | "above" | "below";
  /** The meter's accuracy; null where it is not stated. */
  readonly accuracy: Pick<Accuracy, "ofReading" | "digits"> | null;
}

/** A point of the ring with its cross-connected readings; a reading left out was not taken. */
export interface RingPointReadings {
  readonly name: string;
  readonly lineNeutral?: RingReading;
  readonly lineCpc?: RingReading;
  /** Distance from the board along the outgoing leg, where it is known, m. */
  readonly metres?: number;
}

/** A figure with its standard deviation, both relative to nothing: Ω/m, m or a ratio. */
export interface Uncertain {
  readonly value: number;
  readonly deviation: number;
}

/** What is known of a ring, as plain numbers. */
export interface RingInput {
  readonly r1: RingReading;
  readonly rn: RingReading;
  readonly r2: RingReading;
  readonly points: readonly RingPointReadings[];
  /** Whether the points stand in their order round the ring, from the outgoing leg on. */
  readonly orderKnown: boolean;
  /** Whether there is another ring whose ends may have been taken for this one's; left out where that is not known. */
  readonly otherRing?: boolean;
  /** Resistance per metre of the line conductor at the temperature of the test, Ω/m. Left out: places in parts of the ring. */
  readonly linePerMetre?: Uncertain;
  /** Resistance of the neutral and of the cpc over that of the line conductor. Left out: hardly anything is known of it. */
  readonly neutralRatio?: Uncertain;
  readonly cpcRatio?: Uncertain;
  /** The same for other sizes that the cpc may have in truth, mm². */
  readonly cpcSizes?: readonly { readonly size: number; readonly ratio: Uncertain }[];
  /** Length of the ring from board to board, m. */
  readonly length?: Uncertain;
  /** The other metal that the conductors may be of in truth, and its resistance over that of the one written down. */
  readonly otherMetal?: { readonly metal: "copper" | "aluminium"; readonly ratio: number };
  /** Whether the loop test finds an earth at the points, whatever carries it. */
  readonly earthedAtPoints?: boolean;
  /** What stands in the rows of other circuits, from which this one's may be. */
  readonly otherRows?: readonly RingRow[];
  /** Explanations, by their id, that something seen makes likelier, and how many times. */
  readonly seen?: ReadonlyMap<string, number>;
}

/** The readings end to end of another circuit, and what is known of it where it is a ring. */
export interface RingRow {
  readonly name: string;
  readonly r1: RingReading;
  readonly rn: RingReading;
  readonly r2: RingReading;
  readonly ring?: RingInput;
}

/** A reading made ready for the fit. */
export interface Observed {
  readonly asked: Asked;
  readonly shown: number;
  /** `void`: the reading says nothing of this ring. */
  readonly bound: RingReading["bound"] | "void";
  /** Standard deviation of this reading's own error, Ω. */
  readonly deviation: number;
  readonly reading: RingReading;
}

/** The readings in the order of the test: ends, then line to neutral, then line to cpc. */
export function observedOf({ r1, rn, r2, points }: RingInput): readonly Observed[] {
  const ends = (
    [
      ["line", r1],
      ["neutral", rn],
      ["cpc", r2],
    ] as const
  ).map(([conductor, reading]) =>
    observed({ arrangement: "ends-apart", pair: "line-neutral", conductor, point: -1 }, reading),
  );
  const crossed = (pair: "line-neutral" | "line-cpc", key: "lineNeutral" | "lineCpc") =>
    points.flatMap((point, i) => {
      const reading = point[key];
      return reading === undefined ? [] : [observed({ arrangement: "cross-connected", pair, point: i }, reading)];
    });
  return [...ends, ...crossed("line-neutral", "lineNeutral"), ...crossed("line-cpc", "lineCpc")];
}

/** A continuity reading of more than this is as good as open, Ω. */
const AS_GOOD_AS_OPEN = 1000;

export function observed(asked: Asked, reading: RingReading): Observed {
  const { shown } = reading;
  const bound = shown > AS_GOOD_AS_OPEN && reading.bound === "exact" ? "above" : reading.bound;
  return { asked, shown: bound === "below" ? shown / 2 : shown, bound, deviation: ownDeviation(reading), reading };
}

/** Contact of the probes from one reading to the next, Ω, standard deviation. */
const CONTACT = 0.004;

/** Where no accuracy is stated: a reading's own error in parts of it and in digits, a habit of the trade's instruments. */
const FALLBACK = Object.freeze({ ofReading: 0.02, digits: 3 });

/** Where no accuracy is stated: the error common to all readings lies within this part of them, BS EN 61557-4. */
const CEILING = 0.3;

/**
 * Standard deviation of a reading's own error, Ω. The accuracy bounds the whole error; half of it is left to what is
 * common to all readings of one meter and half to each reading, both as rectangular distributions. The rounding of the
 * display and the contact of the probes come on top.
 */
export function ownDeviation({ shown, resolution, bound, accuracy }: RingReading): number {
  const { ofReading, digits } = accuracy ?? FALLBACK;
  const own = (ofReading * Math.abs(shown) + digits * resolution) / 2 / Math.sqrt(3);
  const open = bound === "below" ? shown / 2 : 0;
  return Math.hypot(own, resolution / Math.sqrt(12), CONTACT, open);
}

/** Standard deviations of the errors common to all readings: scale, and offset in Ω (what is left of the null included). */
export function commonDeviations({ r1, rn, r2 }: RingInput): { readonly scale: number; readonly offset: number } {
  const worst = [r1, rn, r2].map(({ resolution, accuracy }) => ({
    scale: (accuracy === null ? CEILING : accuracy.ofReading / 2) / Math.sqrt(3),
    offset: ((accuracy ?? FALLBACK).digits * resolution) / 2 / Math.sqrt(3),
  }));
  return {
    scale: Math.max(1e-4, ...worst.map((one) => one.scale)),
    offset: Math.max(1e-4, ...worst.map((one) => one.offset)),
  };
}
