/** Weighing with grounds and verdicts only, against a flat loop without grounds, over the same resolved installations. */
import { readFileSync } from "node:fs";
import { type Installation, parseInspection, resolveInstallation } from "@good-grounds/inspection";
import { weigh } from "@good-grounds/judgement";
import { flatWeigh } from "./flat-loop.ts";
import { bestOf, type Row } from "./measure.ts";

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
  const round = {
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
  const best = bestOf(round, ROUNDS);
  const each = (name: keyof typeof round) => (best[name] * 1000) / circuits;
  if (kept === undefined) throw new Error("nothing was weighed");
  const flat = each("flat");
  return [
    { what: "flat loop without grounds", value: flat, unit: "µs a circuit" },
    { what: "verdicts only", value: each("verdicts"), unit: "µs a circuit", ratio: each("verdicts") / flat, target: 2 },
    {
      what: "with full grounds",
      value: each("grounds"),
      unit: "µs a circuit",
      ratio: each("grounds") / flat,
      target: 4,
    },
  ];
}
