import { isKnown } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import {
  buriedEarthingConductor,
  cMin,
  cpcBySelection,
  DIVERSITY,
  DIVERSITY_LOADS,
  DIVERSITY_PREMISES,
  EDITION,
  editionsOn,
  INSTRUMENTS,
  insulationTestVoltage,
  liveConductorK,
  mainBondingOther,
  mainBondingPme,
  permittedInsulation,
  permittedRcdTime,
  protectiveConductorK,
  RECOMMENDED_INTERVALS,
  STANDARD_SIZES,
  separateCpcFloor,
  supplyVoltageLimits,
  typicalZe,
} from "./index.ts";

describe("protective conductors", () => {
  test.each([
    [4, 4],
    [16, 16],
    [25, 16],
    [35, 16],
    [50, 25],
    [70, 35],
    [95, 50],
    [120, 70],
  ])("line conductor of %i mm² asks %i mm² by selection", (line, cpc) => {
    expect(cpcBySelection(line).value).toBe(cpc);
  });

  test.each([
    [25, 10],
    [35, 10],
    [50, 16],
    [70, 25],
    [95, 25],
    [120, 35],
    [150, 35],
    [185, 50],
  ])("supply neutral of %i mm² asks %i mm² of main bonding under PME", (neutral, bond) => {
    expect(mainBondingPme(neutral).value).toBe(bond);
  });

  test.each([
    [6, 6],
    [10, 6],
    [16, 10],
    [25, 16],
    [35, 25],
    [70, 25],
  ])("earthing conductor of %i mm² asks %i mm² of main bonding elsewhere", (earthing, bond) => {
    expect(mainBondingOther(earthing).value).toBe(bond);
  });

  test("selection and bonding never fall as the conductor grows", () => {
    for (let i = 1; i < STANDARD_SIZES.length; i++) {
      const [small, large] = [STANDARD_SIZES[i - 1] as number, STANDARD_SIZES[i] as number];
      for (const rule of [cpcBySelection, mainBondingPme, mainBondingOther])
        expect(rule(large).value).toBeGreaterThanOrEqual(rule(small).value);
    }
  });

  test("floors for separate and buried conductors", () => {
    expect([separateCpcFloor(true).value, separateCpcFloor(false).value]).toEqual([2.5, 4]);
    const buried = (sheathed: boolean, mechanicallyProtected: boolean) =>
      buriedEarthingConductor({ sheathed, mechanicallyProtected }).value;
    expect([buried(true, true), buried(true, false), buried(false, true), buried(false, false)]).toEqual([
      2.5, 16, 25, 25,
    ]);
  });

  test("nothing is tabulated for sizes that are none", () => {
    for (const size of [0, -1, Number.NaN])
      for (const rule of [cpcBySelection, mainBondingPme, mainBondingOther]) expect(isKnown(rule(size))).toBe(false);
  });
});

/**
 * k from the heat a conductor takes up: √(Qc (B + 20) ÷ ρ20 · ln((B + θf) ÷ (B + θi))), with the constants of IEC 60724
 * and BS 7454: Qc in J/K·mm³, B in K, ρ20 in Ω·mm.
 */
const METAL = {
  copper: { heat: 3.45e-3, zero: 234.5, resistivity: 17.241e-6 },
  aluminium: { heat: 2.5e-3, zero: 228, resistivity: 28.264e-6 },
  steel: { heat: 3.8e-3, zero: 202, resistivity: 138e-6 },
  lead: { heat: 1.45e-3, zero: 230, resistivity: 214e-6 },
} as const;
const heated = (metal: keyof typeof METAL, from: number, to: number) => {
  const { heat, zero, resistivity } = METAL[metal];
  return Math.sqrt(((heat * (zero + 20)) / resistivity) * Math.log((zero + to) / (zero + from)));
};

describe("factors k follow from the material", () => {
  test.each([
    ["copper", "70C-thermoplastic", "in-cable", 70, 160],
    ["copper", "90C-thermoplastic", "in-cable", 90, 160],
    ["copper", "90C-thermosetting", "in-cable", 90, 250],
    ["copper", "70C-thermoplastic", "separate", 30, 160],
    ["copper", "90C-thermosetting", "separate", 30, 250],
    ["aluminium", "70C-thermoplastic", "in-cable", 70, 160],
    ["aluminium", "90C-thermosetting", "in-cable", 90, 250],
    ["aluminium", "70C-thermoplastic", "separate", 30, 160],
    ["steel", "70C-thermoplastic", "separate", 30, 160],
    ["steel", "70C-thermoplastic", "armour", 60, 200],
    ["steel", "90C-thermosetting", "armour", 80, 200],
    ["lead", "70C-thermoplastic", "sheath", 60, 200],
    ["steel", "70C-thermoplastic", "conduit", 50, 160],
  ] as const)("%s, %s, %s: from %i to %i °C", (material, insulation, arrangement, from, to) => {
    expect(
      Math.abs(protectiveConductorK(material, insulation, arrangement, 16).value - heated(material, from, to)),
    ).toBeLessThanOrEqual(1.1);
  });

  test.each([
    ["copper", "70C-thermoplastic", 16, 70, 160],
    ["copper", "70C-thermoplastic", 400, 70, 140],
    ["copper", "60C-rubber", 16, 60, 200],
    ["copper", "90C-thermosetting", 16, 90, 250],
  ] as const)("live %s, %s, %i mm²: from %i to %i °C", (material, insulation, area, from, to) => {
    expect(Math.abs(liveConductorK(material, insulation, area).value - heated(material, from, to))).toBeLessThanOrEqual(
      1.1,
    );
  });

  test("combinations without a row are not tabulated", () => {
    expect(isKnown(protectiveConductorK("copper", "70C-thermoplastic", "conduit", 16))).toBe(false);
    expect(isKnown(protectiveConductorK("copper", "mineral-bare", "in-cable", 16))).toBe(false);
  });
});

