/** How long the longest looks take, and how they grow: each at one size and at twice that size, turn and turn about. */
import { readFileSync } from "node:fs";
import { Reckoner } from "@good-grounds/core";
import { parseInspection, resolveInstallation } from "@good-grounds/inspection";
import { weigh } from "@good-grounds/judgement";
import { conformities, diagnoseRingReadings, lookAtOwnFigures, thenAndNow } from "@good-grounds/readings";
import type { Entry } from "../apps/field/src/record/entry.ts";
import { Record as JobRecord } from "../apps/field/src/record/record.ts";
import { isEntry, isWhole } from "../apps/field/src/record/sound.ts";
import { allOut } from "../outside/diagnosis/all-out.ts";
import { diagnosed } from "../outside/diagnosis/run-installation.ts";
import { manyCircuits } from "../outside/earlier/many-circuits.ts";
import { randomHouse } from "../outside/earlier/random-house.ts";
import { alike } from "../outside/own-figures/alike.ts";
import { placingOutOfReach } from "../packages/computations/src/provisions/reach/conclude.ts";
import { largeScene } from "../packages/computations/src/provisions/reach/example-scenes.ts";
import { assign } from "../packages/readings/src/earlier/match/assignment.ts";
import { median, type Row } from "./measure.ts";

const ROUNDS = 7;

/** Work at one size and at twice that size. What is prepared is not measured. */
function pair(what: string, size: number, unit: string, prepare: (size: number) => () => unknown): readonly Row[] {
  const works = [size, 2 * size].map((one) => ({ one, work: prepare(one), took: [] as number[] }));
  for (let round = 0; round < ROUNDS; round++)
    for (const { work, took } of works) {
      const start = performance.now();
      work();
      took.push(performance.now() - start);
    }
  const [small = Number.NaN, large = Number.NaN] = works.map(({ took }) => median(took));
  return [
    { what: `${what}, ${size} ${unit}`, value: small, unit: "ms" },
    { what: `${what}, ${2 * size} ${unit}`, value: large, unit: "ms", ratio: large / small },
  ];
}

/** A full square of weights that nobody can settle by looking. */
function square(size: number) {
  let state = 7;
  const edges = Array.from({ length: size * size }, (_, i) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return { row: Math.floor(i / size), column: i % size, weight: 0.1 + (8 * state) / 2 ** 32 };
  });
  return () => assign(size, size, edges);
}

function ring(points: number) {
  const ohm = (shown: number) => ({
    shown,
    resolution: 0.01,
    bound: "exact" as const,
    accuracy: { ofReading: 0.02, digits: 2 },
  });
  const shown = (i: number) => ohm(i % 3 === 0 ? 0 : i % 3 === 1 ? 300 : 0.2);
  const input = {
    r1: ohm(0),
    rn: ohm(500),
    r2: ohm(0.01),
    points: Array.from({ length: points }, (_, i) => ({ name: `p${i}`, lineNeutral: shown(i), lineCpc: shown(i) })),
    orderKnown: true,
    linePerMetre: { value: 0.00719, deviation: 0.00017 },
    neutralRatio: { value: 1, deviation: 0.02 },
    cpcRatio: { value: 1.633, deviation: 0.04 },
  };
  return () => diagnoseRingReadings(input);
}

function entries(count: number) {
  const record = new JobRecord();
  for (let i = 0; i < count; i++) {
    const path = `boards/b/circuits/c${i % 400}/readings/${i % 9}`;
    record.add(record.next(`tab-${i % 20}`, "p", "2026-11-01T10:00:00Z", path, i));
  }
  const all: readonly Entry[] = JSON.parse(JSON.stringify(record.entries()));
  return () => all.every(isEntry) && isWhole(all) && new JobRecord(all).size;
}

export function benchGrowth(): readonly Row[] {
  const house = randomHouse(1);
  return [
    ...pair("circuits of two jobs assigned, a full square", 150, "each way", square),
    ...pair("a ring whose readings nothing explains", 100, "points", ring),
    ...pair("a board with every circuit out", 200, "circuits", (count) => {
      const file = allOut(count);
      return () => diagnosed(file);
    }),
    ...pair("the private check, all circuits alike", 10, "boards of 400 circuits", (boards) => {
      const installation = alike(boards);
      return () => lookAtOwnFigures(installation, { ...installation.file, id: "earlier" });
    }),
    ...pair("two jobs matched by name", 200, "circuits on each of two boards", (each) => {
      const past = manyCircuits(house, { day: "2021-10-05", seed: 2 }, each);
      const now = manyCircuits(house, { day: "2026-10-06", seed: 3 }, each);
      return () => thenAndNow(now, [past]);
    }),
    ...pair("a copy looked at and taken in", 50_000, "entries", entries),
  ];
}

/** Looks that somebody waits for, the least of several times: others at work on the machine only add. */
export function benchLooks(): readonly Row[] {
  const parsed = parseInspection(readFileSync(new URL("../examples/farmhouse.json", import.meta.url), "utf8"));
  if (!parsed.ok) throw new Error("the farmhouse does not parse");
  const installation = resolveInstallation(parsed.file);
  const weighing = weigh(installation);
  const scene = largeScene();
  const least = (work: () => unknown) =>
    Math.min(
      ...Array.from({ length: 20 }, () => {
        const start = performance.now();
        work();
        return performance.now() - start;
      }),
    );
  return [
    {
      what: `how sure every finding is, ${installation.circuits.length} circuits`,
      value: least(() => conformities(weighing, installation)),
      unit: "ms",
      target: 30,
    },
    {
      what: "placing out of reach, 20 surfaces, 50 parts, 20 barriers",
      value: least(() => placingOutOfReach(scene, new Reckoner(true))),
      unit: "ms",
      target: 20,
    },
  ];
}
