import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { Draws } from "./draws.ts";
import { FAULTS } from "./faults/index.ts";
import { drawHouse } from "./house/draw-house.ts";
import { permittedPerMetre, place } from "./house/house.ts";
import { carries, longestByDrop, permittedExternal, permittedLoop } from "./house/limits.ts";
import { careOf, soundJob } from "./job.ts";
import { crossConnected, endToEnd, lineAndCpc } from "./site/dead.ts";
import { greatestLoop, loopAtBoard, loopAtOrigin, loopAtPoint } from "./site/loop.ts";
import { Meter } from "./site/meter.ts";
import { wilson } from "./wilson.ts";

const HOUSES = Array.from({ length: 60 }, (_, i) => drawHouse(new Draws(`house-${i}`)));
const cold = () => 20;

describe("what is drawn by name", () => {
  test("is the same every time and does not depend on what else is drawn", () => {
    const draws = new Draws("seed");
    expect(draws.part("a")).toBe(new Draws("seed").part("a"));
    expect(draws.of("x").part("a")).not.toBe(draws.part("a"));
  });

  test("is spread evenly, and the bell has its deviation", () => {
    const parts = Array.from({ length: 4000 }, (_, i) => new Draws(`s${i}`).part("a"));
    for (const tenth of [0, 1, 2, 3, 4, 5, 6, 7, 8, 9])
      expect(Math.abs(parts.filter((part) => Math.floor(part * 10) === tenth).length - 400)).toBeLessThan(80);
    const bells = Array.from({ length: 4000 }, (_, i) => new Draws(`b${i}`).bell("a", 2, 6));
    expect(Math.sqrt(bells.reduce((sum, one) => sum + one * one, 0) / 4000)).toBeCloseTo(2, 0);
  });
});

describe("houses", () => {
  test("are sound: loops disconnect in time when hot, cables carry their devices, drops keep to their limits", () => {
    for (const house of HOUSES) {
      if (house.earthing !== "TT") expect(loopAtOrigin(house, "E", cold)).toBeLessThanOrEqual(permittedExternal(house));
      expect(house.volts).toBeGreaterThan(216.2);
      expect(house.volts).toBeLessThan(253);
      for (const circuit of house.circuits) {
        const hot = greatestLoop(house, circuit, () => (circuit.cable.insulation === "90C-thermosetting" ? 90 : 70));
        if (house.earthing === "TT") expect(hot * 0.1).toBeLessThanOrEqual(50);
        else expect(hot).toBeLessThanOrEqual(permittedLoop(circuit));
        expect(carries(circuit)).toBe(true);
        expect(circuit.metres).toBeLessThanOrEqual(longestByDrop(circuit) * 1.000001);
        expect(Math.min(circuit.insulation.live, circuit.insulation.earth)).toBeGreaterThan(1);
      }
    }
  });

  test("are of every kind: earthing, boards, shapes, spurs, pipes", () => {
    expect(new Set(HOUSES.map(({ earthing }) => earthing)).size).toBe(3);
    expect(new Set(HOUSES.map(({ boards }) => boards.length))).toEqual(new Set([1, 2, 3]));
    const devices = new Set(HOUSES.flatMap(({ circuits }) => circuits.map(({ device }) => device.standard)));
    expect([...devices].sort()).toEqual(["BS 1361", "BS 3036", "BS 3871", "BS 88-2.2", "BS EN 60898", "BS EN 61009"]);
    const cables = new Set(HOUSES.flatMap(({ circuits }) => circuits.map(({ cable }) => cable.kind)));
    expect([...cables].sort()).toEqual(["armoured", "flat-twin-and-cpc", "mineral", "singles"]);
    expect(HOUSES.some(({ parts }) => parts.some(({ of, b }) => of !== "supply" && b === place.mainEarth))).toBe(true);
  });

  test("a sound ring without a spur reads by the formulae of its conductors", () => {
    let seen = 0;
    for (const house of HOUSES)
      for (const ring of house.circuits) {
        const legs = house.parts.filter(({ of, warms, a }) => of === ring.id && warms && a.includes(".L."));
        const spur = new Set(legs.map(({ a }) => a)).size < legs.length;
        if (ring.shape !== "ring" || spur) continue;
        seen += 1;
        const [r1, rn, r2] = (["L", "N", "E"] as const).map((one) => endToEnd(house, ring, one, cold)) as [
          number,
          number,
          number,
        ];
        for (const [point] of ring.points.entries()) {
          // Line and neutral of one size: a quarter of their sum all the way round, but for the tolerance of the two.
          expect(crossConnected(house, ring, "N", point, cold)).toBeCloseTo((r1 + rn) / 4, 2);
          const cpc = crossConnected(house, ring, "E", point, cold);
          expect(cpc).toBeGreaterThan(((r1 * r2) / (r1 + r2)) * 0.98);
          expect(cpc).toBeLessThan(((r1 + r2) / 4) * 1.02);
        }
      }
    expect(seen).toBeGreaterThan(20);
  });

  test("a ring is as long as is said of it, a spur not counted", () => {
    for (const house of HOUSES)
      for (const ring of house.circuits) {
        if (ring.shape !== "ring") continue;
        const perMetre = endToEnd(house, ring, "L", cold) / ring.metres / permittedPerMetre(ring.cable.line);
        // Wires are up to 4 % below the maximum; joints add up to 2 mΩ at each point.
        expect(perMetre).toBeGreaterThan(0.959);
        expect(perMetre).toBeLessThan(
          1 + (0.002 * (ring.points.length + 1)) / (ring.metres * permittedPerMetre(ring.cable.line)),
        );
      }
  });

  test("Zs is the loop at the board, the pole of the device and R1+R2", () => {
    for (const house of HOUSES)
      for (const circuit of house.circuits) {
        const piped = house.parts.some(({ of, b }) => of === circuit.id && b === place.mainEarth);
        if (circuit.shape === "ring" || piped || circuit.board !== "main") continue;
        const point = circuit.points.length - 1;
        const zs = loopAtPoint(house, circuit, point, "E", cold);
        const before = loopAtBoard(house, "main", "E", cold);
        const pole = zs - before - lineAndCpc(house, circuit, point, false, cold);
        const { amperes } = circuit.device;
        expect(pole).toBeGreaterThan(0.3 / amperes ** 2);
        expect(pole).toBeLessThan(4 / amperes ** 2 + 0.005);
      }
  });
});

