/** Where the parts of the drawing of a ring stand. */
export const WIDTH = 460;
export const EDGE = 46;
const SPAN = WIDTH - 2 * EDGE;
export const HEADING = 16;
/** The ring stands above the strip of readings; both share one scale of length. */
export const RING_TOP = 74;
export const RING_FOOT = 110;
export const NAMES = 127;
/** The board closes the ring below the names. */
export const CLOSING = 139;
export const STRIP_TOP = 168;
export const STRIP_FOOT = 260;
export const HEIGHT = 294;

/** A place along the ring as a part of its length, 0 where it is not known. */
export function within(at: number): number {
  return Number.isFinite(at) ? Math.min(1, Math.max(0, at)) : 0;
}

/** Where a place along the ring is drawn. */
export function x(at: number): number {
  return EDGE + within(at) * SPAN;
}
