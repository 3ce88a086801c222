import { Reckoner, type Verdict } from "@good-grounds/core";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { givenFromText } from "../../given.ts";
import { fingerReach } from "./finger-reach.ts";
import { openingAccess } from "./opening-access.ts";
import { fingerPosture } from "./posture.ts";
import { sphereReach, straightReach } from "./straight-reach.ts";

const reckon = new Reckoner(false);

interface Case {
  readonly width: number;
  readonly height: number;
  readonly depth: number;
  readonly offset: number;
  readonly face: "front" | "top";
  readonly barrierBehind: "none" | "stops-finger" | "stops-wire";
}

const mm = (length: number) => `${length.toFixed(1)} mm`;

function concluded(lengths: Readonly<Record<string, string>>): Verdict {
  const made = givenFromText(openingAccess.needs, {
    shape: "rectangular",
    face: "front",
    barrierBehind: "none",
    ...lengths,
  });
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  return openingAccess.conclude(made.given, reckon).judgement.verdict;
}

function verdictOf({ width, height, depth, offset, face, barrierBehind }: Case): Verdict {
  const made = givenFromText(openingAccess.needs, {
    shape: "rectangular",
    width: mm(width),
    height: mm(height),
    depth: mm(depth),
    offset: mm(offset),
    face,
    easyReach: "yes",
    barrierBehind,
  });
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  return openingAccess.conclude(made.given, reckon).judgement.verdict;
}

const tenths = (most: number) => fc.integer({ min: 0, max: most * 10 }).map((n) => n / 10);
const cases = fc.record({
  width: tenths(70),
  height: tenths(70),
  depth: tenths(120),
  offset: fc.oneof(fc.constant(0), tenths(110)),
  face: fc.constantFrom("front" as const, "top" as const),
  barrierBehind: fc.constantFrom("none" as const, "stops-finger" as const, "stops-wire" as const),
});

/** Best first. */
const ORDER: readonly Verdict[] = ["met", "too-near", "not-met"];
const rank = (verdict: Verdict) => {
  const at = ORDER.indexOf(verdict);
  expect(at, verdict).toBeGreaterThanOrEqual(0);
  return at;
};

describe("safety is monotone: no worsening improves the verdict", () => {
  const worse: Readonly<Record<string, (one: Case, by: number) => Case>> = {
    "a wider opening": (one, by) => ({ ...one, width: one.width + by }),
    "a higher opening": (one, by) => ({ ...one, height: one.height + by }),
    "a live part less deep": (one, by) => ({ ...one, depth: Math.max(0, one.depth - by) }),
    "a live part less far aside": (one, by) => ({ ...one, offset: Math.max(0, one.offset - by) }),
    "the same opening in the top": (one) => ({ ...one, face: "top" }),
    "no barrier behind": (one) => ({ ...one, barrierBehind: "none" }),
    "a barrier that stops only the finger": (one) =>
      one.barrierBehind === "none" ? one : { ...one, barrierBehind: "stops-finger" },
  };
  test.each(Object.entries(worse))("%s", (_, change) => {
    fc.assert(
      fc.property(cases, tenths(40), (one, by) => {
        expect(rank(verdictOf(change(one, by)))).toBeGreaterThanOrEqual(rank(verdictOf(one)));
      }),
      { numRuns: 500 },
    );
  });
});

test("what a measured range settles, every value in it settles the same way", () => {
  const range = (most: number) =>
    fc.tuple(fc.integer({ min: 0, max: most * 10 }), fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 60 }));
  fc.assert(
    fc.property(range(70), range(70), range(110), range(100), ([w, wSpan, wAt], height, depth, offset) => {
      const written = ([from, span]: readonly [number, number, number]) =>
        `${mm(from / 10)} to ${mm((from + span) / 10)}`;
      const inside = ([from, span, at]: readonly [number, number, number]) => (from + Math.min(at, span)) / 10;
      const width = [w, wSpan, wAt] as const;
      const whole = concluded({
        width: written(width),
        height: written(height),
        depth: written(depth),
        offset: written(offset),
      });
      const one = concluded({
        width: mm(inside(width)),
        height: mm(inside(height)),
        depth: mm(inside(depth)),
        offset: mm(inside(offset)),
      });
      if (whole !== "too-near") expect(one).toBe(whole);
    }),
    { numRuns: 1000 },
  );
});

