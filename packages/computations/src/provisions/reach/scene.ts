/** A place in plan, metres. */
export type Spot = readonly [x: number, y: number];
/** A place in space, metres; z is the height. */
export type Place = readonly [x: number, y: number, z: number];

/** A horizontal surface on which people stand or move about. */
export interface StandingSurface {
  readonly name: string;
  /** Height of the surface, m. */
  readonly height: number;
  /** Corners in order round it, either way; the last joins the first. Plan, m. */
  readonly outline: readonly Spot[];
  /** Whether a finger cannot pass through it; a grating is not solid, and is reached through. */
  readonly solid: boolean;
  /**
   * Where people come on to it. Only what can be walked to from there, without passing a barrier that keeps people back,
   * counts as occupied. Empty: all of it counts.
   */
  readonly entries: readonly Spot[];
}

/** A point, a straight piece of conductor, or a box along the axes, m. */
export type Shape =
  | { readonly kind: "point"; readonly at: Place }
  | { readonly kind: "segment"; readonly from: Place; readonly to: Place }
  | { readonly kind: "box"; readonly low: Place; readonly high: Place };

/** A bare part that can be touched, live or not. */
export interface ReachPart {
  readonly name: string;
  /** Name of its potential, such as L1, N or earth; two parts of one name are no pair. */
  readonly potential: string;
  readonly live: boolean;
  readonly shape: Shape;
}

/** An opening in a barrier, m: along it from its start, and in height. */
export interface Opening {
  readonly from: number;
  readonly to: number;
  readonly bottom: number;
  readonly top: number;
}

/** An upright rectangle: wall, screen, mesh, rail. */
export interface Barrier {
  readonly name: string;
  readonly from: Spot;
  readonly to: Spot;
  /** Height of its lower and upper border, m; "structure" where it closes on to ground, floor or ceiling without a gap. */
  readonly bottom: number | "structure";
  readonly top: number | "structure";
  /** Whether it gives IP2X or IPXXB, or better. A mesh or rail that gives less is an obstacle. */
  readonly protection: "ip2x" | "less";
  /** Whether people stay on their side: not climbed over, not passed under, not lifted away. */
  readonly keepsBack: boolean;
  /** Whether people can stand on its top, which makes the top a standing place. */
  readonly platform: boolean;
  readonly openings: readonly Opening[];
}

/** Who comes where the parts are: skilled persons or those they control and supervise, or ordinary persons. */
export const ATTENDANCES = ["skilled-control", "ordinary"] as const;
export type Attendance = (typeof ATTENDANCES)[number];

/** What stands around, all in metres. Nothing is defaulted: `null` is "not known". */
export interface ReachScene {
  /** Each coordinate may be off by this much, m. */
  readonly tolerance: number;
  /** Length of the longest thing handled there, m; 0 where nothing long or bulky is. */
  readonly objects: number | null;
  readonly attendance: Attendance | null;
  readonly surfaces: readonly StandingSurface[];
  readonly parts: readonly ReachPart[];
  readonly barriers: readonly Barrier[];
}