describe("RCDs, insulation and supply", () => {
  test("times by product standard", () => {
    const times = (standard: "BS EN 61008" | "BS 4293" | "BS 7288", delay: "general" | "S") => {
      const { max, min } = permittedRcdTime({ standard, delay, multiple: 1 });
      return [max.value, min?.value ?? null];
    };
    expect([
      times("BS EN 61008", "general"),
      times("BS EN 61008", "S"),
      times("BS 4293", "general"),
      times("BS 7288", "general"),
    ]).toEqual([
      [0.3, null],
      [0.5, 0.13],
      [0.2, null],
      [0.2, null],
    ]);
    expect(isKnown(permittedRcdTime({ standard: "BS 4293", delay: "S", multiple: 1 }).max)).toBe(false);
  });

  test("insulation limits and test voltages of Table 64", () => {
    expect([
      permittedInsulation("SELV/PELV").value,
      permittedInsulation("up to 500 V").value,
      permittedInsulation("above 500 V").value,
    ]).toEqual([5e5, 1e6, 1e6]);
    expect([
      insulationTestVoltage("SELV/PELV"),
      insulationTestVoltage("up to 500 V"),
      insulationTestVoltage("above 500 V"),
    ]).toEqual([250, 500, 1000]);
  });

  test("supply figures", () => {
    expect([typicalZe("TN-C-S").value, typicalZe("TN-S").value]).toEqual([0.35, 0.8]);
    expect(isKnown(typicalZe("IT"))).toBe(false);
    expect(supplyVoltageLimits.least.value).toBeCloseTo(230 * 0.94, 9);
    expect(supplyVoltageLimits.greatest.value).toBeCloseTo(230 * 1.1, 9);
    expect(230 * cMin.value).toBeCloseTo(218.5, 9);
  });
});

describe("diversity, intervals, law and editions", () => {
  test("every load has an allowance for every kind of premises but household motors, and no allowance exceeds the load", () => {
    for (const load of DIVERSITY_LOADS) {
      for (const premises of DIVERSITY_PREMISES) {
        const allowance = DIVERSITY[load][premises];
        if (allowance === null) {
          expect(`${load} ${premises}`).toBe("motors household");
          continue;
        }
        const parts =
          allowance.rule === "whole"
            ? [allowance.part]
            : allowance.rule === "first-then"
              ? [allowance.rest]
              : [allowance.largest, allowance.second, allowance.rest];
        for (const part of parts) expect(part > 0 && part <= 1).toBe(true);
      }
    }
  });

  test("intervals run from short to long, and laws give at most five years", () => {
    for (const { years } of RECOMMENDED_INTERVALS) expect(years[0]).toBeLessThanOrEqual(years[1]);
    expect(RECOMMENDED_INTERVALS.find(({ premises }) => premises === "industrial")?.years).toEqual([3, 3]);
    for (const { years, inForce } of INSTRUMENTS) {
      expect(years).toBe(5);
      for (const { from } of inForce) expect(from).toMatch(/^20\d\d-\d\d-\d\d$/);
    }
  });

  test("editions on a day: one, two in the overlap, the new one alone afterwards", () => {
    const on = (day: string) => editionsOn(day).map(({ id }) => id);
    expect(on("2026-04-14")).toEqual(["2018+A2+A3"]);
    expect(on("2026-04-15")).toEqual(["2018+A2+A3", "2018+A4"]);
    expect(on("2026-10-14")).toEqual(["2018+A2+A3", "2018+A4"]);
    expect(on("2026-10-15")).toEqual(["2018+A4"]);
    expect(on("2021-01-01")).toEqual([]);
  });

  test("an FI alone is unsatisfactory under the older edition only; C1 and C2 always are", () => {
    expect(EDITION["2018+A4"].unsatisfactory).toEqual(["C1", "C2"]);
    expect(EDITION["2018+A2+A3"].unsatisfactory).toEqual(["C1", "C2", "FI"]);
  });
});