describe("reach of the probes", () => {
  test("what is certain is never more than what is possible", () => {
    fc.assert(
      fc.property(tenths(60), tenths(60), tenths(110), (a, b, offset) => {
        const behind = { narrow: Math.min(a, b), wide: Math.max(a, b), offset };
        for (const reach of [fingerReach(behind), sphereReach(behind), straightReach(2.5, 100, behind)]) {
          expect(reach.certain).toBeLessThanOrEqual(reach.possible);
          expect(reach.certain).toBeGreaterThanOrEqual(0);
        }
      }),
    );
  });

  test.each([
    ["the finger's own width passes", { narrow: 12, wide: 12, offset: 0 }, 80],
    ["a hair less does not", { narrow: 11.99, wide: 45, offset: 0 }, 6 - Math.sqrt(36 - 5.995 ** 2)],
    ["20 + √(60² − 36²)", { narrow: 20, wide: 20, offset: 30 }, 68],
    ["flat along the wall", { narrow: 20, wide: 20, offset: 54 }, 20],
    ["further than it bends", { narrow: 20, wide: 20, offset: 54.1 }, 0],
    ["the stop face passes", { narrow: 20, wide: 50, offset: 0 }, Number.POSITIVE_INFINITY],
    ["the stop face passes turned", { narrow: 49.6, wide: 49.6, offset: 0 }, Number.POSITIVE_INFINITY],
    ["the stop face is held", { narrow: 19.9, wide: 90, offset: 0 }, 80],
    ["the stop face is held the other way", { narrow: 40, wide: 49.9, offset: 0 }, 80],
  ])("finger: %s", (_, behind, depth) => {
    expect(fingerReach(behind).certain).toBeCloseTo(depth, 9);
  });

  test("the base leans along a long slot", () => {
    // Leaning 40° and bent by 50°: sideways 20 sin 40° − 6 ÷ cos 40° + 60 = 65 mm, 20 cos 40° = 15.3 mm deep.
    expect(fingerReach({ narrow: 12.3, wide: 45, offset: 64.9 }).possible).toBeGreaterThan(15.3);
  });

  test("no finger comes further than its length, however it leans", () => {
    fc.assert(
      fc.property(tenths(49), tenths(110), (wide, offset) => {
        const { possible } = fingerReach({ narrow: Math.min(wide, 19), wide, offset });
        expect(possible).toBeLessThanOrEqual(80);
        if (offset > 66) expect(possible).toBe(0);
      }),
    );
  });

  test("a 40 mm slot lets the 50 mm sphere in by 25 − √(25² − 20²) = 10 mm", () => {
    expect(sphereReach({ narrow: 40, wide: 100, offset: 0 }).certain).toBeCloseTo(10, 9);
    expect(sphereReach({ narrow: 50, wide: 50, offset: 0 }).certain).toBe(Number.POSITIVE_INFINITY);
  });

  test("a wire straight behind reaches its length, sideways at most the rest of the circle", () => {
    expect(straightReach(1, 100, { narrow: 1, wide: 1, offset: 0 })).toEqual({ certain: 100, possible: 100 });
    expect(straightReach(1, 100, { narrow: 0.9, wide: 60, offset: 0 }).possible).toBe(0);
    expect(straightReach(1, 100, { narrow: 3, wide: 3, offset: 60 })).toEqual({ certain: 0, possible: 80 });
    expect(straightReach(1, 100, { narrow: 35, wide: 35, offset: 60 }).certain).toBe(Number.POSITIVE_INFINITY);
  });
});

describe("posture for the drawing", () => {
  const tipOf = (inserted: number, [one, two]: readonly [number, number]): readonly [number, number] => {
    const rad = Math.PI / 180;
    const joint = inserted - 60;
    const aside = 30 * Math.sin(one * rad) + 30 * Math.sin((one + two) * rad);
    return [joint + 30 * Math.cos(one * rad) + 30 * Math.cos((one + two) * rad), aside - 6];
  };

  test("brings the tip to the place", () => {
    let found = 0;
    for (let depth = 10; depth <= 80; depth += 5) {
      for (let offset = 2; offset <= 52; offset += 5) {
        const posture = fingerPosture(depth, offset);
        if (posture === undefined) continue;
        found += 1;
        const [deep, aside] = tipOf(posture.inserted, posture.bends);
        expect(deep).toBeCloseTo(depth, 6);
        expect(aside).toBeCloseTo(offset, 6);
        expect(posture.inserted).toBeLessThanOrEqual(80);
      }
    }
    expect(found).toBeGreaterThan(60);
  });

  test("there is none beyond the finger", () => {
    expect(fingerPosture(81, 0)).toBeUndefined();
    expect(fingerPosture(70, 50)).toBeUndefined();
  });
});
