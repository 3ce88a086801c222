import { fingerReach, sphereReach } from "@good-grounds/computations";
import { describe, expect, test } from "vitest";
import { sampledPostures } from "./sampled-finger.ts";

const GAPS = [12.1, 14, 17.5, 20, 30, 45];
const LEANS = [-40, -20, 0, 15, 30, 40, 50, 60];

/** One point of each half millimetre under the wall: there is no need to look at the same place twice. */
function thinned(points: readonly (readonly [number, number])[]): readonly (readonly [number, number])[] {
  const kept = new Map<number, readonly [number, number]>();
  for (const [x, z] of points) if (x > -4 && z > 0) kept.set(Math.round(x * 2) * 1000 + Math.round(z * 2), [x, z]);
  return [...kept.values()];
}

describe.each(GAPS)("jointed finger through a gap of %d mm against every sampled posture", (gap) => {
  test("no posture touches a place that is called out of reach", () => {
    let tried = 0;
    // The deepest touch in each tenth of a millimetre sideways.
    const deepest = new Map<number, readonly [across: number, deep: number]>();
    for (const { skin } of sampledPostures({ gap, leans: LEANS, step: 15 })) {
      tried += 1;
      for (const [across, deep] of skin) {
        if (across <= 0 || deep <= 0) continue;
        const place = Math.floor(across * 10);
        if (deep > (deepest.get(place)?.[1] ?? 0)) deepest.set(place, [across, deep]);
      }
    }
    const rooms = [...deepest.values()].map(
      ([across, deep]) => fingerReach({ narrow: Math.min(gap, 19.9), wide: gap, offset: across }).possible - deep,
    );
    const closest = Math.min(...rooms);
    expect(tried).toBeGreaterThan(500);
    expect(closest).toBeGreaterThanOrEqual(-1e-6);
    // And the limit is no idle one: some posture comes near it.
    expect(closest).toBeLessThan(6);
  });

  test("every place called certain is touched by a posture of the finger square to the wall", () => {
    const skins = thinned([...sampledPostures({ gap, leans: [0], step: 6 })].flatMap(({ skin }) => skin));
    let worst = 0;
    let places = 0;
    for (let offset = 3; offset <= 54; offset += 6) {
      const { certain } = fingerReach({ narrow: Math.min(gap, 19.9), wide: gap, offset });
      for (let deep = 8; deep <= certain; deep += 8) {
        places += 1;
        let nearest = Number.POSITIVE_INFINITY;
        for (const [x, z] of skins) nearest = Math.min(nearest, Math.hypot(x - offset, z - deep));
        worst = Math.max(worst, nearest);
      }
    }
    expect(places).toBeGreaterThan(40);
    expect(worst).toBeLessThan(2.5);
  });
});

test("a sphere held in a slot bulges through as a fine grid of its surface does", () => {
  for (const narrow of [5, 20, 35, 49]) {
    // Lower the centre until the sphere rests on both edges, then take its lowest point.
    let centre = -25;
    while (centre < 0 && Math.hypot(narrow / 2, centre) >= 25) centre += 0.0005;
    const { certain } = sphereReach({ narrow, wide: 200, offset: 0 });
    expect(Math.abs(certain - (centre + 25))).toBeLessThan(0.01);
  }
});
