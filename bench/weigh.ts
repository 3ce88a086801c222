/** Weighing with grounds and verdicts only, against a flat loop without grounds, over the same resolved installations. */
import { readFileSync } from "node:fs";
import { type Installation, parseInspection, resolveInstallation } from "@good-grounds/inspection";
import { weigh } from "@good-grounds/judgement";
import { flatWeigh } from "./flat-loop.ts";
import { median, type Row } from "./measure.ts";

/** Installations as many as fill a round of a few hundred milliseconds. */
const COPIES = 60;
const ROUNDS = 25;

function installations(): readonly Installation[] {
  return ["terraced-house", "farmhouse", "workshop"].flatMap((name) => {
    const parsed = parseInspection(readFileSync(new URL(`../examples/${name}.json`, import.meta.url), "utf8"));
    if (!parsed.ok) throw new Error(`${name} does not parse`);
    const { file } = parsed;
    return Array.from({ length: COPIES }, () => resolveInstallation(file));
  });
}

export function benchWeigh(): readonly Row[] {
  const all = installations();
  const circuits = all.reduce((sum, one) => sum + one.circuits.length, 0);
  let kept: unknown;
  const run = {
    flat: () => {
      for (const one of all) kept = flatWeigh(one);
    },
    verdicts: () => {
      for (const one of all) kept = weigh(one, false);
    },
    grounds: () => {
      for (const one of all) kept = weigh(one, true);
    },
  };
  const times: Record<keyof typeof run, number[]> = { flat: [], verdicts: [], grounds: [] };
  for (let round = 0; round < ROUNDS + 5; round++) {
    for (const name of ["flat", "verdicts", "grounds"] as const) {
      const start = performance.now();
      run[name]();
      const took = performance.now() - start;
      if (round >= 5) times[name].push((took * 1000) / circuits);
    }
  }
  if (kept === undefined) throw new Error("nothing was weighed");
  const flat = median(times.flat);
  return [
    { what: "flat loop without grounds", value: flat, unit: "µs a circuit" },
    {
      what: "verdicts only",
      value: median(times.verdicts),
      unit: "µs a circuit",
      ratio: median(times.verdicts) / flat,
      target: 2,
    },
    {
      what: "with full grounds",
      value: median(times.grounds),
      unit: "µs a circuit",
      ratio: median(times.grounds) / flat,
      target: 4,
    },
  ];
}
