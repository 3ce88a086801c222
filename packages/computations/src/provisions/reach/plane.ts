import type { Spot } from "./scene.ts";

/** A convex piece of the plane by its corners; one corner is a point, two are a line. */
export type Piece = readonly Spot[];
/** A straight line between two places in plan. */
export type Line = readonly [Spot, Spot];

export function lengthOf(a: Spot, b: Spot): number {
  return Math.sqrt((b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2);
}

/** Twice the signed area of a triangle: positive where `c` lies to the left of the way from `a` to `b`. */
export function turn(a: Spot, b: Spot, c: Spot): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}

/** Twice the signed area of a polygon: positive where its corners run anticlockwise. */
export function doubleArea(corners: readonly Spot[]): number {
  const [first] = corners;
  if (first === undefined) return 0;
  let sum = 0;
  for (const [a, b] of sidesOf(corners)) sum += turn(first, a, b);
  return sum;
}

/** The sides of a polygon, in order. A point has one side of no length. */
export function sidesOf(corners: readonly Spot[]): readonly Line[] {
  if (corners.length === 2) return [[corners[0] as Spot, corners[1] as Spot]];
  return corners.map((corner, i) => [corner, corners[(i + 1) % corners.length] as Spot] as const);
}

export function along([a, b]: Line, part: number): Spot {
  return [a[0] + (b[0] - a[0]) * part, a[1] + (b[1] - a[1]) * part];
}

/** The place on a line nearest to a spot, as a part of the line's length, 0 to 1. */
export function footOn([a, b]: Line, spot: Spot): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const square = dx * dx + dy * dy;
  if (square === 0) return 0;
  return Math.min(1, Math.max(0, ((spot[0] - a[0]) * dx + (spot[1] - a[1]) * dy) / square));
}

export function toLine(line: Line, spot: Spot): number {
  return lengthOf(along(line, footOn(line, spot)), spot);
}

/** Whether a spot lies in a convex piece whose corners run anticlockwise, its border included. */
export function isWithin(piece: Piece, spot: Spot): boolean {
  if (piece.length < 3) return false;
  for (let i = 0; i < piece.length; i++) {
    if (turn(piece[i] as Spot, piece[(i + 1) % piece.length] as Spot, spot) < 0) return false;
  }
  return true;
}

/** Distance of a spot from a convex piece, m; 0 in it. */
export function toPiece(piece: Piece, spot: Spot): number {
  if (isWithin(piece, spot)) return 0;
  let least = Number.POSITIVE_INFINITY;
  const sides = piece.length === 2 ? 1 : piece.length;
  for (let i = 0; i < sides; i++) {
    const [a, b] = [piece[i] as Spot, piece[(i + 1) % piece.length] as Spot];
    least = Math.min(least, toLine([a, b], spot));
  }
  return least;
}

/** Distance between two lines, m; 0 where they meet. */
function lineToLine(one: Line, other: Line): number {
  if (doCross(one, other)) return 0;
  return Math.min(toLine(one, other[0]), toLine(one, other[1]), toLine(other, one[0]), toLine(other, one[1]));
}

/** Distance between two convex pieces, m; 0 where they meet. */
export function pieceToPiece(one: Piece, other: Piece): number {
  if (isWithin(one, other[0] as Spot) || isWithin(other, one[0] as Spot)) return 0;
  let least = Number.POSITIVE_INFINITY;
  for (const a of sidesOf(one)) for (const b of sidesOf(other)) least = Math.min(least, lineToLine(a, b));
  return least;
}

/** Whether two lines cross, each having the ends of the other on both its sides. Touching is not crossing. */
export function doCross([a, b]: Line, [c, d]: Line): boolean {
  const [ca, cb] = [turn(c, d, a), turn(c, d, b)];
  if (!((ca > 0 && cb < 0) || (ca < 0 && cb > 0))) return false;
  const [ac, ad] = [turn(a, b, c), turn(a, b, d)];
  return (ac > 0 && ad < 0) || (ac < 0 && ad > 0);
}

/** Where the straight lines through two lines meet, as a part of the length of each; undefined where they are parallel. */
export function meeting([a, b]: Line, [c, d]: Line): readonly [number, number] | undefined {
  const [ux, uy, vx, vy] = [b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]];
  const cross = ux * vy - uy * vx;
  if (Math.abs(cross) <= 1e-12 * Math.sqrt((ux * ux + uy * uy) * (vx * vx + vy * vy))) return undefined;
  const [wx, wy] = [c[0] - a[0], c[1] - a[1]];
  return [(wx * vy - wy * vx) / cross, (wx * uy - wy * ux) / cross];
}

/** The middle of a piece's corners, which lies in it. */
export function middleOf(piece: Piece): Spot {
  let [x, y] = [0, 0];
  for (const corner of piece) {
    x += corner[0];
    y += corner[1];
  }
  return [x / piece.length, y / piece.length];
}
