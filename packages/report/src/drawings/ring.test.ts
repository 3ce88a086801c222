import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { drawn, outside, overlap } from "../../../../outside/reports/drawn.ts";
import { ringDrawing } from "./ring.ts";
import type { RingDrawing, RingDrawingMark } from "./ring-drawing.ts";

function faults(svg: string): readonly string[] {
  const drawing = drawn(svg);
  const labels = drawing.shapes.filter(({ name }) => name === "text");
  return [
    ...outside(drawing).map(({ name, words }) => `${name} ${words} leaves the frame`),
    ...labels.flatMap((one, i) =>
      labels.slice(i + 1).flatMap((other) => (overlap(one.box, other.box) ? [`${one.words} on ${other.words}`] : [])),
    ),
  ];
}

const hostile = fc.string({ unit: "binary", maxLength: 60 });
const part = fc.double({ min: -0.1, max: 1.1 });
const ohms = fc.oneof(
  fc.double({ min: 0, max: 2, noNaN: true }),
  fc.double({ min: 0, max: 1e6, noNaN: true }),
  fc.constantFrom(Number.POSITIVE_INFINITY, Number.NaN),
);
const reading = fc.record({ shown: ohms, expected: ohms, deviation: fc.double({ min: 0, max: 1, noNaN: true }) });
const mark: fc.Arbitrary<RingDrawingMark> = fc.oneof(
  fc.record({
    kind: fc.constantFrom("break" as const, "joint" as const, "crossed" as const),
    low: part,
    value: part,
    high: part,
    label: hostile,
  }),
  fc.record({ kind: fc.constant("bridge" as const), from: part, to: part, label: hostile }),
  fc.record({
    kind: fc.constantFrom("spur" as const, "point" as const),
    point: fc.integer({ min: 0, max: 20 }),
    label: hostile,
  }),
);
const ring: fc.Arbitrary<RingDrawing> = fc.record({
  circuit: hostile,
  words: hostile,
  metres: fc.double({ min: -10, max: 1e12 }),
  points: fc.array(fc.record({ name: hostile, at: part, lineNeutral: reading, lineCpc: reading }), { maxLength: 70 }),
  marks: fc.array(mark, { maxLength: 6 }),
});

const even = (shown: number, expected = shown) => ({ shown, expected, deviation: 0.01 });
const SOCKETS = ["1", "2", "3", "4"];
const BRIDGED: RingDrawing = {
  circuit: "sockets, ground floor",
  words: "interconnection, 97 %",
  metres: 62,
  points: SOCKETS.map((name, i) => ({
    name,
    at: (i + 1) / 5,
    lineNeutral: even(0.2),
    lineCpc: even(0.3, i === 2 ? 0.2 : 0.3),
  })),
  marks: [{ kind: "bridge", from: 0.2, to: 0.8, label: "cable of 9 m" }],
};

describe("drawing of a ring", () => {
  test("is well-formed, inside its frame, with labels apart, whatever is drawn", () => {
    fc.assert(
      fc.property(ring, (drawing) => {
        expect(faults(ringDrawing(drawing))).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });

  test("names points, marks and readings, and says them to who does not see it", () => {
    const svg = ringDrawing(BRIDGED);
    const words = drawn(svg).shapes.map((shape) => shape.words);
    for (const one of [...SOCKETS, "cable of 9 m", "about 62 m", "line to cpc"]) expect(words).toContain(one);
    expect(svg).toContain("<title>Ring of sockets, ground floor: interconnection, 97 %</title>");
    expect(svg).toContain("3: line to neutral 0.20 Ω read, 0.20 Ω expected, line to cpc 0.30 Ω read, 0.20 Ω expected");
  });

  test("a reading away from what is expected is larger than the others", () => {
    const radii = (drawing: RingDrawing) =>
      drawn(ringDrawing(drawing))
        .shapes.filter(({ name, box }) => name === "circle" && box.top > 150)
        .map(({ box }) => box.right - box.left);
    const usual = Math.min(...radii(BRIDGED));
    expect(radii(BRIDGED).filter((radius) => radius > usual + 1)).toHaveLength(1);
  });

  test("an open reading stands above the scale, and a fault further along stands further to the right", () => {
    const open = {
      ...BRIDGED,
      points: BRIDGED.points.map((point) => ({ ...point, lineCpc: even(Number.POSITIVE_INFINITY) })),
    };
    expect(drawn(ringDrawing(open)).shapes.map((shape) => shape.words)).toContain("open");
    const left = (value: number) => {
      const marks = [{ kind: "joint", low: value - 0.05, value, high: value + 0.05, label: "joint" }] as const;
      const { shapes } = drawn(ringDrawing({ ...BRIDGED, marks }));
      return shapes.find((shape) => shape.words === "joint")?.box.left ?? Number.NaN;
    };
    expect(left(0.7)).toBeGreaterThan(left(0.3) + 100);
  });

  test("points beyond what a drawing holds are said to be left out", () => {
    const points = Array.from({ length: 70 }, (_, i) => ({
      name: `${i}`,
      at: i / 71,
      lineNeutral: even(0.2),
      lineCpc: even(0.3),
    }));
    expect(ringDrawing({ ...BRIDGED, points })).toContain("10 further points are not drawn.");
  });
});
