import { doubleArea, footOn, isWithin, lengthOf, type Piece, sidesOf, toLine, turn } from "./plane.ts";
import type { Spot } from "./scene.ts";

/** Corners and sides nearer than this are the same place, m. */
const SAME = 1e-6;

/** What makes a list of corners no outline of a surface; undefined where nothing does. */
export function outlineFault(corners: readonly Spot[]): "repeated" | "crossing" | "no-area" | undefined {
  const sides = sidesOf(corners);
  if (sides.some(([a, b]) => lengthOf(a, b) < SAME)) return "repeated";
  for (let i = 0; i < sides.length; i++) {
    for (let j = i + 1; j < sides.length; j++) {
      const [one, other] = [sides[i], sides[j]];
      if (one === undefined || other === undefined) continue;
      const next = j === i + 1;
      if (next || (i === 0 && j === sides.length - 1)) {
        // Neighbours share a corner; they must not lie on each other.
        const [far, line] = next ? [other[1], one] : [other[0], one];
        if (toLine(line, far) < SAME || toLine(other, next ? one[0] : one[1]) < SAME) return "crossing";
        continue;
      }
      if (touch(one, other)) return "crossing";
    }
  }
  return Math.abs(doubleArea(corners)) < SAME ? "no-area" : undefined;
}

function touch(one: readonly [Spot, Spot], other: readonly [Spot, Spot]): boolean {
  const [a, b] = one;
  const [c, d] = other;
  const [ca, cb, ac, ad] = [turn(c, d, a), turn(c, d, b), turn(a, b, c), turn(a, b, d)];
  if (ca * cb < 0 && ac * ad < 0) return true;
  return [toLine(other, a), toLine(other, b), toLine(one, c), toLine(one, d)].some((gap) => gap < SAME);
}

/** The corners anticlockwise. */
export function anticlockwise(corners: readonly Spot[]): readonly Spot[] {
  return doubleArea(corners) < 0 ? [...corners].reverse() : corners;
}

/** An outline cut into convex pieces: itself where it is convex, triangles otherwise. Corners anticlockwise. */
export function convexPieces(corners: readonly Spot[]): readonly Piece[] {
  const ring = [...anticlockwise(corners)];
  const convex = ring.every((_, i) => turnAt(ring, i) >= 0);
  if (convex) return [ring];
  const pieces: Piece[] = [];
  while (ring.length > 3) {
    const ear = findEar(ring);
    pieces.push([at(ring, ear - 1), at(ring, ear), at(ring, ear + 1)]);
    ring.splice(ear, 1);
  }
  pieces.push(ring);
  return pieces.filter((piece) => doubleArea(piece) > 0);
}

function findEar(ring: readonly Spot[]): number {
  let flat = 0;
  for (let i = 0; i < ring.length; i++) {
    const bend = turnAt(ring, i);
    if (bend < 0) continue;
    const [a, b, c] = [at(ring, i - 1), at(ring, i), at(ring, i + 1)];
    if (bend === 0) flat = i;
    const clear = ring.every(
      (other) => other === a || other === b || other === c || !isWithin([a, b, c], other) || bend === 0,
    );
    // A flat corner is cut off where the way really runs on; its triangle has no area and is dropped.
    if (clear && (bend > 0 || footOn([a, c], b) > 0)) return i;
  }
  return flat;
}

function at(ring: readonly Spot[], i: number): Spot {
  return ring[(i + ring.length) % ring.length] as Spot;
}

function turnAt(ring: readonly Spot[], i: number): number {
  return turn(at(ring, i - 1), at(ring, i), at(ring, i + 1));
}
