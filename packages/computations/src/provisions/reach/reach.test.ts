import { missingOf, Reckoner } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { type PartFinding, placingOutOfReach } from "./conclude.ts";
import { floor, pointPart, sceneWith, wall } from "./example-scenes.ts";
import type { Barrier, Place, ReachScene } from "./scene.ts";

const reckon = new Reckoner(true);
const first = (scene: ReachScene) => placingOutOfReach(scene, reckon).parts[0] as PartFinding;
const onePoint = (at: Place, more: Partial<ReachScene> = {}) =>
  first(sceneWith({ parts: [pointPart("a", at)], ...more }));

describe("one surface, 3 m by 2 m, without barriers", () => {
  test.each([
    [[1, 1, 2.6], 0.1, "above", "upward", "met"],
    [[1, 1, 2.5], 0, "above", "upward", "met"],
    [[1, 1, 2.4], -0.1, "above", "upward", "not-met"],
    [[4, 1, 1], -0.25, "above", "sideways", "not-met"],
    [[4.25, 1, 1], 0, "above", "sideways", "met"],
    [[4, 3, 1], Math.SQRT2 - 1.25, "above", "sideways", "met"],
    [[3.8, 2.8, 1], 0.8 * Math.SQRT2 - 1.25, "above", "sideways", "not-met"],
    [[4.55, 1, 2.9], 0.5, "above", "upward", "met"],
    [[1, 1, 0.1], -1.25, "above", "sideways", "not-met"],
    [[1, 1, 0], -1.25, "above", "sideways", "not-met"],
    [[3.5, 1, 0], -0.75, "above", "sideways", "not-met"],
    [[1.5, 1, -0.2], 0.2, "above", "below", "met"],
    [[2.5, 1, -0.3], -0.25, "below", "sideways", "not-met"],
    [[3.5, 1, -0.8], 0.05, "below", "below", "met"],
    [[3.5, 1, -0.7], -0.05, "below", "below", "not-met"],
    [[4.2, 1, -0.3], -0.05, "below", "sideways", "not-met"],
  ] as const)("a part at %j lies %d m outside, %s, decided %s: %s", (at, value, zone, direction, verdict) => {
    const { least, judgement, clearance } = onePoint(at);
    expect(least.value).toBeCloseTo(value, 9);
    expect([least.zone, least.direction, judgement.verdict]).toEqual([zone, direction, verdict]);
    expect(clearance.value).toBeLessThanOrEqual(least.value + 1e-9);
    expect(Math.sign(Math.round(clearance.value * 1e9))).toBe(Math.sign(Math.round(value * 1e9)));
  });

  test("a grating is reached through, a solid floor only round its edge", () => {
    const grating = { ...floor, solid: false };
    expect(onePoint([1.5, 1, -0.5]).judgement.verdict).toBe("met");
    expect(onePoint([1.5, 1, -0.5], { surfaces: [grating] }).judgement.verdict).toBe("not-met");
  });

  test("a sloping conductor counts at its nearest place, a box at its nearest corner", () => {
    const line = { kind: "segment", from: [4, 1, 4], to: [6, 1, 2] } as const;
    const box = { kind: "box", low: [4.5, 0, 0], high: [5, 1, 1] } as const;
    const found = placingOutOfReach(
      sceneWith({
        parts: [
          { name: "line", potential: "L1", live: true, shape: line },
          { name: "box", potential: "L1", live: true, shape: box },
        ],
      }),
      reckon,
    );
    // The line z = 8 − x passes the upper corner (4.25, 2.5) of the volume at (8 − 4.25 − 2.5) ÷ √2.
    expect(found.parts[0]?.least.value).toBeCloseTo(1.25 / Math.SQRT2, 6);
    expect(found.parts[1]?.least.value).toBeCloseTo(0.25, 9);
  });
});

describe("tolerance and what is not known", () => {
  test("near the limit it is too near to call, well inside or outside it is not", () => {
    const at = (x: number) => onePoint([x, 1, 1], { tolerance: 0.02 });
    expect(at(4.25 + 0.05).judgement.verdict).toBe("too-near");
    expect(at(4.25 + 0.06).judgement.verdict).toBe("met");
    expect(at(4.25 - 0.05).judgement.verdict).toBe("too-near");
    expect(at(4.25 - 0.06).judgement.verdict).toBe("not-met");
    expect(at(4.25).least.high - at(4.25).least.value).toBeCloseTo(2 * Math.SQRT2 * 0.02, 9);
  });

  test("things handled make the reach longer; not known, only what is in bare reach is settled", () => {
    expect(onePoint([5, 1, 1], { objects: 0.7 }).judgement.verdict).toBe("met");
    expect(onePoint([5, 1, 1], { objects: 0.8 }).judgement.verdict).toBe("not-met");
    expect(onePoint([1, 1, 3.2], { objects: 0.8 }).judgement.verdict).toBe("not-met");
    const open = onePoint([5, 1, 1], { objects: null });
    expect(open.judgement.verdict).toBe("not-known");
    expect(missingOf(open.judgement).map((leaf) => leaf.kind === "not-known" && leaf.term.id)).toContain(
      "handled-length",
    );
    expect(onePoint([4, 1, 1], { objects: null }).judgement.verdict).toBe("not-met");
  });

  test("the figures rest on memory and say so", () => {
    const words = JSON.stringify(onePoint([4, 1, 1]).judgement);
    expect(words).toContain('"basis":"memory"');
  });
});

