import { isNear } from "./bounds.ts";
import {
  along,
  doCross,
  footOn,
  type Line,
  lengthOf,
  meeting,
  middleOf,
  type Piece,
  sidesOf,
  toLine,
  toPiece,
} from "./plane.ts";
import { GAP } from "./reach-figures.ts";
import type { Barrier, Spot } from "./scene.ts";
import { standsOn } from "./standing.ts";
import type { Standing, Volume } from "./volume.ts";

/** How far beside an end a way turns round it, m. */
const BESIDE = 1e-6;
/** How far lines run on past their ends, so that no way slips through a joint, m. */
const OVERLAP = 1e-7;
/** A way longer than the reach by this is not followed further, m. */
const HORIZON = 1;

/**
 * The barriers of IP2X or better that close the way of a hand, as lines in plan, for a part that lies between two
 * heights. Barriers of less close nothing. A barrier closes where neither its upper nor its lower border can be passed:
 *
 * - over it: it runs up to the upper limit of reach, or so far above the part that a hand cannot come down to it again
 *   within the sideways reach;
 * - under it: it stands on the surface with no gap for a finger, or runs down to the lower limit of reach, or so far
 *   below the part that a hand cannot come up to it again.
 *
 * An opening that lies within those borders lets a hand through in its whole width. The regulation names no such
 * measures; these are ours and on the safe side. The tolerance takes twice itself
 * off the borders and 2√2 of it off every free end (the barrier may be smaller than drawn); a negative one adds that.
 */
export function closingLines(
  volume: Volume,
  standing: Standing,
  low: number,
  high: number,
  tolerance: number,
): readonly Line[] {
  const { reach } = volume;
  const upTo = Math.min(standing.height + reach.upward, high + reach.sideways);
  const downTo = Math.max(standing.height - reach.below, low - reach.sideways);
  const furthest = reach.sideways + HORIZON + 4 * Math.abs(tolerance);
  const closed: Line[] = [];
  for (const barrier of volume.barriers) {
    if (barrier.protection === "less" || !isNear(standing.bounds, barrier.from, barrier.to, furthest)) continue;
    const top = barrier.top === "structure" ? Number.POSITIVE_INFINITY : barrier.top;
    const bottom = barrier.bottom === "structure" ? Number.NEGATIVE_INFINITY : barrier.bottom;
    if (top - 2 * tolerance < upTo - 1e-9) continue;
    const onFloor =
      low >= standing.height && bottom <= standing.height + GAP && standsOn(standing, barrier, standing.pieces);
    if (!onFloor && bottom + 2 * tolerance > downTo + 1e-9) continue;
    closed.push(...withoutOpenings(barrier, onFloor ? standing.height : downTo, upTo, tolerance));
  }
  return joined(closed, 2 * Math.SQRT2 * tolerance);
}

function withoutOpenings({ from, to, openings }: Barrier, low: number, high: number, tolerance: number): Line[] {
  const size = lengthOf(from, to);
  const holes = openings
    .filter(({ bottom, top }) => top + 2 * tolerance > low && bottom - 2 * tolerance < high)
    .map((hole) => [hole.from / size, hole.to / size] as const)
    .sort((a, b) => a[0] - b[0]);
  const lines: Line[] = [];
  let start = 0;
  for (const [hole, end] of [...holes, [1, 1] as const]) {
    if (hole > start) lines.push([along([from, to], start), along([from, to], Math.min(1, hole))]);
    start = Math.max(start, end);
  }
  return lines;
}

/** Closes gaps no finger passes, trims free ends, and lets lines run on a little past their ends. */
function joined(lines: readonly Line[], trim: number): readonly Line[] {
  const links: Line[] = [];
  const meetsOther = (end: Spot, own: Line) => {
    let met = false;
    for (const other of lines) {
      if (other === own || toLine(other, end) > GAP) continue;
      met = true;
      const foot = along(other, footOn(other, end));
      if (lengthOf(foot, end) > OVERLAP) links.push([end, foot]);
    }
    return met;
  };
  const own = lines.flatMap((line) => {
    const size = lengthOf(line[0], line[1]);
    const [start, end] = [meetsOther(line[0], line) ? 0 : trim, meetsOther(line[1], line) ? 0 : trim];
    return size - start - end > OVERLAP ? [[along(line, start / size), along(line, 1 - end / size)] as const] : [];
  });
  return [...own, ...links].map((line) => {
    const part = OVERLAP / lengthOf(line[0], line[1]);
    return [along(line, -part), along(line, 1 + part)];
  });
}

