import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { drawn, outside, overlap } from "../../../../outside/reports/drawn.ts";
import { cableLayers } from "./cable-layers.ts";
import type { CableDrawing, DrawnLayer } from "./cable-section.ts";
import { type ProbeDrawing, probeDrawing } from "./probe.ts";

/** Labels on labels and things outside the frame, in words. */
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

const length = (most: number) => fc.double({ min: 0, max: most, noNaN: true });
const hostile = fc.string({ unit: "binary", maxLength: 60 });

const FINGER = { name: "jointed finger", diameter: 12, links: [20, 30, 30], stop: [50, 20] as const };
const WIRE = { name: "1 mm wire", diameter: 1, links: [100], stop: [35, 35] as const };

const REACHED: ProbeDrawing = {
  opening: 20,
  depth: 55,
  offset: 30,
  probe: FINGER,
  posture: { inserted: 78, bends: [12, 66] },
  limit: [
    [0, 80],
    [30, 70],
    [60, 20],
  ],
  barrier: false,
  verdict: "not-met",
  words: "The bent finger reaches the live part.",
};

describe("section of an opening", () => {
  test("is well-formed and inside its frame, whatever is drawn", () => {
    fc.assert(
      fc.property(
        fc.record({
          opening: length(400),
          depth: length(400),
          offset: fc.oneof(fc.constant(0), length(200)),
          inserted: length(80),
          bends: fc.tuple(length(90), length(90)),
          probe: fc.constantFrom(FINGER, WIRE),
          enters: fc.boolean(),
          limit: fc.array(fc.tuple(length(100), fc.oneof(length(110), fc.constant(Number.POSITIVE_INFINITY))), {
            maxLength: 5,
          }),
          barrier: fc.boolean(),
          words: hostile,
        }),
        ({ inserted, bends, enters, ...rest }) => {
          const posture = enters ? { inserted, bends } : null;
          const svg = probeDrawing({ ...rest, posture, verdict: "met" });
          expect(outside(drawn(svg)).map(({ name, words, box }) => `${name} ${words} ${JSON.stringify(box)}`)).toEqual(
            [],
          );
        },
      ),
    );
  });

  test("keeps its labels apart in usual cases", () => {
    expect(faults(probeDrawing(REACHED))).toEqual([]);
    expect(faults(probeDrawing({ ...REACHED, offset: 0, posture: { inserted: 55, bends: [0, 0] } }))).toEqual([]);
    expect(faults(probeDrawing({ ...REACHED, probe: WIRE, opening: 3, offset: 0, limit: [[0, 100]] }))).toEqual([]);
  });

  test("says its dimensions, what it shows and that a barrier stands there", () => {
    const svg = probeDrawing({ ...REACHED, barrier: true });
    for (const words of ["depth 55 mm", "20 mm", "30 mm", "live", REACHED.words, "A barrier stands before it."]) {
      expect(svg).toContain(words);
    }
  });

  test("a probe that stands deeper is drawn deeper", () => {
    const right = (inserted: number) => {
      const { shapes } = drawn(probeDrawing({ ...REACHED, offset: 0, posture: { inserted, bends: [0, 0] } }));
      return Math.max(
        ...shapes.filter(({ name, box }) => name === "path" && box.bottom - box.top < 60).map(({ box }) => box.right),
      );
    };
    expect(right(50)).toBeGreaterThan(right(20) + 20);
  });
});

const ROLES: readonly DrawnLayer["role"][] = [
  "conductor",
  "insulation",
  "bedding",
  "screen",
  "concentric",
  "armour",
  "sheath",
  "identification",
];
const layers = fc.array(
  fc.record({
    role: fc.constantFrom(...ROLES),
    of: hostile,
    around: fc.constantFrom("live cores" as const, "protective conductor" as const, "all" as const),
    tube: fc.boolean(),
    gone: fc.boolean(),
  }),
  { maxLength: 9 },
);

const FLAT: CableDrawing = {
  name: "flat cable",
  shape: "flat",
  cores: 2,
  layers: [
    { role: "conductor", of: "copper", around: "live cores" },
    { role: "insulation", of: "thermoplastic", around: "live cores" },
    { role: "conductor", of: "copper, bare", around: "protective conductor" },
    { role: "sheath", of: "thermoplastic", around: "all" },
  ],
};

describe("section of a cable", () => {
  test("is well-formed, inside its frame, with labels apart, whatever the layers", () => {
    fc.assert(
      fc.property(
        fc.record({
          name: hostile,
          shape: fc.constantFrom("flat" as const, "round" as const),
          cores: fc.integer({ min: 0, max: 6 }),
          layers,
        }),
        (cable) => {
          expect(faults(cableLayers(cable))).toEqual([]);
        },
      ),
    );
  });

  test("names every layer once", () => {
    const { shapes } = drawn(cableLayers(FLAT));
    const words = shapes.filter(({ name }) => name === "text").map((one) => one.words);
    expect(words).toEqual([
      "flat cable",
      "sheath",
      "thermoplastic",
      "insulation",
      "thermoplastic",
      "conductor",
      "copper",
      "protective conductor",
      "copper, bare",
    ]);
  });

  test("a layer that is gone is a broken outline and says so", () => {
    const whole = cableLayers(FLAT);
    const stripped = cableLayers({
      ...FLAT,
      layers: FLAT.layers.map((one) => ({ ...one, gone: one.role === "sheath" })),
    });
    expect(whole).not.toContain("stroke-dasharray");
    expect(stripped).toContain("stroke-dasharray");
    expect(stripped).toContain("sheath, gone");
  });
});
