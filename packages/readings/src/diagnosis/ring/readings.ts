import { type Accuracy, measured, TERM, type Written } from "@good-grounds/core";
import { doubtedReading } from "@good-grounds/measurement";
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
  /** What the leads may have added either way since they were nulled, Ω, where that was recorded. */
  readonly leads?: number;
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
  /** Sizes that line and neutral may have in truth, mm², with the resistance over that of the size written down. */
  readonly lineSizes?: readonly { readonly size: number; readonly times: number }[];
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

/** A reading's errors as the one model of readings has them. */
function errorsOf({ shown, resolution, bound, accuracy, leads }: RingReading) {
  const written = { text: "", value: shown, resolution, bound } as Written<"ohm">;
  const stated = accuracy === null ? null : { text: "", ...accuracy };
  const taken = leads === undefined ? {} : { leads: { since: "", half: leads } };
  const { errors } = doubtedReading(measured(TERM.ringLine, written, [], stated, taken));
  let [own, gain, offset] = [0, 0, 0];
  for (const [cause, deviation] of errors) {
    if (typeof cause !== "string") own = Math.hypot(own, deviation);
    else if (cause.startsWith("gain ")) gain += deviation;
    else offset += deviation;
  }
  return { own, gain, offset };
}

/** Standard deviation of a reading's own error, Ω; a display that ends as a bound from above may be anything below it. */
export function ownDeviation(reading: RingReading): number {
  return Math.hypot(errorsOf(reading).own, reading.bound === "below" ? reading.shown / 2 : 0);
}

/** Standard deviations of the errors common to all readings: scale, and offset in Ω (what is left of the null). */
export function commonDeviations({ r1, rn, r2 }: RingInput): { readonly scale: number; readonly offset: number } {
  const common = [r1, rn, r2].map((reading) => ({ ...errorsOf({ ...reading, shown: 1, bound: "exact" }) }));
  return {
    scale: Math.max(1e-4, ...common.map(({ gain }) => gain)),
    offset: Math.max(1e-4, ...common.map(({ offset }) => offset)),
  };
}
