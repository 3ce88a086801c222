import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  ACCESS_LETTERS,
  ACCESS_REQUIREMENTS,
  accessProbe,
  accessRequirement,
  armsReach,
  bathroomCode,
  ipCode,
  OBJECT_NUMERALS,
  objectProtection,
  REACH_DIRECTIONS,
  WATER_NUMERALS,
  waterProtection,
} from "./index.ts";

describe("probes", () => {
  test.each([
    ["A", "sphere", 50, null, 50, "published"],
    ["B", "jointed finger", 12, 80, 10, "published"],
    ["C", "rod", 2.5, 100, 3, "memory"],
    ["D", "wire", 1, 100, 1, "published"],
  ] as const)("%s: %s of %d mm, length %s mm, %i N", (letter, shape, diameter, length, newtons, basis) => {
    const probe = accessProbe(letter);
    expect(probe).toMatchObject({ letter, shape, diameter, length, force: { newtons }, source: { basis } });
    expect(probe.force.source.basis).toBe("memory");
  });

  test("a later letter has a thinner probe", () => {
    for (let i = 1; i < ACCESS_LETTERS.length; i++) {
      const [wide, thin] = [ACCESS_LETTERS[i - 1], ACCESS_LETTERS[i]];
      if (wide !== undefined && thin !== undefined)
        expect(accessProbe(thin).diameter).toBeLessThan(accessProbe(wide).diameter);
    }
  });
});

describe("numerals", () => {
  test.each([
    [1, 50, "A", 50, "published"],
    [2, 12.5, "B", 30, "published"],
    [3, 2.5, "C", 3, "memory"],
    [4, 1, "D", 1, "published"],
  ] as const)("IP%iX keeps out %d mm, probe %s, %i N", (numeral, diameter, probe, newtons, basis) => {
    expect(objectProtection(numeral)).toMatchObject({
      numeral,
      diameter,
      probe,
      force: { newtons },
      source: { basis },
    });
  });

  test("dust numerals are from memory and have no test object", () => {
    for (const numeral of [5, 6] as const)
      expect(objectProtection(numeral)).toMatchObject({
        numeral,
        diameter: null,
        force: null,
        source: { basis: "memory" },
      });
  });

  test("water numerals 1 to 8 are from memory; 6.3 mm at 5, 12.5 mm at 6, 1 m for 30 minutes at 7", () => {
    expect(WATER_NUMERALS).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
    for (const numeral of WATER_NUMERALS)
      expect(waterProtection(numeral)).toMatchObject({ numeral, source: { basis: "memory" } });
    expect([waterProtection(2), waterProtection(3)].map((row) => row?.withstands.match(/\d+°/)?.[0])).toEqual([
      "15°",
      "60°",
    ]);
    const words = (numeral: number) => waterProtection(numeral)?.withstands;
    expect([words(5), words(6), words(7)].join()).toMatch(/6\.3 mm.*12\.5 mm.*1 m.*30 minutes/);
    for (const numeral of [0, 9, 1.5, Number.NaN]) expect(waterProtection(numeral)).toBeUndefined();
  });
});

describe("IP codes", () => {
  const parts = (code: string) => {
    const found = ipCode(code);
    if (found === undefined) return undefined;
    const numeral = (part: { readonly numeral: number } | 0 | null) =>
      part === null || part === 0 ? part : part.numeral;
    return [numeral(found.objects), numeral(found.water), found.access?.letter ?? null];
  };

  test.each([
    ["IP2X", [2, null, "B"]],
    ["IPXXB", [null, null, "B"]],
    ["IP4X", [4, null, "D"]],
    ["IPXXD", [null, null, "D"]],
    ["IP44", [4, 4, "D"]],
    ["IPX4", [null, 4, null]],
    ["IP20", [2, 0, "B"]],
    ["IP00", [0, 0, null]],
    ["IP20C", [2, 0, "C"]],
    ["IP0XB", [0, null, "B"]],
    ["IP67", [6, 7, "D"]],
    ["IPXX", [null, null, null]],
  ] as const)("%s", (code, expected) => {
    expect(parts(code)).toEqual(expected);
  });

  test.each(["", "IP", "IP2", "ip2x", "IP 2X", "IP7X", "IP29", "IP2XE", "IP2XBB", "XIP2X", "IP2X "])(
    "%j is none",
    (code) => {
      expect(ipCode(code)).toBeUndefined();
    },
  );

  test("a greater first numeral or letter never claims a wider probe", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...OBJECT_NUMERALS),
        fc.constantFrom(...OBJECT_NUMERALS),
        fc.constantFrom("", ...ACCESS_LETTERS),
        (a, b, letter) => {
          const [small, great] = [ipCode(`IP${Math.min(a, b)}X${letter}`), ipCode(`IP${Math.max(a, b)}X${letter}`)];
          expect(great?.access?.diameter).toBeLessThanOrEqual(small?.access?.diameter ?? Number.NaN);
          if (letter !== "") expect(small?.access?.diameter).toBeLessThanOrEqual(accessProbe(letter).diameter);
        },
      ),
    );
  });
});

describe("regulations and reach", () => {
  test.each([
    ["416.2.1", ["IPXXB", "IP2X"], "published"],
    ["416.2.2", ["IPXXD", "IP4X"], "published"],
    ["416.2.3", [], "memory"],
    ["416.2.4", ["IPXXB", "IP2X"], "published"],
    ["521.10.1", ["IPXXD", "IP4X"], "published"],
    ["526.5", [], "published"],
    ["417.2", [], "memory"],
    ["417.3", [], "memory"],
  ] as const)("%s names %j", (regulation, codes, basis) => {
    expect(accessRequirement(regulation)).toMatchObject({ codes, source: { basis } });
  });

  test("a regulation stands once, its codes are IP codes that claim the same probe, and others have no row", () => {
    const named = ACCESS_REQUIREMENTS.map(({ regulation }) => regulation);
    expect(new Set(named).size).toBe(named.length);
    for (const { codes } of ACCESS_REQUIREMENTS)
      expect(new Set(codes.map((code) => ipCode(code)?.access?.letter)).size).toBe(codes.length === 0 ? 0 : 1);
    expect(accessRequirement("411.3.3")).toBeUndefined();
  });

  test("bathrooms: IPX7, IPX4, IPX4 and IPX5 for jets, from memory", () => {
    const zones = ["zone 0", "zone 1", "zone 2", "water jets"] as const;
    expect(zones.map((zone) => bathroomCode(zone).code)).toEqual(["IPX7", "IPX4", "IPX4", "IPX5"]);
    for (const zone of zones) {
      expect(bathroomCode(zone).source.basis).toBe("memory");
      expect(ipCode(bathroomCode(zone).code)).toBeDefined();
    }
  });

  test("arm's reach in metres, from memory and in doubt", () => {
    expect(REACH_DIRECTIONS.map((direction) => [direction, armsReach(direction).metres])).toEqual([
      ["upward", 2.5],
      ["sideways", 1.25],
      ["below-edge", 0.75],
      ["between-parts", 2.5],
    ]);
    for (const direction of REACH_DIRECTIONS)
      expect(armsReach(direction).source).toMatchObject({ basis: "memory", doubt: expect.any(String) });
  });
});
