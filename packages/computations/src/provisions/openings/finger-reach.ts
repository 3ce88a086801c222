import { JOINTED_FINGER } from "@good-grounds/tables";

/** An opening and a place behind it, mm. `narrow` and `wide` are the two widths of the opening, `wide` at least `narrow`. */
export interface BehindOpening {
  readonly narrow: number;
  readonly wide: number;
  /** Sideways from the nearest edge of the opening; 0 behind the opening. */
  readonly offset: number;
}

/** How deep a probe comes at an offset, mm: what it reaches for certain, and what it cannot pass. */
export interface ProbeReach {
  readonly certain: number;
  readonly possible: number;
}

const { diameter, links, stopFace, taper } = JOINTED_FINGER;
const RADIUS = diameter / 2;
const [BASE, MIDDLE, TIP] = links;
const BENT = MIDDLE + TIP;
const WHOLE = BASE + BENT;
/** Tilts that are tried, degrees. */
const STEP = 0.5;
const SLACK = 1e-9;

/** Whether something as wide as `size` passes a width; what fits exactly passes. */
export function passes(width: number, size: number): boolean {
  return width >= size * (1 - SLACK);
}

/**
 * Where the stop face passes, a hand follows and nothing limits the depth. It passes straight, or turned in its plane:
 * a rectangle p × q in a shorter one a × b passes where b ≥ (2pqa + (p² − q²)·√(p² + q² − a²)) ÷ (p² + q²).
 */
function stopFacePasses({ narrow, wide }: BehindOpening): boolean {
  const [long, short] = stopFace;
  if (passes(wide, long)) return passes(narrow, short);
  const squares = long ** 2 + short ** 2;
  const turned = 2 * long * short * wide + (long ** 2 - short ** 2) * Math.sqrt(squares - wide ** 2);
  return passes(narrow, turned / squares);
}

/**
 * Depth in mm that the jointed finger reaches behind a thin wall. Straight behind the opening it is the length of the
 * finger. Sideways, `certain` is the finger pushed in square to the wall, hard by the edge, up to its stop face and then
 * bent: 20 + √(60² − (s + 6)²). `possible` lets the base lean as far as the diagonal of the opening allows,
 * leaves out that the stop face strikes the wall, and lets the bent part turn freely. A real finger lies between. Where
 * the finger does not enter, its narrowing end comes in by no more than its taper. A thick wall, a rim or something in
 * the way only shortens all of this.
 */
export function fingerReach(behind: BehindOpening): ProbeReach {
  const { narrow, offset } = behind;
  if (stopFacePasses(behind)) return { certain: Number.POSITIVE_INFINITY, possible: Number.POSITIVE_INFINITY };
  if (!passes(narrow, diameter)) return endReach(narrow, offset);
  if (offset <= 0) return { certain: WHOLE, possible: WHOLE };
  const certain = offset + RADIUS <= BENT ? BASE + chord(offset + RADIUS) : 0;
  return { certain, possible: Math.max(certain, leaningReach(behind)) };
}

function leaningReach({ narrow, wide, offset }: BehindOpening): number {
  const most = Math.acos(Math.min(1, diameter / Math.hypot(narrow, wide))) * (180 / Math.PI);
  let deepest = 0;
  // The last step goes beyond the greatest tilt rather than short of it: the safe side, and wider is never less.
  for (let degrees = 0; degrees < most + STEP; degrees += STEP) {
    const tilt = Math.min(degrees, 89) * (Math.PI / 180);
    const joint = BASE * Math.sin(tilt) - RADIUS / Math.cos(tilt);
    const aside = Math.max(0, offset - joint);
    if (aside <= BENT) deepest = Math.max(deepest, BASE * Math.cos(tilt) + chord(aside));
  }
  return deepest;
}

/** What the end of the finger does in an opening it does not pass: as a ball for certain, at most as a point. */
function endReach(narrow: number, offset: number): ProbeReach {
  const point = taper * (narrow / diameter);
  const ball = RADIUS - Math.sqrt(RADIUS ** 2 - Math.min(RADIUS, narrow / 2) ** 2);
  if (offset <= 0) return { certain: ball, possible: point };
  return { certain: 0, possible: offset < point ? Math.sqrt(point ** 2 - offset ** 2) : 0 };
}

/** Depth left of the bent part when it goes `aside` sideways. */
function chord(aside: number): number {
  return Math.sqrt(Math.max(0, BENT ** 2 - aside ** 2));
}
