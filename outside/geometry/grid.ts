import type { Spot } from "@good-grounds/computations";

type Wall = readonly [Spot, Spot];

/**
 * Length of the shortest way from an area to each place of a fine grid, round walls, by going from grid point to grid
 * point: a method that has nothing in common with bending round ends. Steps go to all points within a few grid widths,
 * so a way comes out too long by less than one part in a hundred, and by two grid widths at its ends.
 */
export class Grid {
  readonly #step: number;
  readonly #half: number;
  readonly #count: number;
  readonly #length: Float64Array;

  constructor(half: number, step: number, isStart: (spot: Spot) => boolean, walls: readonly Wall[], furthest: number) {
    this.#half = half;
    this.#step = step;
    this.#count = Math.round((2 * half) / step) + 1;
    this.#length = new Float64Array(this.#count ** 2).fill(Number.POSITIVE_INFINITY);
    this.#spread(isStart, walls, furthest);
  }

  /** The way to the grid point nearest to a spot. */
  to([x, y]: Spot): number {
    const [i, k] = [Math.round((x + this.#half) / this.#step), Math.round((y + this.#half) / this.#step)];
    return this.#length[i * this.#count + k] as number;
  }

  get size(): number {
    return this.#length.length;
  }

  spotOf(index: number): Spot {
    const [i, k] = [Math.floor(index / this.#count), index % this.#count];
    // A little off the round numbers, so that walls do not run through grid points.
    return [i * this.#step - this.#half + 1.3e-4, k * this.#step - this.#half + 2.1e-4];
  }

  #spread(isStart: (spot: Spot) => boolean, walls: readonly Wall[], furthest: number): void {
    const rings: number[][] = [];
    const put = (index: number, length: number) => {
      const ring = Math.floor(length / this.#step);
      rings[ring] ??= [];
      (rings[ring] as number[]).push(index);
    };
    for (let index = 0; index < this.#length.length; index++) {
      if (!isStart(this.spotOf(index))) continue;
      this.#length[index] = 0;
      put(index, 0);
    }
    for (let ring = 0; ring * this.#step < furthest; ring++) {
      for (const index of rings[ring] ?? []) this.#step1(index, walls, put);
    }
  }

  #step1(index: number, walls: readonly Wall[], put: (index: number, length: number) => void): void {
    const [i, k] = [Math.floor(index / this.#count), index % this.#count];
    const from = this.spotOf(index);
    for (const [di, dk] of STEPS) {
      const [ni, nk] = [i + di, k + dk];
      if (ni < 0 || nk < 0 || ni >= this.#count || nk >= this.#count) continue;
      const next = ni * this.#count + nk;
      const length = (this.#length[index] as number) + Math.hypot(di, dk) * this.#step;
      if (length >= (this.#length[next] as number) - 1e-12) continue;
      const to = this.spotOf(next);
      if (walls.some((wall) => lieAcross(from, to, wall))) continue;
      this.#length[next] = length;
      put(next, length);
    }
  }
}

const SPAN = 4;
const STEPS: readonly (readonly [number, number])[] = Array.from(
  { length: (2 * SPAN + 1) ** 2 },
  (_, i) => [Math.floor(i / (2 * SPAN + 1)) - SPAN, (i % (2 * SPAN + 1)) - SPAN] as const,
).filter(([a, b]) => divisor(Math.abs(a), Math.abs(b)) === 1);

function divisor(a: number, b: number): number {
  return b === 0 ? a : divisor(b, a % b);
}

/** Whether a wall lies across a step: both solve for the place where they meet. */
function lieAcross(from: Spot, to: Spot, [a, b]: Wall): boolean {
  const [ux, uy, vx, vy] = [to[0] - from[0], to[1] - from[1], b[0] - a[0], b[1] - a[1]];
  const cross = ux * vy - uy * vx;
  if (cross === 0) return false;
  const s = ((a[0] - from[0]) * vy - (a[1] - from[1]) * vx) / cross;
  const t = ((a[0] - from[0]) * uy - (a[1] - from[1]) * ux) / cross;
  return s >= 0 && s <= 1 && t >= 0 && t <= 1;
}
