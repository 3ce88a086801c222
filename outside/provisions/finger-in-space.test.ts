import { fingerReach } from "@good-grounds/computations";
import { describe, expect, test } from "vitest";

/**
 * The jointed finger thrown at random into a rectangular hole, in space: any lean, any turn about its axis, any bends up to
 * 90° and any place of the hole. Postures in which the round body would cut the plate are left out. Lengths in mm.
 */
const RADIUS = 6;
const LINKS = [20, 30, 30 - RADIUS] as const;
const TRIES = 25_000;

type Vector = readonly [x: number, y: number, z: number];

const plus = (a: Vector, b: Vector, by: number): Vector => [a[0] + by * b[0], a[1] + by * b[1], a[2] + by * b[2]];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const unit = (a: Vector): Vector => {
  const length = Math.hypot(...a);
  return [a[0] / length, a[1] / length, a[2] / length];
};

function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** How far a place in the plane of the plate lies inside the hole (positive) or outside it (negative). */
function within(x: number, y: number, width: number, height: number): number {
  const [dx, dy] = [Math.abs(x) - width / 2, Math.abs(y) - height / 2];
  if (dx <= 0 && dy <= 0) return Math.min(-dx, -dy);
  return -Math.hypot(Math.max(0, dx), Math.max(0, dy));
}

/** A direction turned from another about an axis square to it, by degrees. */
function bent(direction: Vector, aside: Vector, degrees: number): Vector {
  const angle = (degrees * Math.PI) / 180;
  return plus(plus([0, 0, 0], direction, Math.cos(angle)), aside, Math.sin(angle));
}

/** Points of the centre line of one random posture, the base first; undefined where the plate stands in the way. */
function posture(random: () => number, width: number, height: number): readonly Vector[] | undefined {
  const lean = random() ** 2 * 70;
  // Half of them lean along the second side, where a long hole leaves room.
  const azimuth = random() < 0.5 ? random() * 2 * Math.PI : Math.sign(random() - 0.5) * (Math.PI / 2);
  const sine = Math.sin((lean * Math.PI) / 180);
  const base: Vector = [sine * Math.cos(azimuth), sine * Math.sin(azimuth), Math.cos((lean * Math.PI) / 180)];
  const square = unit(cross(base, Math.abs(base[0]) < 0.9 ? [1, 0, 0] : [0, 1, 0]));
  const other = cross(base, square);
  const turn = random() * 2 * Math.PI;
  const aside = plus(plus([0, 0, 0], square, Math.cos(turn)), other, Math.sin(turn));
  const [first, second] = [random() * 90, random() * 90];
  const directions = [base, bent(base, aside, first), bent(base, aside, first + second)] as const;
  const outside = random() * 20;
  const hole: Vector = [(random() - 0.5) * (width - 2 * RADIUS), (random() - 0.5) * (height - 2 * RADIUS), 0];
  let at = plus(hole, base, -outside);
  const points: Vector[] = [];
  for (const [i, length] of LINKS.entries()) {
    const direction = directions[i] as Vector;
    for (let t = 0; t <= length; t += 1) {
      const point = plus(at, direction, t);
      const room = within(point[0], point[1], width, height);
      if (Math.hypot(point[2], Math.max(0, room)) < RADIUS - 0.02) return undefined;
      points.push(point);
    }
    at = plus(at, direction, length);
  }
  return points;
}

describe.each([
  [14, 14],
  [17.5, 45],
  [19, 90],
  [13, 13.5],
  [12.3, 45],
])("a finger thrown into a hole of %d mm × %d mm", (width, height) => {
  test("touches nothing that is called out of reach", () => {
    const random = generator(529);
    let stood = 0;
    // The deepest touch in each tenth of a millimetre sideways.
    const deepest = new Map<number, readonly [offset: number, deep: number]>();
    for (let i = 0; i < TRIES; i++) {
      const points = posture(random, width, height);
      if (points === undefined) continue;
      stood += 1;
      for (const centre of points) {
        for (let k = 0; k < 4; k++) {
          const way = unit([random() - 0.5, random() - 0.5, random() - 0.5]);
          const [x, y, z] = plus(centre, way, RADIUS);
          const offset = -within(x, y, width, height);
          if (offset <= 0 || z <= 0) continue;
          const place = Math.floor(offset * 10);
          if (z > (deepest.get(place)?.[1] ?? 0)) deepest.set(place, [offset, z]);
        }
      }
    }
    const rooms = [...deepest.values()].map(
      ([offset, z]) => fingerReach({ narrow: width, wide: height, offset }).possible - z,
    );
    const closest = Math.min(...rooms);
    expect(stood).toBeGreaterThan(100);
    expect(closest).toBeGreaterThan(0);
    expect(closest).toBeLessThan(25);
  });
});
