/** One reading at a point of a ring beside what the explanation leads to expect, Ω; infinite for open, NaN where not taken. */
export interface RingDrawingReading {
  readonly shown: number;
  readonly expected: number;
  /** Standard deviation of the reading's error, Ω. */
  readonly deviation: number;
}

/** A point of the ring in its order. */
export interface RingDrawingPoint {
  readonly name: string;
  /** Place by parts of the ring's length, 0 to 1. */
  readonly at: number;
  readonly lineNeutral: RingDrawingReading;
  readonly lineCpc: RingDrawingReading;
}

/** A mark on the ring. */
export type RingDrawingMark =
  /** A break, a joint or a crossing that lies somewhere between two places. */
  | {
      readonly kind: "break" | "joint" | "crossed";
      readonly low: number;
      readonly value: number;
      readonly high: number;
      readonly label: string;
    }
  /** A cable from one place to another. */
  | { readonly kind: "bridge"; readonly from: number; readonly to: number; readonly label: string }
  /** Something at one point, by its number from 0: a spur, or connections that are not right. */
  | { readonly kind: "spur" | "point"; readonly point: number; readonly label: string };

/** A ring with its readings and what explains them. */
export interface RingDrawing {
  readonly circuit: string;
  readonly points: readonly RingDrawingPoint[];
  readonly marks: readonly RingDrawingMark[];
  /** The explanation in a few words, and how sure it is. */
  readonly words: string;
  /** Length of the ring, m; NaN where it is not known. */
  readonly metres: number;
}