/** Whether nothing lies across the straight way. */
function isClear(from: Spot, to: Spot, lines: readonly Line[]): boolean {
  return lines.every((line) => !doCross([from, to], line));
}

/** The ways of a hand from the occupied pieces round closing lines: how far each place where one can bend lies off. */
export interface Ways {
  readonly starts: readonly Start[];
  readonly lines: readonly Line[];
  /** The nearest to the pieces first. */
  readonly bends: readonly { readonly at: Spot; readonly off: number }[];
  /** No way longer than this is told, m. */
  readonly furthest: number;
}

/** One piece with the places a way can end at besides the nearest: corners, and either side of where a line meets it. */
interface Start {
  readonly piece: Piece;
  readonly middle: Spot;
  readonly sides: readonly Line[];
  readonly ends: readonly Spot[];
}

function startAt(piece: Piece, lines: readonly Line[]): Start {
  const [middle, sides] = [middleOf(piece), sidesOf(piece)];
  const ends = sides.flatMap((side) => {
    const size = lengthOf(side[0], side[1]);
    const meetings = lines.flatMap((line) => {
      const at = meeting(side, line);
      if (at === undefined || at[1] < 0 || at[1] > 1) return [];
      return [at[0] - (3 * BESIDE) / size, at[0] + (3 * BESIDE) / size];
    });
    return [0, 1, ...meetings]
      .filter((stop) => stop >= 0 && stop <= 1)
      .map((stop) => inward(along(side, stop), middle));
  });
  return { piece, middle, sides, ends };
}

/** Works out the ways once for all parts that meet the same lines. Ways beyond the reach and a metre are left out. */
export function waysRound(pieces: readonly Piece[], lines: readonly Line[], reach: number): Ways {
  const furthest = reach + HORIZON;
  const starts = pieces.map((piece) => startAt(piece, lines));
  const places = lines.flatMap(bendsOf);
  const off = places.map((place) => straightTo(starts, place, lines, furthest));
  const open = new Set(places.keys());
  while (open.size > 0) {
    let here = -1;
    for (const i of open) if (here < 0 || (off[i] as number) < (off[here] as number)) here = i;
    if ((off[here] as number) >= furthest) break;
    open.delete(here);
    for (const i of open) {
      const length = (off[here] as number) + lengthOf(places[here] as Spot, places[i] as Spot);
      if (length < (off[i] as number) && isClear(places[here] as Spot, places[i] as Spot, lines)) off[i] = length;
    }
  }
  const bends = places
    .map((at, i) => ({ at, off: off[i] as number }))
    .filter((bend) => bend.off < furthest)
    .sort((one, other) => one.off - other.off);
  return { starts, lines, bends, furthest };
}

/** Length in plan of the shortest way of a hand to a spot, bending round the free ends of the lines, m. */
export function wayTo({ starts, lines, bends, furthest }: Ways, spot: Spot): number {
  let best = straightTo(starts, spot, lines, furthest);
  for (const { at, off } of bends) {
    if (off >= best) break;
    const length = off + lengthOf(at, spot);
    if (length < best && isClear(at, spot, lines)) best = length;
  }
  return best;
}

/** Two places just beyond each end of a line, one on either side. */
function bendsOf([a, b]: Line): readonly Spot[] {
  const size = lengthOf(a, b) / BESIDE;
  const [x, y] = [(b[0] - a[0]) / size, (b[1] - a[1]) / size];
  return [
    [b[0] + x - y, b[1] + y + x],
    [b[0] + x + y, b[1] + y - x],
    [a[0] - x - y, a[1] - y + x],
    [a[0] - x + y, a[1] - y - x],
  ];
}

/** Length of the shortest straight clear way from a spot to the pieces, if it is less than `best`; otherwise `best`. */
function straightTo(starts: readonly Start[], spot: Spot, lines: readonly Line[], best: number): number {
  let least = best;
  const attempt = (target: Spot) => {
    const length = lengthOf(spot, target);
    if (length < least && isClear(spot, target, lines)) least = length;
  };
  for (const { piece, middle, sides, ends } of starts) {
    const away = toPiece(piece, spot);
    if (away === 0) return 0;
    if (away >= least) continue;
    for (const side of sides) attempt(inward(along(side, footOn(side, spot)), middle));
    for (const end of ends) attempt(end);
  }
  return least;
}

/** A hair inside the piece, so that a barrier standing on its edge lies across the way. */
function inward(target: Spot, middle: Spot): Spot {
  const size = lengthOf(target, middle);
  return size <= BESIDE ? target : along([target, middle], BESIDE / size);
}