describe("meters", () => {
  test("stay within what their makers state, the rounding of the display included", () => {
    for (let i = 0; i < 300; i++) {
      const meter = new Meter(new Draws(`meter-${i}`));
      const { percent, digits } = meter.make.accuracy.continuity;
      for (const ohms of [0.07, 0.44, 1.3, 9.2]) {
        const shown = Number(meter.ohms("continuity", ohms, "x").split(" ")[0]);
        expect(Math.abs(shown - ohms)).toBeLessThanOrEqual((ohms * percent) / 100 + digits * 0.01 + 1e-9);
      }
    }
  });

  test("tell the end of their range", () => {
    const meter = new Meter(new Draws("end"));
    expect(meter.ohms("continuity", Number.POSITIVE_INFINITY, "x")).toBe(">99.9 Ω");
    expect(meter.megohms(5000, "x")).toMatch(/^>/);
  });
});

describe("faults", () => {
  test("there are at least 30 kinds, each with a place in some house and with a trace unless it is hidden", () => {
    expect(FAULTS.length).toBeGreaterThanOrEqual(30);
    expect(new Set(FAULTS.map(({ id }) => id)).size).toBe(FAULTS.length);
    for (const fault of FAULTS) {
      const planted = HOUSES.flatMap((house, i) => fault.plant(house, new Draws(`fault-${i}`)) ?? []);
      expect(planted.length, fault.id).toBeGreaterThan(0);
      for (const { at } of planted) expect(at.length, fault.id).toBeGreaterThan(0);
    }
  });

  test("the same job is written the same way twice", () => {
    expect(soundJob("twice", careOf(2)).file).toEqual(soundJob("twice", careOf(2)).file);
  });
});

test("Wilson's interval as tabulated", () => {
  // 10 of 100: 5.52 % to 17.44 %.
  const [low, high] = wilson(10, 100);
  expect(low).toBeCloseTo(0.0552, 4);
  expect(high).toBeCloseTo(0.1744, 4);
});

test("nothing of the simulator comes from what judges readings, or from another simulator", () => {
  const folder = new URL(".", import.meta.url);
  const allowed = /^(@good-grounds\/(assembly|computations|core|inspection)|vitest|node:[a-z]+|\.{1,2}\/.*)$/;
  const files = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".ts"));
  expect(files.length).toBeGreaterThan(20);
  for (const name of files) {
    const text = readFileSync(new URL(name, folder), "utf8");
    for (const [, from = ""] of text.matchAll(/^(?:import|export)\b[^"]*? from "([^"]+)"/gm)) {
      expect(from, name).toMatch(allowed);
      const outside = from.startsWith(".") && !new URL(from, new URL(name, folder)).href.startsWith(folder.href);
      if (outside) expect(["../network/ngspice.ts", "../tools.ts"], name).toContain(from);
    }
  }
});
