import { describe, expect, test } from "vitest";
import {
  CABLE_CONSTRUCTIONS,
  type CableConstruction,
  LAYER_ROLES,
  LAYERED_CABLES,
  layersLeft,
  layersOf,
} from "./layers.ts";

describe("layers of cables", () => {
  test("every construction has its layers, from a conductor outwards", () => {
    expect(LAYERED_CABLES.map(({ construction }) => construction)).toEqual([...CABLE_CONSTRUCTIONS]);
    for (const { construction, layers } of LAYERED_CABLES) expect(layers[0]?.role, construction).toBe("conductor");
  });

  test("every live core has insulation, and cables for open routes end in a sheath", () => {
    for (const { construction, cores, layers } of LAYERED_CABLES) {
      if (cores === 0) continue;
      expect(
        layers.some(({ role }) => role === "insulation"),
        construction,
      ).toBe(true);
    }
    const last = (construction: CableConstruction) => layersOf(construction).layers.at(-1)?.role;
    expect(
      LAYERED_CABLES.filter(({ construction }) => last(construction) !== "sheath").map((one) => one.construction),
    ).toEqual(["single-insulated", "rubber-braided", "bare-cpc-sleeved"]);
  });

  test("taking more layers off never leaves more protection", () => {
    for (const cable of LAYERED_CABLES) {
      // From the outside inwards, by where each role last stands.
      const roles = LAYER_ROLES.filter((role) =>
        cable.layers.some((one) => one.role === role && one.around !== "protective conductor"),
      );
      const inwards = [...roles].sort(
        (a, b) =>
          cable.layers.findLastIndex(({ role }) => role === b) - cable.layers.findLastIndex(({ role }) => role === a),
      );
      const left = inwards.filter((role) => role !== "conductor").map((role) => layersLeft(cable, role));
      left.push(layersLeft(cable, "conductor"));
      for (let i = 1; i < left.length; i++) {
        expect(Number(left[i]?.basicInsulation), cable.construction).toBeLessThanOrEqual(
          Number(left[i - 1]?.basicInsulation),
        );
        expect(Number(left[i]?.mechanical), cable.construction).toBeLessThanOrEqual(Number(left[i - 1]?.mechanical));
      }
    }
  });

  test.each([
    ["flat-twin-and-earth", "sheath", true, true],
    ["flat-twin-and-earth", "insulation", true, false],
    ["flat-twin-and-earth", "conductor", false, false],
    ["flat-twin-and-earth", "identification", true, false],
    ["armoured-thermosetting", "armour", true, true],
    ["armoured-thermosetting", "bedding", true, false],
    ["mineral-bare", "sheath", true, true],
    ["mineral-bare", "insulation", false, false],
    ["mineral-covered", "armour", true, true],
    ["fire-performance-screened", "screen", true, false],
    ["rubber-braided", "bedding", true, false],
    ["split-concentric", "concentric", true, false],
    ["straight-concentric", "concentric", false, false],
    ["straight-concentric", "insulation", false, false],
    ["straight-concentric", "sheath", true, true],
    ["flexible-cord", "insulation", true, false],
    ["bare-cpc-sleeved", "identification", false, false],
  ] as const)(
    "%s down to its %s: basic insulation %s, mechanical layer %s",
    (construction, outermost, basic, mechanical) => {
      const left = layersLeft(layersOf(construction), outermost);
      expect([left?.basicInsulation, left?.mechanical]).toEqual([basic, mechanical]);
    },
  );

  test("a layer the cable has not got is no answer", () => {
    expect(layersLeft(layersOf("flat-twin-and-earth"), "armour")).toBeUndefined();
  });

  test("conductors without insulation stay where the cores are bared", () => {
    const left = layersLeft(layersOf("flat-twin-and-earth"), "insulation");
    expect(left?.layers.map(({ role }) => role)).toEqual(["conductor", "insulation", "conductor"]);
  });
});
