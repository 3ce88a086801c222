import { along, footOn, isWithin, type Line, lengthOf, meeting, type Piece, sidesOf, toPiece, turn } from "./plane.ts";
import { convexPieces } from "./polygon.ts";
import { FIGURES, GAP } from "./reach-figures.ts";
import type { Barrier, Spot, StandingSurface } from "./scene.ts";

/** Nearer than this, lines lie on each other, m. */
const SAME = 1e-7;
/** No surface is cut into more pieces than this; walls that would cut further keep nobody back. */
const MOST_PIECES = 120;

/**
 * The convex pieces of a surface where people stand: those that can be walked to from its entries without passing a
 * barrier that keeps people back and stands in the height of the people (417.3.2). A barrier that can be walked round
 * keeps nobody back. Without entries, all of the surface.
 */
export function occupied(surface: StandingSurface, barriers: readonly Barrier[]): readonly Piece[] {
  const whole = convexPieces(surface.outline);
  if (surface.entries.length === 0) return whole;
  const walls = barriers.filter((one) => stopsPeople(one, surface.height)).map(({ from, to }): Line => [from, to]);
  if (walls.length === 0) return whole;
  let pieces = whole;
  for (const wall of walls) {
    if (pieces.length >= MOST_PIECES) break;
    pieces = pieces.flatMap((piece) => (passesThrough(wall, piece) ? cut(piece, wall) : [piece]));
  }
  return walkedTo(pieces, surface.entries, walls);
}

function stopsPeople(barrier: Barrier, height: number): boolean {
  if (!barrier.keepsBack || barrier.platform) return false;
  const below = barrier.bottom === "structure" || barrier.bottom < height + FIGURES.upward.value;
  const above = barrier.top === "structure" || barrier.top > height;
  return below && above;
}

/** Whether some length of the wall lies inside the piece, off its border. */
function passesThrough(wall: Line, piece: Piece): boolean {
  let [from, to] = [0, 1];
  for (const [a, b] of sidesOf(piece)) {
    const size = lengthOf(a, b);
    const [start, end] = [turn(a, b, wall[0]) / size, turn(a, b, wall[1]) / size];
    if (start <= SAME && end <= SAME) return false;
    if (start < SAME) from = Math.max(from, (SAME - start) / (end - start));
    if (end < SAME) to = Math.min(to, (SAME - start) / (end - start));
  }
  return to - from > 0 && (to - from) * lengthOf(wall[0], wall[1]) > SAME;
}

/** A convex piece cut along the straight line through the wall. */
function cut(piece: Piece, [a, b]: Line): readonly Piece[] {
  const [left, right]: [Spot[], Spot[]] = [[], []];
  const size = lengthOf(a, b);
  for (const side of sidesOf(piece)) {
    const [start, end] = [turn(a, b, side[0]) / size, turn(a, b, side[1]) / size];
    if (start >= -SAME) left.push(side[0]);
    if (start <= SAME) right.push(side[0]);
    if ((start > SAME && end < -SAME) || (start < -SAME && end > SAME)) {
      const between = along(side, start / (start - end));
      left.push(between);
      right.push(between);
    }
  }
  return [left, right].filter((half) => half.length > 2);
}

function walkedTo(pieces: readonly Piece[], entries: readonly Spot[], walls: readonly Line[]): readonly Piece[] {
  const reached = new Set(pieces.filter((piece) => entries.some((entry) => toPiece(piece, entry) <= GAP)));
  const waiting = [...reached];
  for (let piece = waiting.pop(); piece !== undefined; piece = waiting.pop()) {
    for (const next of pieces) {
      if (reached.has(next) || !canPass(piece, next, walls)) continue;
      reached.add(next);
      waiting.push(next);
    }
  }
  return [...reached];
}

/** Whether two pieces share some border that no wall covers. */
function canPass(one: Piece, other: Piece, walls: readonly Line[]): boolean {
  return sidesOf(one).some((side) => sidesOf(other).some((border) => isOpen(side, border, walls)));
}

function isOpen(side: Line, border: Line, walls: readonly Line[]): boolean {
  const shared = stretchOn(side, border);
  if (shared === undefined) return false;
  const size = lengthOf(side[0], side[1]);
  const covers = walls
    .map((wall) => stretchOn(side, wall))
    .filter((stretch) => stretch !== undefined)
    .sort((a, b) => a[0] - b[0]);
  let [start] = shared;
  for (const [from, to] of covers) {
    if ((Math.min(from, shared[1]) - start) * size > GAP) return true;
    start = Math.max(start, to);
  }
  return (shared[1] - start) * size > GAP;
}

/** The stretch of a side on which another line lies, as parts of the side's length; undefined where it lies elsewhere. */
function stretchOn(side: Line, [a, b]: Line): readonly [number, number] | undefined {
  const size = lengthOf(side[0], side[1]);
  const off = Math.max(Math.abs(turn(side[0], side[1], a)), Math.abs(turn(side[0], side[1], b))) / size;
  // Cutting moves corners by as much as SAME; ten times that still is no gap.
  if (!(off <= 10 * SAME)) return undefined;
  const ends = [footOn(side, a), footOn(side, b)] as const;
  const [from, to] = [Math.min(...ends), Math.max(...ends)];
  return to > from ? [from, to] : undefined;
}

/** Whether both ends of a barrier and its middle stand on the surface or at its edge. */
export function standsOn(
  surface: Pick<StandingSurface, "outline">,
  { from, to }: Barrier,
  pieces: readonly Piece[],
): boolean {
  const on = (spot: Spot) => pieces.some((piece) => isWithin(piece, spot) || toPiece(piece, spot) <= GAP);
  const cuts =
    surface.outline.length === 0
      ? []
      : sidesOf(surface.outline).flatMap((side) => meeting([from, to], side)?.[0] ?? []);
  const stops = [0, ...cuts.filter((part) => part > 0 && part < 1).sort((a, b) => a - b), 1];
  return stops.every((stop, i) => {
    const next = stops[i + 1] ?? stop;
    return on(along([from, to], stop)) && on(along([from, to], (stop + next) / 2));
  });
}
