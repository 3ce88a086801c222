import type { ExpectedReading, Ground, Path } from "@good-grounds/core";
import type { RingFaultData } from "../locales/ring-faults-en.ts";
import type { Conductor, Pair } from "./ring-band.ts";

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
