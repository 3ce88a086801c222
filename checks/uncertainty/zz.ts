import { comparedConformity, LEADS_LEFT, NO_INSTRUMENTS } from "@good-grounds/judgement";
import { Chance } from "../../examples/simulate/chance.ts";
import { drawn } from "./monte-carlo.ts";
import { randomComparison } from "./random-comparison.ts";

const chance = new Chance(Number(process.argv[2] ?? 1));
const errs: number[] = [];
let curved = 0,
  n = 0,
  sure = 0;
const bad: string[] = [];
const us: number[] = [];
for (let i = 0; i < Number(process.argv[3] ?? 500); i++) {
  const c = randomComparison(chance);
  const r = comparedConformity(c, NO_INSTRUMENTS);
  if (!r) continue;
  n++;
  const mc = drawn(c, chance, Number(process.argv[4] ?? 20000), {
    commonPart: NO_INSTRUMENTS.commonPart,
    leads: LEADS_LEFT,
  });
  if (r.probability === null) {
    curved++;
    continue;
  }
  if (r.probability === 0 || r.probability === 1) sure++;
  const e = Math.abs(r.probability - mc.holds);
  errs.push(e);
  if (e > 0.02) bad.push(`${r.probability.toFixed(3)} ${mc.holds.toFixed(3)} ${JSON.stringify(ops(c))}`);
  if (r.budget.length) {
    const ut = Math.hypot(...r.budget.map((b) => b.contribution));
    us.push(Math.abs(ut - mc.deviation) / mc.deviation);
  }
}
function ops(x: any): any {
  return x.kind === "computed"
    ? [x.detail, ...x.from.map(ops)]
    : x.kind === "compared"
      ? x.from.map(ops)
      : x.kind === "measured"
        ? x.detail.text + " " + x.detail.accuracy + " " + x.detail.taken.instrument + " " + x.term.symbol
        : `${x.low.toFixed(3)}..${x.high.toFixed(3)}`;
}
errs.sort((a, b) => a - b);
console.log({
  n,
  curved,
  sure,
  max: errs.at(-1),
  p99: errs[Math.floor(errs.length * 0.99)],
  p95: errs[Math.floor(errs.length * 0.95)],
  median: errs[errs.length >> 1],
  bad: bad.length,
});
us.sort((a, b) => a - b);
console.log("u rel", us[us.length >> 1], us[Math.floor(us.length * 0.95)], us.at(-1));
console.log(bad.slice(0, 12).join("\n"));
