import { pointer, Reckoner } from "@good-grounds/core";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { placingOutOfReach } from "./conclude.ts";
import { floor, pointPart, sceneWith, wall } from "./example-scenes.ts";
import { doubleArea } from "./plane.ts";
import { convexPieces } from "./polygon.ts";
import { readScene } from "./read-scene.ts";

const good = sceneWith({ parts: [pointPart("a", [1, 1, 1])], barriers: [wall("w", [0, 0], [1, 0])] });
const copy = () => JSON.parse(JSON.stringify(good));

function issuesOf(data: unknown): readonly string[] {
  const read = readScene(data);
  return read.ok ? [] : read.issues.map(({ code, path }) => `${code} ${pointer(path)}`);
}

describe("reading a scene", () => {
  test("what is right comes out as it went in", () => {
    expect(readScene(copy())).toEqual({ ok: true, scene: good });
  });

  test("everything wrong is told at once, with its place", () => {
    const data = copy();
    data.tolerance = Number.NaN;
    data.objects = "2 m";
    data.surfaces[0].outline[1] = [Number.POSITIVE_INFINITY, 0];
    data.parts[0].shape.at = [1, 2];
    delete data.parts[0].live;
    data.barriers[0].to = [0, 0];
    data.extra = 1;
    expect(issuesOf(data).toSorted()).toEqual(
      [
        "unknown-key /extra",
        "not-in-range /tolerance",
        "not-in-range /objects",
        "not-in-range /surfaces/0/outline/1/0",
        "left-out /parts/0/live",
        "not-a-place /parts/0/shape/at",
        "no-length /barriers/0/to",
      ].toSorted(),
    );
  });

  test.each([
    [
      "crossing sides",
      [
        [0, 0],
        [2, 2],
        [2, 0],
        [0, 2],
      ],
      "outline-crossing",
    ],
    [
      "a side that runs back",
      [
        [0, 0],
        [2, 0],
        [1, 0],
        [1, 2],
      ],
      "outline-crossing",
    ],
    [
      "a corner on another side",
      [
        [0, 0],
        [4, 0],
        [4, 2],
        [2, 0],
        [0, 2],
      ],
      "outline-crossing",
    ],
    [
      "a corner twice",
      [
        [0, 0],
        [0, 0],
        [2, 0],
        [2, 2],
      ],
      "outline-repeated",
    ],
    [
      "a line",
      [
        [0, 0],
        [1, 0],
        [2, 0],
      ],
      "outline-crossing",
    ],
    [
      "two corners",
      [
        [0, 0],
        [1, 0],
      ],
      "wrong-count",
    ],
  ])("an outline with %s", (_, outline, code) => {
    const data = copy();
    data.surfaces[0].outline = outline;
    expect(issuesOf(data)[0]).toContain(code);
  });

  test("names twice, an entry beside the surface, an opening beyond the barrier, a box inside out", () => {
    const data = copy();
    data.surfaces.push({ ...data.surfaces[0] });
    expect(issuesOf(data)).toEqual(["named-twice /surfaces/1/name"]);
    const other = copy();
    other.surfaces[0].entries = [[9, 9]];
    other.barriers[0].openings = [{ from: 0.5, to: 3, bottom: 0, top: 1 }];
    other.parts[0].shape = { kind: "box", low: [0, 0, 1], high: [1, 1, 0] };
    expect(issuesOf(other)).toEqual([
      "entry-outside /surfaces/0/entries/0",
      "box-inverted /parts/0/shape",
      "not-in-range /barriers/0/openings/0/to",
    ]);
  });

  test("ten thousand corners, parts or barriers are refused without a look at each", () => {
    const data = copy();
    let looks = 0;
    /** A list that counts how often somebody looks at one of its members. */
    const counted = (list: readonly unknown[]) =>
      new Proxy(list, {
        get(of, name) {
          if (typeof name === "string" && /^\d+$/.test(name)) looks++;
          return Reflect.get(of, name);
        },
      });
    data.surfaces[0].outline = counted(Array.from({ length: 10_000 }, (_, i) => [Math.cos(i), Math.sin(i)]));
    data.parts = counted(Array.from({ length: 10_000 }, () => data.parts[0]));
    data.barriers = counted(Array.from({ length: 10_000 }, () => data.barriers[0]));
    expect(issuesOf(data).map((issue) => issue.split(" ")[0])).toEqual(["wrong-count", "wrong-count", "wrong-count"]);
    expect(looks).toBeLessThan(1000);
  });

  test("anything at all gives a scene or issues that say what to do, and never throws", () => {
    const leaf = fc.oneof(fc.double(), fc.string(), fc.constantFrom(null, true, undefined, "structure", [], {}));
    const change = fc.tuple(fc.array(fc.nat(8), { minLength: 1, maxLength: 6 }), leaf);
    fc.assert(
      fc.property(fc.array(change, { maxLength: 4 }), (changes) => {
        const data = copy();
        for (const [steps, value] of changes) {
          let at = data;
          for (const [i, step] of steps.entries()) {
            const keys = Object.keys(at);
            const key = keys[step % Math.max(1, keys.length)] ?? "x";
            if (i === steps.length - 1 || typeof at[key] !== "object" || at[key] === null) {
              at[key] = value;
              break;
            }
            at = at[key];
          }
        }
        const read = readScene(data);
        if (read.ok) placingOutOfReach(read.scene, new Reckoner(false));
        else
          for (const issue of read.issues)
            expect(Math.min(issue.expected.length, issue.advice.length)).toBeGreaterThan(3);
      }),
      { numRuns: 2000 },
    );
    for (const data of [null, 1, [], "x", undefined]) expect(readScene(data).ok).toBe(false);
  });
});

test("an outline falls into convex pieces of the same area, straight corners or not", () => {
  const comb = [
    [0, 0],
    [9, 0],
    [9, 3],
    [8, 3],
    [8, 1],
    [7, 1],
    [7, 3],
    [6, 3],
    [6, 1],
    [5, 1],
    [5, 3],
    [4, 3],
    [4, 1.5],
    [4, 1],
    [3, 1],
    [2, 1],
    [2, 3],
    [0, 3],
    [0, 2],
  ] as const;
  const pieces = convexPieces(comb);
  expect(pieces.reduce((sum, piece) => sum + doubleArea(piece), 0)).toBeCloseTo(doubleArea(comb), 9);
  for (const piece of pieces) expect(doubleArea(piece)).toBeGreaterThan(0);
  expect(convexPieces([...comb].reverse()).reduce((sum, piece) => sum + doubleArea(piece), 0)).toBeCloseTo(
    doubleArea(comb),
    9,
  );
  expect(convexPieces(floor.outline)).toHaveLength(1);
});
