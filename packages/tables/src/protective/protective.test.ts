import {
  CONDUCTOR_MATERIALS,
  CPC_ARRANGEMENTS,
  type CpcArrangement,
  INSULATIONS,
  type Insulation,
  isKnown,
} from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { RESISTANCES } from "../conductors/index.ts";
import {
  buriedEarthingConductor,
  cpcBySelection,
  LIVE_K,
  LIVE_TEMPERATURE_SOURCE,
  liveConductorK,
  mainBondingOther,
  mainBondingPme,
  nextStandardSize,
  type ProtectiveMaterial,
  protectiveConductorK,
  STANDARD_SIZES,
  separateCpcFloor,
  supplementaryBond,
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

  test("steel in the ground is remembered: 10, 16 and 50 mm²", () => {
    const steel = (sheathed: boolean, mechanicallyProtected: boolean) =>
      buriedEarthingConductor({ sheathed, mechanicallyProtected }, "steel");
    expect([steel(true, true), steel(true, false), steel(false, false)].map(({ value }) => value)).toEqual([
      10, 16, 50,
    ]);
    expect(steel(true, true).detail.source.basis).toBe("memory");
    expect(buriedEarthingConductor({ sheathed: true, mechanicallyProtected: true }).detail.source.basis).toBe(
      "published",
    );
  });

  test("supplementary bonding: the smaller or half the protective conductor, 4 mm² where nothing protects it", () => {
    const exposed = (smallerCpc: number, mechanicallyProtected: boolean) =>
      supplementaryBond({ between: "exposed-and-exposed", smallerCpc, mechanicallyProtected }).value;
    const extraneous = (cpc: number, mechanicallyProtected: boolean) =>
      supplementaryBond({ between: "exposed-and-extraneous", cpc, mechanicallyProtected }).value;
    expect([exposed(1.5, true), exposed(1.5, false), exposed(6, true), exposed(6, false)]).toEqual([1.5, 4, 6, 6]);
    expect([extraneous(2.5, true), extraneous(2.5, false), extraneous(16, false)]).toEqual([1.25, 4, 8]);
    const pipes = (mechanicallyProtected: boolean) =>
      supplementaryBond({ between: "extraneous-and-extraneous", mechanicallyProtected });
    expect([pipes(true).value, pipes(false).value]).toEqual([2.5, 4]);
    expect(pipes(true)).toMatchObject({ detail: { source: { basis: "published" } } });
    expect(supplementaryBond({ between: "exposed-and-extraneous", cpc: 4, mechanicallyProtected: true })).toMatchObject(
      {
        detail: { source: { basis: "memory" } },
      },
    );
    for (const size of [0, -2.5, Number.NaN]) {
      const answer = supplementaryBond({
        between: "exposed-and-exposed",
        smallerCpc: size,
        mechanicallyProtected: false,
      });
      expect(isKnown(answer)).toBe(false);
    }
  });

  test("answers are made once for each size", () => {
    expect(cpcBySelection(70)).toBe(cpcBySelection(70));
    expect(mainBondingOther(16)).toBe(mainBondingOther(16));
    expect(mainBondingPme(25)).toBe(mainBondingPme(30));
  });

  test("standard sizes are those of BS EN 60228, and three larger ones", () => {
    expect([...STANDARD_SIZES]).toEqual([...RESISTANCES.map(([size]) => size), 400, 500, 630]);
  });

  test("the next standard size is the least one that is not smaller", () => {
    expect([0.1, 12.5, 16, 16.1, 630].map(nextStandardSize)).toEqual([0.5, 16, 16, 25, 630]);
    expect(nextStandardSize(631)).toBeUndefined();
    expect(isKnown(cpcBySelection(1300))).toBe(false);
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

  test("live conductors: by the temperatures that stand with them", () => {
    for (const { material, insulation, k, initial, final } of LIVE_K) {
      if (initial === null || final === null) continue;
      for (const [i, value] of k.entries()) {
        const calculated = heated(material, initial, final[i] ?? Number.NaN);
        expect(Math.abs(value - calculated), `${material} ${insulation} ${i}`).toBeLessThanOrEqual(1.1);
      }
    }
    expect(LIVE_TEMPERATURE_SOURCE.basis).toBe("memory");
  });

  test("remembered factors of aluminium live conductors follow from the temperatures of copper", () => {
    for (const { material, insulation, k } of LIVE_K) {
      if (material !== "aluminium") continue;
      const copper = LIVE_K.find((row) => row.material === "copper" && row.insulation === insulation);
      for (const [i, value] of k.entries()) {
        const calculated = heated("aluminium", copper?.initial ?? Number.NaN, copper?.final?.[i] ?? Number.NaN);
        expect(Math.abs(value - calculated), `${insulation} ${i}`).toBeLessThanOrEqual(1.1);
      }
    }
  });

  test("combinations without a row are not tabulated", () => {
    expect(isKnown(protectiveConductorK("copper", "70C-thermoplastic", "conduit", 16))).toBe(false);
    expect(isKnown(protectiveConductorK("copper", "mineral-bare", "in-cable", 16))).toBe(false);
  });
});

/** k up to 300 mm² and above, copied out apart from the rows under test; "m" where it is from memory. */
const COPIED = `
  43.1 live      copper    70C-thermoplastic 115 103
  43.1 live      copper    90C-thermoplastic 100 86
  43.1 live      copper    60C-rubber        141 141
  43.1 live      copper    90C-thermosetting 143 143
  43.1 live      copper    mineral-covered   115 115
  43.1 live      copper    mineral-bare      135 135
  43.1 live      aluminium 70C-thermoplastic 76  68  m
  43.1 live      aluminium 90C-thermoplastic 66  57  m
  43.1 live      aluminium 90C-thermosetting 94  94  m
  54.2 separate  copper    70C-thermoplastic 143 133
  54.2 separate  copper    90C-thermoplastic 143 133
  54.2 separate  copper    90C-thermosetting 176 176
  54.2 separate  aluminium 70C-thermoplastic 95  88
  54.2 separate  aluminium 90C-thermoplastic 95  88
  54.2 separate  aluminium 90C-thermosetting 116 116
  54.2 separate  steel     70C-thermoplastic 52  52
  54.2 separate  steel     90C-thermoplastic 52  52
  54.2 separate  steel     90C-thermosetting 64  64
  54.3 in-cable  copper    70C-thermoplastic 115 103
  54.3 in-cable  copper    90C-thermoplastic 100 86
  54.3 in-cable  copper    90C-thermosetting 143 143
  54.3 in-cable  aluminium 70C-thermoplastic 76  68  m
  54.3 in-cable  aluminium 90C-thermoplastic 66  57  m
  54.3 in-cable  aluminium 90C-thermosetting 94  94  m
  54.4 armour    aluminium 70C-thermoplastic 93  93
  54.4 armour    aluminium 90C-thermoplastic 85  85
  54.4 armour    aluminium 90C-thermosetting 85  85
  54.4 armour    steel     70C-thermoplastic 51  51
  54.4 armour    steel     90C-thermoplastic 46  46
  54.4 armour    steel     90C-thermosetting 46  46
  54.4 armour    lead      70C-thermoplastic 26  26
  54.4 armour    lead      90C-thermoplastic 23  23
  54.4 armour    lead      90C-thermosetting 23  23
  54.5 conduit   steel     70C-thermoplastic 47  47
  54.5 conduit   steel     90C-thermoplastic 44  44
  54.5 conduit   steel     90C-thermosetting 58  58
`
  .trim()
  .split("\n")
  .map((line) => line.trim().split(/ +/));

describe("factors k as copied", () => {
  const MATERIALS: readonly ProtectiveMaterial[] = ["copper", "aluminium", "steel", "lead"];
  const key = (arrangement: string, material: string, insulation: string) => `${arrangement} ${material} ${insulation}`;
  const copied = new Map(
    COPIED.map(([table, arrangement = "", material = "", insulation = "", ...rest]) => [
      key(arrangement, material, insulation),
      { table, k: [Number(rest[0]), Number(rest[1])], basis: rest[2] === "m" ? "memory" : "published" },
    ]),
  );

  test("every combination has the copied factor, table and basis, or none", () => {
    const ask = (arrangement: "live" | CpcArrangement, material: ProtectiveMaterial, insulation: Insulation) => {
      // A sheath is read from the same table as armour.
      const row = copied.get(key(arrangement === "sheath" ? "armour" : arrangement, material, insulation));
      for (const [i, area] of [300, 301].entries()) {
        const found =
          arrangement !== "live"
            ? protectiveConductorK(material, insulation, arrangement, area)
            : material === "copper" || material === "aluminium"
              ? liveConductorK(material, insulation, area)
              : undefined;
        const where = `${arrangement} ${material} ${insulation} ${area}`;
        if (row === undefined) expect(found === undefined || !isKnown(found), where).toBe(true);
        else {
          expect(found, where).toMatchObject({ value: row.k[i], detail: { source: { basis: row.basis } } });
          expect(found?.kind === "published" ? found.detail.row : "", where).toContain(`Table ${row.table}`);
        }
      }
    };
    for (const arrangement of ["live", ...CPC_ARRANGEMENTS] as const)
      for (const material of MATERIALS) for (const insulation of INSULATIONS) ask(arrangement, material, insulation);
    expect(copied.size).toBe(36);
  });

  test("bare mineral-insulated cable says that 115 holds where it can be touched", () => {
    expect(liveConductorK("copper", "mineral-bare", 4)).toMatchObject({
      detail: { source: { doubt: "115 where the bare sheath can be touched" } },
    });
  });

  test("a size that is none has no factor", () => {
    for (const area of [0, -1, Number.NaN]) {
      for (const material of CONDUCTOR_MATERIALS) {
        expect(isKnown(liveConductorK(material, "70C-thermoplastic", area))).toBe(false);
        expect(isKnown(protectiveConductorK(material, "70C-thermoplastic", "in-cable", area))).toBe(false);
      }
    }
  });
});
