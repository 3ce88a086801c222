import fc from "fast-check";
import type { Barrier, Place, ReachPart, ReachScene, Shape, StandingSurface } from "./scene.ts";
import { rectangle, wall } from "./scenes.test-data.ts";

const metres = (low: number, high: number) => fc.integer({ min: low * 20, max: high * 20 }).map((n) => n / 20);
const spot = fc.tuple(metres(-3, 3), metres(-3, 3));
const place: fc.Arbitrary<Place> = fc.tuple(metres(-4, 4), metres(-4, 4), metres(-2, 5));

const surface: fc.Arbitrary<Omit<StandingSurface, "name">> = fc
  .tuple(spot, metres(1, 3), metres(1, 3), metres(-1, 2), fc.boolean(), fc.boolean())
  .map(([[x, y], width, depth, height, solid, entered]) => ({
    height,
    solid,
    outline: rectangle(x, y, width, depth),
    entries: entered ? [[x + 0.11, y + 0.13] as const] : [],
  }));

const shape: fc.Arbitrary<Shape> = fc.oneof(
  place.map((at) => ({ kind: "point", at }) as const),
  fc.tuple(place, place).map(([from, to]) => ({ kind: "segment", from, to }) as const),
);

const border = (low: number, high: number) => fc.oneof(fc.constant("structure" as const), metres(low, high));

/** A barrier that is no place to stand: one that is adds a surface, so taking it away is another matter. */
const barrier: fc.Arbitrary<Barrier> = fc
  .tuple(spot, spot, border(-1, 1), border(2, 4), fc.constantFrom("ip2x", "less"), fc.boolean())
  .filter(([[a, b], [c, d]]) => Math.hypot(a - c, b - d) > 0.1)
  .map(([from, to, bottom, top, protection, keepsBack]) => wall("", from, to, { bottom, top, protection, keepsBack }));

const named = <T extends object>(list: readonly T[], letter: string) =>
  list.map((one, i) => ({ ...one, name: `${letter}${i}` }));

export const anyScene: fc.Arbitrary<ReachScene> = fc
  .record({
    tolerance: fc.constantFrom(0, 0, 0.02),
    objects: fc.constantFrom(0, 0.5, 1, 2),
    attendance: fc.constantFrom("skilled-control", "ordinary", null),
    surfaces: fc.array(surface, { minLength: 1, maxLength: 3 }),
    parts: fc.array(fc.record({ potential: fc.constantFrom("L1", "N"), live: fc.boolean(), shape }), {
      minLength: 1,
      maxLength: 4,
    }),
    barriers: fc.array(barrier, { maxLength: 5 }),
  })
  .map((scene) => ({
    ...scene,
    surfaces: named(scene.surfaces, "s") as StandingSurface[],
    parts: named(scene.parts, "p") as ReachPart[],
    barriers: named(scene.barriers, "b") as Barrier[],
  }));
