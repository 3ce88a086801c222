import { isOpen, Reckoner, type Verdict } from "@good-grounds/core";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { placingOutOfReach } from "./conclude.ts";
import { largeScene, rectangle, wall } from "./example-scenes.ts";
import { readScene } from "./read-scene.ts";
import type { Barrier, Place, ReachPart, ReachScene, Shape, StandingSurface } from "./scene.ts";

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

const anyScene: fc.Arbitrary<ReachScene> = fc
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

const bare = new Reckoner(false);

function verdictsOf(scene: ReachScene): readonly Verdict[] {
  const { parts, arrangement, provision } = placingOutOfReach(scene, bare);
  return [...parts.map(({ judgement }) => judgement.verdict), arrangement.verdict, provision.verdict];
}

/** A worse scene never gains: what was not met is not met then. */
function neverBetter(before: ReachScene, after: ReachScene): void {
  const worse = verdictsOf(after);
  for (const [i, verdict] of verdictsOf(before).entries()) {
    // Where no live part and no pair is in question, one that comes up later may well be met.
    if (verdict === "met" || verdict === "not-applicable") continue;
    expect(worse[i], `${i}`).not.toBe("met");
  }
}

describe("worse never turns to better", () => {
  test("another surface", () => {
    fc.assert(
      fc.property(anyScene, anyScene, (scene, other) =>
        neverBetter(scene, { ...scene, surfaces: [...scene.surfaces, ...other.surfaces] }),
      ),
      { numRuns: 300 },
    );
  });

  test("longer things handled, or their length not known", () => {
    fc.assert(
      fc.property(anyScene, fc.constantFrom(0.1, 0.7, 3), (scene, more) => {
        neverBetter(scene, { ...scene, objects: (scene.objects ?? 0) + more });
        neverBetter({ ...scene, objects: 0 }, { ...scene, objects: null });
      }),
      { numRuns: 300 },
    );
  });

  test("a barrier less, or one opened, or one that keeps nobody back", () => {
    fc.assert(
      fc.property(anyScene, fc.nat(), (scene, n) => {
        const gone = scene.barriers.filter((_, i) => i !== n % Math.max(1, scene.barriers.length));
        neverBetter(scene, { ...scene, barriers: gone });
        neverBetter(scene, { ...scene, barriers: scene.barriers.map((one) => ({ ...one, keepsBack: false })) });
        neverBetter(scene, {
          ...scene,
          barriers: scene.barriers.map((one) => ({ ...one, protection: "less" as const })),
        });
        const opening = { from: 0, to: 0.1, bottom: -9, top: 9 };
        neverBetter(scene, { ...scene, barriers: scene.barriers.map((one) => ({ ...one, openings: [opening] })) });
      }),
      { numRuns: 400 },
    );
  });

  test("a tolerance opens verdicts and turns none round", () => {
    fc.assert(
      fc.property(anyScene, (scene) => {
        const exact = verdictsOf({ ...scene, tolerance: 0 });
        for (const [i, verdict] of verdictsOf({ ...scene, tolerance: 0.03 }).entries()) {
          if (!isOpen(verdict) && exact[i] !== "not-applicable") expect(verdict).toBe(exact[i]);
        }
      }),
      { numRuns: 300 },
    );
  });
});

test("the same scene moved and turned by a quarter gives the same distances", () => {
  fc.assert(
    fc.property(anyScene, ({ barriers, surfaces, parts, ...rest }) => {
      const turned = ([x, y]: readonly [number, number]) => [40 - y, x - 25] as const;
      const raised = ([x, y, z]: readonly [number, number, number]) => [...turned([x, y]), z] as const;
      const moved: ReachScene = {
        ...rest,
        surfaces: surfaces.map((one) => ({
          ...one,
          outline: one.outline.map(turned),
          entries: one.entries.map(turned),
        })),
        barriers: barriers.map((one) => ({ ...one, from: turned(one.from), to: turned(one.to) })),
        parts: parts.map((one) => {
          const { shape } = one;
          if (shape.kind === "point") return { ...one, shape: { ...shape, at: raised(shape.at) } };
          if (shape.kind === "segment")
            return { ...one, shape: { ...shape, from: raised(shape.from), to: raised(shape.to) } };
          return one;
        }),
      };
      const here = placingOutOfReach({ ...rest, surfaces, barriers, parts }, bare).parts.map(
        ({ least }) => least.value,
      );
      const there = placingOutOfReach(moved, bare).parts.map(({ least }) => least.value);
      for (const [i, value] of here.entries()) {
        // A line near barriers is taken in steps, which rounding may count differently.
        const stepped = parts[i]?.shape.kind === "segment" && barriers.length > 0;
        expect(Math.abs((there[i] as number) - value)).toBeLessThan(stepped ? 0.03 : 1e-5);
      }
    }),
    { numRuns: 150 },
  );
});

test("20 surfaces, 50 parts and 20 barriers are read and concluded on", () => {
  const scene = largeScene();
  expect(readScene(JSON.parse(JSON.stringify(scene))).ok).toBe(true);
  expect(placingOutOfReach(scene, new Reckoner(true))).toEqual(placingOutOfReach(largeScene(), new Reckoner(true)));
});
