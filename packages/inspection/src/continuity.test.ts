import { describe, expect, test } from "vitest";
import { type CircuitForContinuity, continuityOf } from "./continuity.ts";

const shown = (text: string) => ({ shown: text });

/** What is said of a circuit with one reading: "proved" or why it is not. */
function saidOf(name: string, text: string, circuit: CircuitForContinuity = {}): string {
  const said = continuityOf({ ...circuit, readings: [{ name, value: shown(text) }] });
  return said.proved ? "proved" : said.why.kind;
}

/** 2.5/1.5 mm² over 30 m: (7.41 + 12.1) mΩ/m × 30 m = 0.585 Ω; the protective conductor alone 0.363 Ω. */
const SOCKETS = { cable: { material: "copper", line: "2.5 mm²", cpc: "1.5 mm²", length: "30 m" } };

describe("where the cable is not known", () => {
  test.each([
    ["r1r2", "0.40 Ω", "proved"],
    ["r1r2", "2.9 Ω", "proved"],
    ["r1r2", "3.0 Ω", "proved"],
    ["r1r2", "3.1 Ω", "too-high"],
    ["r1r2", "45 Ω", "too-high"],
    ["r1r2", "400 mΩ", "proved"],
    ["r1r2", "45000 mΩ", "too-high"],
    ["r1r2", "0.45 kΩ", "too-high"],
    ["r1r2", ">1999 Ω", "open"],
    ["r1r2", ">0.5 Ω", "open"],
    ["r1r2", "0.00 Ω", "nothing"],
    ["r1r2", "0 Ω", "nothing"],
    ["r1r2", "<0.05 Ω", "proved"],
    ["r1r2", "0.4 MΩx", "unreadable"],
    ["r2Only", "0.31 Ω", "proved"],
    ["r2Only", "2.0 Ω", "proved"],
    ["r2Only", "2.1 Ω", "too-high"],
    ["r2Only", "45 Ω", "too-high"],
    ["r2", "0.50 Ω", "proved"],
    ["r2", "45 Ω", "too-high"],
    ["r2", ">99.9 Ω", "open"],
    // None of these is a reading of the protective conductor.
    ["r1", "0.50 Ω", "none"],
    ["zs", "0.80 Ω", "none"],
  ])("%s of %s: %s", (name, text, said) => {
    expect(saidOf(name, text)).toBe(said);
  });
});

describe("where length and sizes are known the reading is held against them", () => {
  test.each([
    ["r1r2", "0.58 Ω", "proved"],
    ["r1r2", "0.30 Ω", "proved"],
    ["r1r2", "1.2 Ω", "proved"],
    // Low enough by itself, and far more than this cable has: something else is in the way.
    ["r1r2", "1.5 Ω", "more-than-cable"],
    ["r1r2", "45 Ω", "more-than-cable"],
    ["r1r2", "0.05 Ω", "less-than-cable"],
    ["r1r2", "<0.05 Ω", "less-than-cable"],
    ["r1r2", "<0.5 Ω", "proved"],
    ["r1r2", "0.00 Ω", "less-than-cable"],
    ["r1r2", "0 Ω", "less-than-cable"],
    ["r2Only", "0.36 Ω", "proved"],
    ["r2Only", "0.05 Ω", "less-than-cable"],
    ["r2Only", "0.9 Ω", "more-than-cable"],
  ])("%s of %s: %s", (name, text, said) => {
    expect(saidOf(name, text, SOCKETS)).toBe(said);
  });

  test("a long circuit is proved by a reading above the limit that fits it, and by no other", () => {
    // 1.5/1.0 mm² over 180 m: 30.2 mΩ/m × 180 m = 5.4 Ω.
    const long = { cable: { material: "copper", line: "1.5 mm²", cpc: "1 mm²", length: "180 m" } };
    expect(saidOf("r1r2", "5.4 Ω", long)).toBe("proved");
    expect(saidOf("r1r2", "5.4 Ω")).toBe("too-high");
    expect(saidOf("r1r2", "45 Ω", long)).toBe("more-than-cable");
  });

  test("a very short one is proved by a display of nothing that its length rounds to", () => {
    const short = { cable: { material: "copper", line: "10 mm²", cpc: "10 mm²", length: "1 m" } };
    expect(saidOf("r1r2", "0.00 Ω", short)).toBe("proved");
    expect(saidOf("r1r2", "0.00 Ω")).toBe("nothing");
  });

  test("a ring is held against a quarter of both conductors, its own end to end against the whole", () => {
    // 2.5/1.5 mm², 60 m round: (7.41 + 12.1) mΩ/m × 60 m / 4 = 0.29 Ω; r2 = 12.1 mΩ/m × 60 m = 0.73 Ω.
    const ring = { shape: "ring", cable: { ...SOCKETS.cable, length: "60 m" } };
    expect(saidOf("r1r2", "0.29 Ω", ring)).toBe("proved");
    expect(saidOf("r1r2", "1.1 Ω", ring)).toBe("more-than-cable");
    expect(saidOf("r2", "0.73 Ω", ring)).toBe("proved");
    expect(saidOf("r2", "2.0 Ω", ring)).toBe("more-than-cable");
  });

  test("aluminium has more", () => {
    // 16/16 mm² aluminium over 100 m: 2 × 1.91 mΩ/m × 100 m = 0.38 Ω; twice that of copper would be 0.46 Ω.
    const cable = { line: "16 mm²", cpc: "16 mm²", length: "100 m" };
    expect(saidOf("r1r2", "0.75 Ω", { cable: { ...cable, material: "aluminium" } })).toBe("proved");
    expect(saidOf("r1r2", "0.75 Ω", { cable: { ...cable, material: "copper" } })).toBe("more-than-cable");
  });

  test.each([
    ["a length within close limits", { length: { from: "25 m", to: "40 m" } }, "1.7 Ω", "more-than-cable"],
    ["a length of which little is known", { length: { from: "5 m", to: "3000 m" } }, "45 Ω", "too-high"],
    ["a length that was limited", { length: { notKnown: "limited", reason: "boxed in" } }, "45 Ω", "too-high"],
    ["armour for a protective conductor", { cpcArrangement: "armour" }, "0.05 Ω", "proved"],
    ["a length nobody can read", { length: "about 30" }, "45 Ω", "too-high"],
  ])("%s", (_, other, text, said) => {
    expect(saidOf("r1r2", text, { cable: { ...SOCKETS.cable, ...other } })).toBe(said);
  });
});

