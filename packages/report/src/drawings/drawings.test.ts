import { CLASSIFICATIONS, type Verdict } from "@good-grounds/core";
import { resolveInstallation } from "@good-grounds/inspection";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { arbitraryFile } from "../../../../outside/files/arbitrary-file.ts";
import { type Drawn, drawn, outside, overlap } from "../../../../outside/reports/drawn.ts";
import { EXAMPLE, inputOf } from "../../../../outside/reports/example.ts";
import { classificationMark } from "./classification-mark.ts";
import { lineDiagram } from "./line-diagram.ts";
import { marginBar } from "./margin-bar.ts";
import { drawing, text } from "./svg.ts";
import { timeCurrentCurve } from "./time-current.ts";

/** Labels that lie on another label, and things that leave the frame, in words. */
function faults(drawing: Drawn): readonly string[] {
  const labels = drawing.shapes.filter(({ name }) => name === "text");
  return [
    ...outside(drawing).map(({ name, words }) => `${name} ${words} leaves the frame`),
    ...labels.flatMap((one, i) =>
      labels.slice(i + 1).flatMap((other) => (overlap(one.box, other.box) ? [`${one.words} on ${other.words}`] : [])),
    ),
  ];
}

const VERDICTS: readonly Verdict[] = ["met", "not-met", "too-near", "not-known", "not-applicable"];
const hostile = fc.string({ unit: "binary", maxLength: 60 });
const magnitude = fc.double({ min: 0, max: 1e9, noNaN: true });

describe("the reader that checks the drawings", () => {
  const svg = (inner: string) => `<svg viewBox="0 0 100 20">${inner}</svg>`;

  test.each([
    ["a bare sign", svg('<text x="1" y="9" font-size="8">a & b</text>')],
    ["an element left open", svg("<g>")],
    ["elements crossed", svg("<g><a></g></a>")],
    ["an attribute twice", svg('<line x1="1" x1="2" x2="3" y1="4" y2="5"/>')],
    ["an attribute without quotation marks", svg("<g a=b/>")],
    ["a number that is none", svg('<circle cx="NaN" cy="1" r="1"/>')],
  ])("refuses %s", (_, wrong) => {
    expect(() => drawn(wrong)).toThrow();
  });

  test("finds what leaves the frame and labels that lie on each other", () => {
    const label = (x: number, words: string) => `<text x="${x}" y="12" font-size="8">${words}</text>`;
    expect(faults(drawn(svg(label(1, "one") + label(40, "two"))))).toEqual([]);
    expect(faults(drawn(svg(label(1, "one") + label(9, "two"))))).toEqual(["one on two"]);
    expect(faults(drawn(svg('<circle cx="1" cy="9" r="3"/>')))).toEqual(["circle  leaves the frame"]);
  });
});

