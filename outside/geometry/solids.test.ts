import { placingOutOfReach, type ReachScene, readScene, type StandingSurface } from "@good-grounds/computations";
import { Reckoner } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { casesOfRun } from "../seed.ts";
import { convexOutline, generator, partsOf, starOutline, surfaceOf } from "./random-scene.ts";
import { gap, partSolid, reachSolid } from "./solids.ts";

/** The library's circles are polygons and its points have a width: together less than this, m. */
const WITHIN = 3e-4;
/** The library looks this much further than our own answer, so that more would show, m. */
const FURTHER = 0.01;
const bare = new Reckoner(false);

function sceneOf(random: () => number, surfaces: readonly StandingSurface[], parts: number): ReachScene {
  const objects = random() < 0.3 ? random() : 0;
  const data = { tolerance: 0, objects, attendance: "ordinary", surfaces, parts: partsOf(random, parts), barriers: [] };
  const read = readScene(data);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.scene;
}

describe("arm's reach against solids of a geometry library", () => {
  test("convex surfaces: many parts lie as far outside as the solids are apart, and those inside are inside", () => {
    const random = generator(417);
    let inside = 0;
    let worst = 0;
    for (let i = 0; i < casesOfRun(30); i++) {
      const surfaces = Array.from({ length: 1 + Math.floor(random() * 3) }, (_, k) =>
        surfaceOf(random, k, convexOutline(random)),
      );
      const scene = sceneOf(random, surfaces, 20);
      const volume = reachSolid(scene, scene.objects ?? 0);
      for (const { part, least } of placingOutOfReach(scene, bare).parts) {
        const ours = Math.max(0, least.value);
        const apart = gap(volume, partSolid(part.shape), ours + FURTHER);
        if (apart === 0) inside++;
        worst = Math.max(worst, Math.abs(ours - apart));
        expect(
          Math.abs(ours - apart),
          `scene ${i} ${part.name}: ${ours} against ${apart} ${JSON.stringify(scene.surfaces)} ${JSON.stringify(part)}`,
        ).toBeLessThan(WITHIN);
      }
    }
    expect(inside).toBeGreaterThan(90);
    expect(worst).toBeGreaterThan(0);
  });

  test("surfaces with corners that point inwards: never further out than the solids say, and mostly the same", () => {
    const random = generator(7671);
    let [same, all] = [0, 0];
    for (let i = 0; i < casesOfRun(10); i++) {
      const scene = sceneOf(random, [surfaceOf(random, 0, starOutline(random))], 20);
      const volume = reachSolid(scene, scene.objects ?? 0);
      for (const { part, least } of placingOutOfReach(scene, bare).parts) {
        const ours = Math.max(0, least.value);
        const apart = gap(volume, partSolid(part.shape), ours + FURTHER);
        expect(ours, `scene ${i} ${part.name} ${JSON.stringify(scene.surfaces)} ${JSON.stringify(part)}`).toBeLessThan(
          apart + WITHIN,
        );
        all++;
        if (Math.abs(ours - apart) < WITHIN) same++;
      }
    }
    expect(same / all).toBeGreaterThan(0.97);
  });
});
