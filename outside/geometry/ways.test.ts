import { placingOutOfReach, readScene, type Spot } from "@good-grounds/computations";
import { Reckoner } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { casesOfRun } from "../seed.ts";
import { Grid } from "./grid.ts";
import { convexOutline, generator } from "./random-scene.ts";

const HALF = 3;
const STEP = 0.025;
/** A way on the grid starts and ends up to two steps off, and bends round an end at a grid point. */
const ENDS = 4 * STEP;
const SIDEWAYS = 1.25;
const bare = new Reckoner(false);

function isInside(outline: readonly Spot[], [x, y]: Spot): boolean {
  let inside = false;
  for (let i = 0, j = outline.length - 1; i < outline.length; j = i++) {
    const [a, b] = [outline[i] as Spot, outline[j] as Spot];
    if (a[1] > y !== b[1] > y && x < ((b[0] - a[0]) * (y - a[1])) / (b[1] - a[1]) + a[0]) inside = !inside;
  }
  return inside;
}

describe("ways of a hand round barriers, against a fine grid", () => {
  test("400 parts or more behind walls that stand free or join: the way is that of the grid", () => {
    const random = generator(31);
    let [behind, free, closed] = [0, 0, 0];
    for (let i = 0; i < casesOfRun(20); i++) {
      const outline = convexOutline(random).map(([x, y]): Spot => [x * 0.6, y * 0.6]);
      const walls: [Spot, Spot][] = Array.from({ length: 2 + Math.floor(random() * 6) }, () => {
        const [x, y, angle, length] = [random() * 4 - 2, random() * 4 - 2, random() * 7, 0.4 + random() * 2];
        return [
          [x, y],
          [x + length * Math.cos(angle), y + length * Math.sin(angle)],
        ];
      });
      // Every other scene has a corner of two walls that meet.
      const [first] = walls;
      if (i % 2 === 0 && first !== undefined)
        walls.push([first[1], [first[1][0] + random() - 0.5, first[1][1] + random() * 1.5]]);
      const grid = new Grid(HALF, STEP, (spot) => isInside(outline, spot), walls, SIDEWAYS + 1.2);
      const places: Spot[] = [];
      while (places.length < 20) {
        const spot = grid.spotOf(Math.floor(random() * grid.size));
        const near = outline.some(([x, y]) => Math.hypot(spot[0] - x, spot[1] - y) < 1.4);
        if (near && !isInside(outline, spot)) places.push(spot);
      }
      const read = readScene({
        tolerance: 0,
        objects: 0,
        attendance: null,
        surfaces: [{ name: "floor", height: 0, outline, solid: true, entries: [] }],
        parts: places.map(([x, y], k) => ({
          name: `p${k}`,
          potential: "L",
          live: true,
          shape: { kind: "point", at: [x, y, 1] },
        })),
        barriers: walls.map(([from, to], k) => ({
          name: `w${k}`,
          from,
          to,
          bottom: "structure",
          top: "structure",
          protection: "ip2x",
          keepsBack: false,
          platform: false,
          openings: [],
        })),
      });
      if (!read.ok) throw new Error(JSON.stringify(read.issues));
      for (const { part, least, index } of placingOutOfReach(read.scene, bare).parts) {
        const spot = places[index] as Spot;
        const [ours, grids] = [least.value + SIDEWAYS, grid.to(spot)];
        const where = `scene ${i} ${part.name} ${spot}: ${ours} against ${grids}`;
        if (least.barred) behind++;
        // A way that does not reach is told straight, or cut off a metre beyond reach.
        if (ours > SIDEWAYS) expect(grids, where).toBeGreaterThan(SIDEWAYS - ENDS);
        if (ours > SIDEWAYS && ours < SIDEWAYS + 0.99 && least.barred) {
          closed++;
          expect(Math.abs(grids - ours), where).toBeLessThan(0.02 * ours + ENDS);
        }
        if (ours <= SIDEWAYS) {
          free++;
          expect(grids, where).toBeGreaterThan(ours - 1e-3);
          expect(grids, where).toBeLessThan(ours * 1.02 + ENDS);
        }
      }
    }
    expect(behind).toBeGreaterThan(50);
    expect(free).toBeGreaterThan(100);
    expect(closed).toBeGreaterThan(3);
  });
});
