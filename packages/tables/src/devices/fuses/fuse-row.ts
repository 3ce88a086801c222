import type { Source } from "@good-grounds/core";

/** A point of a fuse's time-current characteristic, with the loop impedance printed for it. */
export interface FuseRow {
  /** Time within which the fuse operates, s. */
  readonly seconds: number;
  /** Rated current, A. */
  readonly rated: number;
  /** Current that operates it within the time, A; null where only the printed impedance is known, and 218.5 ÷ Zs stands for it. */
  readonly operating: number | null;
  /** Limiting impedance as printed (or derived with Cmin), Ω. */
  readonly printedZs: number;
  /** Limiting impedance as an older edition printed it, without Cmin, Ω. */
  readonly printedZs230?: number;
  readonly source: Source;
}
