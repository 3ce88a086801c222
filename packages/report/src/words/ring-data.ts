import type { ExpectedReading, Ground, Path } from "@good-grounds/core";

type Conductor = "line" | "neutral" | "cpc";
type Pair = "line-neutral" | "line-cpc" | "neutral-cpc";

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

/** A fault of a ring, or something harmless, with its sizes in Ω or m. Points are numbered from 0. */
export type RingFaultData =
  | { readonly kind: "open"; readonly conductors: readonly Conductor[]; readonly place: RingPlaceData | undefined }
  | {
      readonly kind: "joint";
      readonly conductor: Conductor;
      readonly ohms: RingBandData;
      readonly place: RingPlaceData | undefined;
    }
  | {
      readonly kind: "interconnection";
      readonly from: RingPlaceData | undefined;
      readonly to: RingPlaceData | undefined;
      readonly metres: RingBandData | undefined;
    }
  | { readonly kind: "crossed-in-leg"; readonly pair: Pair; readonly place: RingPlaceData | undefined }
  | { readonly kind: "crossed-rings" }
  | { readonly kind: "leads-not-nulled"; readonly readings: "all" | "r1" | "rn" | "r2"; readonly ohms: RingBandData }
  | { readonly kind: "same-ends-joined"; readonly pairs: readonly Pair[] }
  /** The protective conductor has this size, mm², and not the one written down. */
  | { readonly kind: "other-cpc"; readonly size: number }
  | {
      readonly kind: "spur";
      readonly point: number;
      readonly metres: RingBandData | undefined;
      readonly ohms: RingBandData;
    }
  | { readonly kind: "terminal"; readonly point: number; readonly conductor: Conductor; readonly ohms: RingBandData }
  | { readonly kind: "swapped"; readonly point: number; readonly pair: Pair }
  | { readonly kind: "off"; readonly point: number; readonly conductor: Conductor };

/** A reading of a ring: how the ends at the board stand, between which conductors, at which point; −1 is the board. */
export interface RingAskedData {
  readonly arrangement: "ends-apart" | "cross-connected" | "joined-at-one-end";
  readonly pair: Pair;
  readonly terminals?: Pair;
  readonly conductor?: Conductor;
  readonly point: number;
}

interface Drawn {
  readonly shown: number;
  readonly expected: number;
  readonly deviation: number;
}

/** What explains the readings of a ring final circuit, as it is put into words and drawn. */
export interface RingData {
  readonly circuit: Path;
  readonly designation: string;
  readonly points: readonly {
    readonly name: string;
    readonly at: number;
    readonly lineNeutral: Drawn;
    readonly lineCpc: Drawn;
  }[];
  readonly metres: number | undefined;
  /** Most probable first; without faults: a sound ring. */
  readonly stories: readonly {
    readonly faults: readonly RingFaultData[];
    readonly probability: number;
    readonly innocent: boolean;
    readonly would: readonly ExpectedReading[];
  }[];
  readonly tied: number;
  readonly accounts: boolean;
  readonly next:
    | {
        readonly asked: RingAskedData;
        /** Ω under the two that it separates; infinite for open. */
        readonly expected: readonly [number, number];
        readonly separates: "explanations" | "places";
      }
    | undefined;
  readonly readings: readonly (ExpectedReading & {
    readonly asked: RingAskedData;
    readonly shown: string;
    readonly measured: number;
  })[];
  readonly odds: number;
  readonly clear: boolean;
  readonly formula: string;
  readonly grounds: readonly Ground[];
}