describe("barriers", () => {
  const behind = (barrier: Barrier, at: Place = [3.3, 1, 1]) => onePoint(at, { barriers: [barrier] });
  const across = (more: Partial<Barrier> = {}) => wall("w", [3.1, -1], [3.1, 3], more);

  test("IP2X from floor to ceiling closes the way; less does not", () => {
    expect(behind(across())).toMatchObject({ judgement: { verdict: "met" }, least: { barred: true } });
    expect(behind(across({ protection: "less" })).judgement.verdict).toBe("not-met");
  });

  test("the way round a free end counts: 1.414 + 0.224 m against 1.25 m", () => {
    const short = wall("w", [3.1, -9], [3.1, 2.2]);
    expect(behind(short).least.value).toBeCloseTo(Math.hypot(0.1, 0.2) + Math.hypot(0.2, 1.2) - 1.25, 5);
    expect(behind(short, [3.3, 1.9, 1]).judgement.verdict).toBe("not-met");
  });

  test("a wall on the very edge of the surface closes as well", () => {
    expect(behind(wall("w", [3, -9], [3, 9])).judgement.verdict).toBe("met");
    expect(behind(wall("w", [3, -9], [3, 9]), [3, 1, 1]).judgement.verdict).toBe("not-met");
  });

  test("over the top: 2.5 m closes, lower only where a hand cannot come down again", () => {
    expect(behind(across({ top: 2.5 })).judgement.verdict).toBe("met");
    expect(behind(across({ top: 2.2 })).judgement.verdict).toBe("not-met");
    expect(behind(across({ top: 2.2 }), [3.3, 1, 0.9]).judgement.verdict).toBe("met");
    expect(onePoint([3.3, 1, 2.55], { barriers: [across({ top: 2.2 })] }).judgement.verdict).toBe("met");
  });

  test("under the lower border: a screen hung in front of the edge is passed, one that stands on the floor is not", () => {
    expect(behind(across({ bottom: 0 })).judgement.verdict).toBe("not-met");
    expect(behind(across({ bottom: -0.75 })).judgement.verdict).toBe("met");
    expect(behind(wall("w", [3, 0], [3, 2], { bottom: 0 }), [3.3, 1, 1]).least.barred).toBe(true);
    expect(behind(wall("w", [3, 0], [3, 2], { bottom: 0.05 }), [3.3, 1, 1]).least.barred).toBe(false);
  });

  test("an opening lets a hand through in its width, at the heights of reach only", () => {
    const opening = { from: 1.9, to: 2.2, bottom: 1, top: 1.3 };
    expect(behind(across({ openings: [opening] })).judgement.verdict).toBe("not-met");
    expect(behind(across({ openings: [{ ...opening, bottom: 2.6, top: 2.9 }] })).judgement.verdict).toBe("met");
    expect(behind(across({ openings: [{ ...opening, from: 0, to: 0.4 }] })).judgement.verdict).toBe("met");
  });

  test("two walls that meet in a corner have no gap there", () => {
    const corner = [wall("a", [3.1, -9], [3.1, 1.5]), wall("b", [3.1, 1.5], [9, 1.5])];
    expect(onePoint([3.3, 1.2, 1], { barriers: corner }).judgement.verdict).toBe("met");
    expect(onePoint([3.3, 1.2, 1], { barriers: [corner[0] as Barrier] }).judgement.verdict).toBe("not-met");
    const nearly = [corner[0] as Barrier, wall("b", [3.11, 1.5], [9, 1.5])];
    expect(onePoint([3.3, 1.2, 1], { barriers: nearly }).judgement.verdict).toBe("met");
    const gap = [corner[0] as Barrier, wall("b", [3.15, 1.5], [9, 1.5])];
    expect(onePoint([3.3, 1.2, 1], { barriers: gap }).judgement.verdict).toBe("not-met");
  });

  test("a steep conductor that passes an opening in the way is not lost between two steps", () => {
    const half = across({ to: [3.1, 1.05] });
    const shape = { kind: "segment", from: [3.3, 0.9, -6], to: [3.3, 1.1, 9] } as const;
    const parts = [{ name: "drop", potential: "L1", live: true, shape }];
    expect(first(sceneWith({ parts, barriers: [half] })).judgement.verdict).toBe("not-met");
  });

  test("a rail that keeps people back moves the limit; from it the reach counts (417.3.2)", () => {
    const rail = wall("rail", [1.5, -1], [1.5, 3], { protection: "less", bottom: 0.9, top: 1.1, keepsBack: true });
    const entered = { ...floor, entries: [[0.5, 1]] as const };
    const withRail = { surfaces: [entered], barriers: [rail] };
    expect(onePoint([2.8, 1, 1], withRail).least.value).toBeCloseTo(1.3 - 1.25, 9);
    expect(onePoint([2.7, 1, 1], withRail).least.value).toBeCloseTo(1.2 - 1.25, 9);
    expect(onePoint([1, 1, 2.45], withRail).judgement.verdict).toBe("not-met");
    // Passed, walked round, or without a place where people come in: nobody is kept back.
    expect(onePoint([2.8, 1, 1], { ...withRail, barriers: [{ ...rail, keepsBack: false }] }).judgement.verdict).toBe(
      "not-met",
    );
    expect(onePoint([2.8, 1, 1], { ...withRail, barriers: [{ ...rail, to: [1.5, 1.9] }] }).judgement.verdict).toBe(
      "not-met",
    );
    expect(onePoint([2.8, 1, 1], { ...withRail, surfaces: [floor] }).judgement.verdict).toBe("not-met");
  });

  test("upwards nothing of less than IP2X counts (417.3.3), and a top to stand on is a surface", () => {
    const low = wall("bench", [1, 0.5], [2, 0.5], { protection: "less", bottom: 0, top: 0.5 });
    expect(onePoint([1.5, 0.5, 2.9], { barriers: [low] }).judgement.verdict).toBe("met");
    const found = onePoint([1.5, 0.5, 2.9], { barriers: [{ ...low, platform: true }] });
    expect(found).toMatchObject({ judgement: { verdict: "not-met" }, least: { standing: { name: "bench" } } });
  });

  test("a corner of rails keeps people in a corner of an L-shaped floor", () => {
    const outline = [
      [0, 0],
      [4, 0],
      [4, 2],
      [2, 2],
      [2, 4],
      [0, 4],
    ] as const;
    const rails = [
      wall("a", [1, -1], [1, 1], { protection: "less", keepsBack: true }),
      wall("b", [1, 1], [-1, 1], { protection: "less", keepsBack: true }),
    ];
    const surfaces = [{ ...floor, outline, entries: [[0.2, 0.2]] as const }];
    expect(onePoint([2.4, 0.5, 1], { surfaces, barriers: rails }).least.value).toBeCloseTo(0.15, 6);
    expect(onePoint([2.4, 0.5, 1], { surfaces, barriers: rails.slice(0, 1) }).least.value).toBeLessThan(0);
  });
});

