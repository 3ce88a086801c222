import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { armsReachDrawing, type ReachDrawing, type ReachState } from "./arms-reach.ts";

const room: ReachDrawing = {
  title: "Switchroom",
  view: "plan",
  low: [-2, -2],
  high: [8, 5],
  reach: [
    [
      [-1.25, 0],
      [-1.25, 2],
    ],
    [
      [-1.25, 2],
      [0, 3.25],
    ],
  ],
  surfaces: [
    {
      name: "floor",
      corners: [
        [0, 0],
        [5, 0],
        [5, 2],
        [0, 2],
      ],
    },
  ],
  barriers: [
    {
      name: "screen",
      closes: true,
      corners: [
        [5.2, 0],
        [5.2, 3],
      ],
    },
    {
      name: "rail",
      closes: false,
      corners: [
        [0, 2.2],
        [4, 2.2],
      ],
    },
  ],
  parts: [
    { name: "bar", corners: [[1, 1]], state: "within", clearance: -0.5 },
    { name: "stud", corners: [[1.1, 1.1]], state: "too-near", clearance: 0.02 },
    { name: "wire", corners: [[7, 4]], state: "out", clearance: 1.2 },
    { name: "link", corners: [[1.2, 1]], state: "not-known", clearance: 0.3 },
  ],
  dimensions: [{ from: [0, -1], to: [5, -1], words: "5.00 m" }],
};

interface Word {
  readonly words: string;
  readonly box: readonly [number, number, number, number];
}

/** The words of a drawing with the room they take, and a check on the way that tags close in order. */
function wordsOf(svg: string): readonly Word[] {
  const open: string[] = [];
  for (const [, close, name = "", , self] of svg.matchAll(/<(\/?)([a-z]+)((?:\s[\w-]+="[^"<>]*")*)(\/?)>/g)) {
    if (close === "/") expect(open.pop()).toBe(name);
    else if (self !== "/") open.push(name);
  }
  expect(open).toEqual([]);
  expect(svg.replaceAll(/<\/?[a-z]+(?:\s[\w:-]+="[^"<>]*")*\/?>/g, "")).not.toMatch(/[<>]|&(?!amp;|lt;|gt;|quot;)/);
  return [...svg.matchAll(/<text ([^>]*)>([^<]*)<\/text>/g)].map(([, attributes = "", words = ""]) => {
    const of = (name: string) => new RegExp(`\\b${name}="([^"]*)"`).exec(attributes)?.[1] ?? "";
    const [x, y, size] = [Number(of(" x") || of("x")), Number(of("y")), Number(of("font-size"))];
    const width = [...words].length * size * 0.5;
    const left = of("text-anchor") === "middle" ? x - width / 2 : of("text-anchor") === "end" ? x - width : x;
    return { words, box: [left, y - size * 0.7, left + width, y + size * 0.1] };
  });
}

function checkDrawing(svg: string): void {
  const [width, height] = (/viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? []).slice(1).map(Number) as [number, number];
  const words = wordsOf(svg);
  for (const { box } of words) {
    expect(Math.min(box[0], box[1])).toBeGreaterThanOrEqual(0);
    expect(box[2]).toBeLessThanOrEqual(width);
    expect(box[3]).toBeLessThanOrEqual(height);
  }
  for (const [i, one] of words.entries()) {
    for (const other of words.slice(i + 1)) {
      const [a, b] = [one.box, other.box];
      const apart = a[2] <= b[0] || b[2] <= a[0] || a[3] <= b[1] || b[3] <= a[1];
      expect(apart, `"${one.words}" and "${other.words}" overlap`).toBe(true);
    }
  }
  for (const [, value = ""] of svg.matchAll(/\b(?:x|y|cx|cy|x1|x2|y1|y2)="([^"]*)"/g)) {
    expect(Number.isFinite(Number(value)), value).toBe(true);
    expect(Number(value)).toBeGreaterThanOrEqual(-1);
    expect(Number(value)).toBeLessThanOrEqual(Math.max(width, height));
  }
  expect(svg).not.toMatch(/NaN|Infinity|undefined/);
}

describe("drawing of arm's reach", () => {
  test("is well formed, stays in its frame and keeps its words apart", () => {
    checkDrawing(armsReachDrawing(room));
    checkDrawing(armsReachDrawing({ ...room, view: "elevation" }));
  });

  test("says in words, for readers who do not see it, how each part stands", () => {
    const svg = armsReachDrawing(room);
    const description = /<desc>([^<]*)<\/desc>/.exec(svg)?.[1];
    expect(description).toContain("bar: within reach, 0.50 m inside");
    expect(description).toContain("wire: out of reach, 1.20 m outside");
    expect(description).toContain("link: not known.");
    expect(description).toContain("Barrier rail, less than IP2X");
    expect(svg).toContain("<title>Switchroom, plan</title>");
    expect(svg).toContain('role="img"');
  });

  test("every part has its number beside its mark and in the key, with the same words", () => {
    const words = wordsOf(armsReachDrawing(room)).map((one) => one.words);
    for (const number of ["1", "2", "3", "4"]) expect(words.filter((one) => one === number)).toHaveLength(2);
    expect(words).toContain("stud: too near to call, 0.02 m outside");
  });

  test("states differ by shape: without colour no two marks are drawn alike", () => {
    const key = (state: ReachState) =>
      armsReachDrawing({ ...room, parts: [{ name: "x", corners: [], state, clearance: 0 }] })
        .replaceAll(/(?:fill|stroke)="#[^"]*"/g, "")
        .split(">x: ")[0]
        ?.split("<text")
        .at(-2)
        ?.replace(/^[^>]*>[^>]*>/, "");
    const marks = (["out", "within", "too-near", "not-known"] as const).map(key);
    expect(new Set(marks).size).toBe(4);
  });

  test("any names and places: still a drawing", () => {
    const at = fc.tuple(fc.double({ min: -5, max: 10, noNaN: true }), fc.double({ min: -5, max: 10, noNaN: true }));
    const part = fc.record({
      name: fc.string({ unit: "binary", maxLength: 60 }),
      corners: fc.array(at, { minLength: 1, maxLength: 4 }),
      state: fc.constantFrom<ReachState>("out", "within", "too-near", "not-known"),
      clearance: fc.double({ min: -5, max: 50, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(part, { maxLength: 9 }), (parts) => checkDrawing(armsReachDrawing({ ...room, parts }))),
      { numRuns: 200 },
    );
  });
});
