export interface Pictures {
  /** The installation from the origin outwards, one SVG for each part. */
  readonly diagram: readonly string[];
  /** Time-current drawings of circuits whose disconnection or fault energy is in doubt. */
  readonly curves: readonly { readonly path: string; readonly name: string; readonly svg: string }[];
  /** Rings with what explains their readings, marked where it lies and in sentences. */
  readonly rings: readonly RingPicture[];
  /** What each sample of the extent leaves possible, in plain words. */
  readonly samples: readonly { readonly what: string; readonly seen: string; readonly leaves: string }[];
}

/** One kind of reading over the years. */
export interface TrendView {
  readonly name: string;
  readonly words: string;
  readonly svg: string;
}

export interface RingPicture {
  readonly path: string;
  readonly name: string;
  readonly svg: string;
  readonly words: readonly string[];
}
