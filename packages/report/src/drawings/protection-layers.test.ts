import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { drawn, outside, overlap } from "../../../../outside/reports/drawn.ts";
import { type LayersDrawing, protectionLayers } from "./protection-layers.ts";

const TAILS: LayersDrawing = {
  state: "one-event",
  words: "holds until one foreseeable event",
  because: "",
  layers: [
    { name: "the covering of the live part", state: "one-event", words: "is one layer" },
    { name: "what is around it", state: "not-known", words: "" },
    { name: "distance or an obstacle", state: "gone", words: "keeps nobody off" },
  ],
};

/** Labels on labels, and things outside the frame. */
function faults(svg: string): readonly string[] {
  const read = drawn(svg);
  const labels = read.shapes.filter(({ name }) => name === "text");
  return [
    ...outside(read).map(({ name, words, box }) => `${name} ${words} leaves the frame: ${JSON.stringify(box)}`),
    ...labels.flatMap((one, i) =>
      labels.slice(i + 1).flatMap((other) => (overlap(one.box, other.box) ? [`${one.words} on ${other.words}`] : [])),
    ),
  ];
}

describe("layers between live metal and a person", () => {
  test("is well-formed and inside its frame, whatever is drawn", () => {
    const state = fc.constantFrom("holds", "one-event", "gone", "not-known");
    const hostile = fc.string({ unit: "binary", maxLength: 80 });
    const layer = fc.record({ name: hostile, state, words: hostile });
    fc.assert(
      fc.property(
        fc.record({ state, words: hostile, because: hostile, layers: fc.array(layer, { maxLength: 6 }) }),
        (layers) => {
          expect(faults(protectionLayers(layers as LayersDrawing))).toEqual([]);
        },
      ),
      { numRuns: 200 },
    );
  });

  test("says of every layer how it stands, in letters", () => {
    const words = drawn(protectionLayers(TAILS))
      .shapes.filter(({ name }) => name === "text")
      .map((one) => one.words);
    expect(words).toContain("1 the covering of the live part: one event");
    expect(words).toContain("2 what is around it: not known");
    expect(words).toContain("3 distance or an obstacle: gone");
    expect(words).toContain("Until one event");
  });

  test("tells the states apart by the line and not by a colour", () => {
    const of = (state: LayersDrawing["state"]) =>
      protectionLayers({ state, words: "", because: "", layers: [{ name: "cover", state, words: "" }] });
    const lines = (["holds", "one-event", "gone", "not-known"] as const).map(
      (state) => /<g data-state="[^"]*">.*?<\/g>/.exec(of(state))?.[0].replace(state, "") ?? state,
    );
    expect(new Set(lines).size).toBe(4);
    const colours = new Set(
      (["holds", "one-event", "gone", "not-known"] as const).flatMap((state) => of(state).match(/#[0-9a-f]{6}/g) ?? []),
    );
    // Ink, paper, copper and two greys of the house; no red, amber or green.
    expect([...colours].sort()).toEqual(["#1d2a44", "#8a92a3", "#a4541f", "#fbf8f2"]);
  });

  test("who does not see it hears the same", () => {
    const svg = protectionLayers(TAILS);
    expect(svg).toContain(
      "<desc>From the live part outwards: the covering of the live part: one event, is one layer; what is around it: not known; distance or an obstacle: gone, keeps nobody off.</desc>",
    );
  });

  test("why several come to one stands beside what they come to", () => {
    const svg = protectionLayers({ ...TAILS, because: "the door is no help" });
    expect(svg).toContain(">holds until one foreseeable event: the door is no help<");
    expect(svg).toContain("They come to one: the door is no help.</desc>");
  });

  test("nothing known of any layer is said to be so", () => {
    const svg = protectionLayers({ state: "not-known", words: "", because: "", layers: [] });
    expect(svg).toContain("Not known");
    expect(svg).not.toContain("Holds");
  });
});