describe("several readings", () => {
  const of = (readings: Record<string, string>, points: readonly string[] = []) => {
    const said = continuityOf({
      readings: [
        ...Object.entries(readings).map(([name, text]) => ({ name, value: shown(text) })),
        ...points.map((text) => ({ name: "crossLineCpc", value: shown(text) })),
      ],
    });
    return said.proved ? "proved" : said.why.kind;
  };

  test("one that refutes is not outvoted, in whatever order", () => {
    expect(of({ r1r2: "0.40 Ω", r2Only: "0.31 Ω" })).toBe("proved");
    expect(of({ r1r2: "0.40 Ω", r2Only: ">99.9 Ω" })).toBe("open");
    expect(of({ r1r2: "45 Ω", r2Only: "0.31 Ω" })).toBe("too-high");
    expect(of({ r2: "0.50 Ω" }, ["0.30 Ω", ">99.9 Ω"])).toBe("open");
    expect(of({ r2: "0.50 Ω" }, ["0.30 Ω", "0.31 Ω"])).toBe("proved");
  });

  test("one that says nothing does not stand in the way of one that proves", () => {
    expect(of({ r1r2: "0.40 Ω", r2Only: "0.00 Ω" })).toBe("proved");
  });

  test("points of the ring alone prove nothing of its ends", () => {
    expect(of({}, ["0.30 Ω"])).toBe("none");
  });
});

test("what was not taken is told with its reason, and what is no reading is none", () => {
  expect(continuityOf({ readings: [{ name: "r1r2", value: { notTaken: "limited", reason: "no access" } }] })).toEqual({
    proved: false,
    why: { kind: "not-taken", name: "r1r2", reason: "no access" },
  });
  for (const value of [null, undefined, true, 3, "0.4 Ω", [], {}, { shown: 0.4 }])
    expect(continuityOf({ readings: [{ name: "r1r2", value }] })).toEqual({ proved: false, why: { kind: "none" } });
  expect(continuityOf({ readings: [] })).toEqual({ proved: false, why: { kind: "none" } });
});

test("what it was held against is told in ohms", () => {
  expect(continuityOf({ readings: [{ name: "r1r2", value: shown("45 Ω") }] })).toEqual({
    proved: false,
    why: { kind: "too-high", name: "r1r2", shown: "45 Ω", limit: 3 },
    refuted: [0],
  });
  const said = continuityOf({ ...SOCKETS, readings: [{ name: "r1r2", value: shown("45 Ω") }] });
  expect(said).toMatchObject({ proved: false, why: { kind: "more-than-cable", name: "r1r2", shown: "45 Ω" } });
  // BS EN 60228: (7.41 + 12.1) mΩ/m × 30 m.
  expect(said.proved ? 0 : "expected" in said.why ? said.why.expected[0] : 0).toBeCloseTo(0.585, 1);
});