describe("pairs and the provision", () => {
  const two = (x: number, potential = "N", more: Partial<ReachScene> = {}) =>
    placingOutOfReach(
      sceneWith({
        parts: [pointPart("a", [0, -0.5, 1], "L1", false), pointPart("b", [x, -0.5, 1], potential, false)],
        ...more,
      }),
      reckon,
    );

  test("two parts in reach at different potentials, up to and with 2.5 m apart", () => {
    expect(two(2.4).arrangement.verdict).toBe("not-met");
    expect(two(2.5).arrangement.verdict).toBe("not-met");
    expect(two(2.51).pairs).toEqual([]);
    expect(two(2.4, "L1").pairs).toEqual([]);
    expect(two(2.9, "N", { objects: 0.5 }).arrangement.verdict).toBe("not-met");
  });

  test("a part out of reach makes no pair", () => {
    const parts = [pointPart("a", [1, 1, 2.6]), pointPart("b", [1, 1, 2.4], "earth", false)];
    const found = placingOutOfReach(sceneWith({ parts }), reckon);
    expect(found.pairs).toHaveLength(1);
    expect(found.pairs[0]?.judgement.verdict).toBe("met");
    expect(found.arrangement.verdict).toBe("met");
  });

  test("the arrangement may hold where the provision does not", () => {
    const parts = [pointPart("a", [1, 1, 4])];
    const verdicts = ([attendance]: [ReachScene["attendance"]]) => {
      const { arrangement, provision } = placingOutOfReach(sceneWith({ parts, attendance }), reckon);
      return [arrangement.verdict, provision.verdict];
    };
    expect(verdicts(["skilled-control"])).toEqual(["met", "met"]);
    expect(verdicts(["ordinary"])).toEqual(["met", "not-met"]);
    expect(verdicts([null])).toEqual(["met", "not-known"]);
  });
});