describe("every drawing is well-formed, inside its frame, with labels apart", () => {
  test("whatever words it is given", () => {
    fc.assert(
      fc.property(hostile, hostile, (title, words) => {
        expect(() => drawn(drawing(10, 10, title, words, text(1, 9, words, { "data-words": words })))).not.toThrow();
      }),
    );
  });

  test.each(CLASSIFICATIONS)("the mark of %s", (classification) => {
    expect(faults(drawn(classificationMark(classification)))).toEqual([]);
  });

  test("margin bars of any values", () => {
    const relation = fc.constantFrom("at-most", "at-least", "agrees-with", "not-below", "not-above");
    fc.assert(
      fc.property(
        fc.tuple(magnitude, magnitude, magnitude),
        fc.tuple(magnitude, magnitude, magnitude),
        relation,
        fc.constantFrom(...VERDICTS),
        hostile,
        (values, limits, kind, verdict, words) => {
          const [low, value, high] = [...values].sort((a, b) => a - b) as [number, number, number];
          const [limitLow, limit, limitHigh] = [...limits].sort((a, b) => a - b) as [number, number, number];
          const bar = { value, low, high, limit, limitLow, limitHigh, relation: kind, verdict, words };
          expect(faults(drawn(marginBar(bar)))).toEqual([]);
          const open = { ...bar, high: Number.POSITIVE_INFINITY, limitHigh: Number.POSITIVE_INFINITY };
          expect(faults(drawn(marginBar(open)))).toEqual([]);
        },
      ),
    );
  });

  test("a margin bar shows the limit's own band", () => {
    const bar = { value: 5, low: 5, high: 5, limit: 4, relation: "at-most", verdict: "too-near", words: "w" } as const;
    const rectangles = (svg: string) => drawn(svg).shapes.filter(({ name }) => name === "rect").length;
    expect(rectangles(marginBar({ ...bar, limitLow: 4, limitHigh: 4 }))).toBe(0);
    expect(rectangles(marginBar({ ...bar, limitLow: 4, limitHigh: 6 }))).toBe(1);
  });

  test("time-current drawings of any device, conductor and fault current, with no label on any line", () => {
    const band = fc.tuple(magnitude, magnitude).map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const);
    fc.assert(
      fc.property(
        fc.array(fc.record({ seconds: fc.double({ min: 0.001, max: 1e5, noNaN: true }), band }), { maxLength: 6 }),
        fc.option(magnitude),
        fc.option(band),
        fc.option(fc.constantFrom(0.2, 0.4, 1, 5)),
        hostile,
        (points, withstand, faultCurrent, permittedTime, words) => {
          const drawing = drawn(
            timeCurrentCurve({
              circuit: [],
              device: words,
              conductor: words,
              points: points.map(({ seconds, band: [low, high] }) => ({ seconds, low, high, basis: "memory" })),
              withstand,
              faultCurrent,
              permittedTime,
            }),
          );
          expect(faults(drawing)).toEqual([]);
          const labels = drawing.shapes.filter(({ name }) => name === "text");
          for (const { name, box } of drawing.shapes) {
            if (name === "text") continue;
            // A line has no width of its own here.
            const thick = { ...box, right: box.right + 0.2, bottom: box.bottom + 0.2 };
            expect(labels.filter((label) => overlap(label.box, thick)).map((label) => label.words)).toEqual([]);
          }
        },
      ),
    );
  });

  test("a time-current drawing names all it shows and nothing else", () => {
    const curve = {
      circuit: [],
      device: "32 A type B",
      conductor: "protective conductor 1.5 mm²",
      points: [{ seconds: 0.1, low: 96, high: 160, basis: "derived" }],
      withstand: 29756,
      faultCurrent: [480, 1630],
      permittedTime: 0.4,
    } as const;
    const words = (svg: string) =>
      drawn(svg)
        .shapes.map((shape) => shape.words)
        .filter((one) => one !== "" && !/^[\d.]+ k?[As]$/.test(one));
    expect(words(timeCurrentCurve(curve))).toEqual([
      "32 A type B",
      "protective conductor 1.5 mm²",
      "prospective fault current, a band",
      "permitted disconnection time 0.4 s",
    ]);
    expect(words(timeCurrentCurve({ ...curve, withstand: null, faultCurrent: null, permittedTime: null }))).toEqual([
      "32 A type B",
    ]);
  });

  test("line diagrams of files of every shape", () => {
    fc.assert(
      fc.property(arbitraryFile, fc.constantFrom(...VERDICTS), (file, verdict) => {
        for (const svg of lineDiagram(resolveInstallation(file), { verdictOf: () => verdict }))
          expect(faults(drawn(svg))).toEqual([]);
      }),
      { numRuns: 50 },
    );
  });

  test("a line diagram with long names and boards fed from boards, twelve deep", () => {
    const file = JSON.parse(EXAMPLE);
    const [board] = file.boards;
    const long = "A name that is much longer than there is room for in any drawing of this kind whatsoever";
    const [circuit] = board.circuits;
    file.things = {};
    file.boards = Array.from({ length: 12 }, (_, i) => ({
      ...board,
      id: `b${i}`,
      name: long,
      fedFrom: i === 0 ? "supply" : { board: `b${i - 1}`, circuit: `c${i - 1}` },
      rcds: [],
      mainSwitch: { rated: "100.0000000001 A" },
      circuits: [
        {
          id: `c${i}`,
          designation: "1",
          description: long,
          device: circuit.device,
          rcd: { own: { residual: "99999 A" } },
        },
      ],
    }));
    Object.assign(file, { observations: [], inspected: [] });
    const pages = lineDiagram(inputOf(JSON.stringify(file)).installation, { verdictOf: () => "not-met" });
    expect(pages.join("")).toContain("…");
    for (const svg of pages) expect(faults(drawn(svg))).toEqual([]);
  });
});
