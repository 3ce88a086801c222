import type { AgainstEarlier, MatchedCircuits } from "@good-grounds/core";
import type { WholeInstallation } from "@good-grounds/inspection";
import { thenAndNow } from "@good-grounds/readings";
import { describe, expect, test } from "vitest";
import { Chance } from "../../examples/simulate/chance.ts";
import type { TrueInstallation } from "../../examples/simulate/installation.ts";
import { planted } from "./later.ts";
import { inspected, randomHouse } from "./random-house.ts";

const first = (house: TrueInstallation, seed: number, more: object = {}) =>
  inspected(house, { day: "2021-10-05", seed: 2 * seed, ...more });
const second = (house: TrueInstallation, seed: number, more: object = {}) =>
  inspected(house, { day: "2026-10-06", seed: 2 * seed + 1, ...more });
const against = (now: WholeInstallation, past: WholeInstallation) =>
  thenAndNow(now, [past]).earlier[0] as AgainstEarlier;
const changed = ({ readings }: MatchedCircuits) =>
  readings.filter(({ change }) => change === "up" || change === "down");

// Few houses here, so that the tests are quick; measure.ts runs thousands and results.md has the figures.
const SEEDS = Array.from({ length: 30 }, (_, i) => 9000 + i);

describe("changes of simulated houses", () => {
  test.each([
    ["with one instrument", {}, {}],
    ["with two instruments", { serial: "OTHER" }, {}],
    ["at 5 and at 25 °C", { celsius: 5 }, { celsius: 25 }],
    [
      "at 5 and at 25 °C that nobody wrote down",
      { celsius: 5, temperatureRecorded: false },
      { celsius: 25, temperatureRecorded: false },
    ],
  ])("a house tested again %s has next to none", (_, past, now) => {
    let [circuits, alarmed] = [0, 0];
    for (const seed of SEEDS) {
      const house = randomHouse(seed);
      const result = against(second(house, seed, now), first(house, seed, past));
      circuits += result.circuits.length;
      alarmed += result.circuits.filter((one) => changed(one).length > 0).length;
    }
    expect(circuits).toBeGreaterThan(300);
    expect(alarmed).toBeLessThanOrEqual(0.01 * circuits);
  });

  test("a bad joint is found in R1+R2 and in the circuit's part of Zs, while the supply has changed as well", () => {
    let [found, others, supply] = [0, 0, 0];
    for (const seed of SEEDS) {
      const house = { ...randomHouse(seed), ze: 0.2 };
      const later = planted(house, "joint", 0.4, new Chance(seed));
      const result = against(second({ ...later.house, ze: 0.45 }, seed), first(house, seed));
      for (const one of result.circuits) {
        const readings = changed(one);
        if (one.now[0]?.id !== later.hit) others += readings.length;
        else if (
          ["r1r2", "zs"].every((name) => readings.some(({ reading, change }) => reading === name && change === "up"))
        )
          found++;
      }
      if (result.supply.some(({ reading, change }) => reading === "ze" && change === "up")) supply++;
    }
    expect(found).toBeGreaterThanOrEqual(0.95 * SEEDS.length);
    expect(supply).toBeGreaterThanOrEqual(0.95 * SEEDS.length);
    expect(others).toBeLessThanOrEqual(2);
  });

  test("insulation that has fallen by a hundred is found, by five it is within the weather", () => {
    for (const [megohms, expected] of [
      [2, "down"],
      [40, "within"],
    ] as const) {
      for (const seed of SEEDS.slice(0, 10)) {
        const house = randomHouse(seed);
        const [past, now] = [200e6, megohms * 1e6].map((ohms) => planted(house, "insulation", ohms, new Chance(seed)));
        if (past === undefined || now === undefined) throw new Error("two houses");
        const { circuits } = against(second(now.house, seed), first(past.house, seed));
        const hit = circuits.find((one) => one.now[0]?.id === now.hit);
        for (const { reading, change } of hit?.readings ?? [])
          if (reading.startsWith("insulation")) expect(change).toBe(expected);
      }
    }
  });

  test("bands of the next insulation reading hold as often as they say", () => {
    const chance = new Chance(31);
    let [asked, held] = [0, 0];
    for (let k = 0; k < 150; k++) {
      const house = randomHouse(700 + (k % 5));
      const board = house.boards[0] as TrueInstallation["boards"][number];
      const [start, slope] = [chance.between(Math.log(20e6), Math.log(200e6)), chance.between(-0.25, 0.05)];
      const at = (years: number) => Math.exp(chance.normal(start + slope * years, 0.6));
      const one = (day: string, years: number, more: object = {}) => {
        const circuits = [{ ...(board.circuits[1] as (typeof board.circuits)[number]), insulation: at(years) }];
        return inspected({ ...house, boards: [{ ...board, circuits }] }, { day, seed: k, ...more });
      };
      const { trends } = thenAndNow(one("2026-10-06", 10, { nextOn: "2031-10-06" }), [
        one("2016-10-06", 0),
        one("2021-10-06", 5),
      ]);
      const next = at(15);
      for (const { reading, projected } of trends.filter(({ reading: name }) => name === "insulationLiveEarth")) {
        const last = projected.at(-1);
        if (last === undefined) continue;
        asked++;
        expect(reading).toBe("insulationLiveEarth");
        if (next >= last.low && next <= last.high) held++;
      }
    }
    expect(asked).toBeGreaterThan(120);
    // 95 % of bands that know nothing better than the assumption; five standard deviations of 150 below.
    expect(held / asked).toBeGreaterThan(0.86);
  });
});
