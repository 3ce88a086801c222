/** Measures matching and comparison on many simulated pairs of inspections and prints the figures of results.md. */

import type { AgainstEarlier, ThenAndNow } from "@good-grounds/core";
import type { WholeInstallation } from "@good-grounds/inspection";
import { thenAndNow } from "@good-grounds/readings";
import { Chance } from "../../examples/simulate/chance.ts";
import type { TrueInstallation } from "../../examples/simulate/installation.ts";
import { type Altered, divided, extended, nameless, planted, renamed } from "./later.ts";
import { inspected, randomHouse } from "./random-house.ts";

/** Pairs of the main run of false alarms; every other run takes a quarter of them. */
const ALARM_PAIRS = Number(process.argv[2] ?? 2000);
const PAIRS = Math.ceil(ALARM_PAIRS / 4);

const first = (house: TrueInstallation, seed: number, more: object = {}) =>
  inspected(house, { day: "2021-10-05", seed: 2 * seed + 1, ...more });
const second = (house: TrueInstallation, seed: number, more: object = {}) =>
  inspected(house, { day: "2026-10-06", seed: 2 * seed + 2, ...more });

function against(now: WholeInstallation, past: WholeInstallation): AgainstEarlier {
  return (thenAndNow(now, [past]) as ThenAndNow).earlier[0] as AgainstEarlier;
}

function matching(name: string, alter: (house: TrueInstallation, chance: Chance) => Altered | null) {
  const count = {
    circuits: 0,
    right: 0,
    wrong: 0,
    unsettled: 0,
    missed: 0,
    divided: 0,
    dividedRight: 0,
    dividedWrong: 0,
    novel: 0,
    novelMatched: 0,
  };
  for (let seed = 1; seed <= PAIRS; seed++) {
    const house = randomHouse(seed);
    const later = alter(house, new Chance(seed * 7 + 5));
    if (later === null) continue;
    const result = against(second(later.house, seed), first(house, seed));
    const became = new Map<string, readonly string[]>();
    for (const one of result.circuits)
      for (const { id } of one.now)
        became.set(
          id,
          one.past.map(({ id: past }) => past),
        );
    const open = new Set(result.unsettled.flatMap(({ now }) => now.map(({ id }) => id)));
    const parts = [...later.was].filter(([id, was]) =>
      [...later.was].some(([other, list]) => other !== id && list[0] === was[0] && was.length > 0),
    );
    for (const [id, was] of later.was) {
      const found = became.get(id);
      if (was.length === 0) {
        count.novel++;
        if (found !== undefined) count.novelMatched++;
        continue;
      }
      if (parts.some(([part]) => part === id)) continue;
      count.circuits++;
      if (found?.length === 1 && found[0] === was[0]) count.right++;
      else if (found !== undefined) count.wrong++;
      else if (open.has(id)) count.unsettled++;
      else count.missed++;
    }
    const splits = result.circuits.filter(({ kind }) => kind !== "same");
    if (parts.length > 0) {
      count.divided++;
      const right = splits.some(
        ({ now, past }) =>
          now.length === parts.length &&
          past[0]?.id === parts[0]?.[1][0] &&
          parts.every(([id]) => now.some((one) => one.id === id)),
      );
      if (right) count.dividedRight++;
      count.dividedWrong += splits.length - (right ? 1 : 0);
    } else count.dividedWrong += splits.length;
  }
  console.log(name, JSON.stringify(count));
}

function alarms(name: string, how: { past?: object; now?: object }, pairs = PAIRS) {
  let [circuits, alarmed, readings, changed] = [0, 0, 0, 0];
  let supply = 0;
  for (let seed = 1; seed <= pairs; seed++) {
    const house = randomHouse(seed);
    const result = against(second(house, seed, how.now), first(house, seed, how.past));
    for (const one of result.circuits) {
      circuits++;
      const called = one.readings.filter(({ change }) => change === "up" || change === "down");
      readings += one.readings.length;
      changed += called.length;
      if (called.length > 0) alarmed++;
    }
    supply += [...result.supply, ...result.boards.flatMap((board) => board.readings)].filter(
      ({ change }) => change === "up" || change === "down",
    ).length;
  }
  console.log(
    name,
    JSON.stringify({
      pairs,
      circuits,
      alarmed,
      percent: +((100 * alarmed) / circuits).toFixed(3),
      readings,
      changed,
      supply,
    }),
  );
}

/** How often a planted fault is called a change of the circuit that has it, and how often of another. */
function power(name: string, fault: "joint" | "insulation", amount: number, supply: number) {
  const count = { planted: 0, found: 0, readings: 0, others: 0, alarmed: 0, supplyFound: 0 };
  for (let seed = 1; seed <= PAIRS; seed++) {
    const house = { ...randomHouse(seed), ze: 0.2 };
    const { house: later, hit } = planted(house, fault, amount, new Chance(seed * 11 + 3));
    const past = fault === "insulation" ? planted(house, fault, 200e6, new Chance(seed * 11 + 3)).house : house;
    const result = against(second({ ...later, ze: 0.2 + supply }, seed), first(past, seed));
    if (result.supply.some(({ reading, change }) => reading === "ze" && change !== "within")) count.supplyFound++;
    for (const { now, readings } of result.circuits) {
      const called = readings.filter(({ change }) => change === "up" || change === "down").length;
      if (now[0]?.id === hit) {
        count.planted++;
        count.readings += called;
        if (called > 0) count.found++;
      } else {
        count.others++;
        if (called > 0) count.alarmed++;
      }
    }
  }
  console.log(name, JSON.stringify(count));
}

matching("as it was", (house) => ({
  house,
  was: new Map(house.boards.flatMap(({ circuits }) => circuits.map(({ id }) => [id, [id]]))),
}));
matching("renamed, renumbered", renamed);
matching("nameless, renumbered", nameless);
matching("one split", divided);
matching("one split, all renamed", (house, chance) => {
  const one = divided(house, chance);
  if (one === null) return null;
  const { house: later, was } = renamed(one.house, chance);
  return { house: later, was: new Map([...was].map(([id, [past = ""]]) => [id, one.was.get(past) ?? []])) };
});
matching("one new, one gone", extended);
alarms("one instrument, temperature recorded", {}, ALARM_PAIRS);
alarms("two instruments", { past: { serial: "OTHER" } });
alarms("temperature not recorded, 5 and 25 °C", {
  past: { temperatureRecorded: false, celsius: 5 },
  now: { temperatureRecorded: false, celsius: 25 },
});
alarms("recorded 5 and 25 °C", { past: { celsius: 5 }, now: { celsius: 25 } });
alarms("accuracy not stated", { past: { accuracyStated: false }, now: { accuracyStated: false } });
for (const ohms of [0.1, 0.2, 0.3, 0.5]) power(`joint of ${ohms} Ω`, "joint", ohms, 0);
for (const megohms of [20, 8, 2]) power(`insulation from 200 MΩ to ${megohms} MΩ`, "insulation", megohms * 1e6, 0);
power("supply 0.2 Ω worse, joint of 0.3 Ω", "joint", 0.3, 0.2);
