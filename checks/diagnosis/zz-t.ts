import { Chance } from "../../examples/simulate/chance.ts";
import { drawRing, inputOf } from "./simulated-ring.ts";
import { diagnoseRingReadings } from "../../packages/judgement/src/diagnosis/ring/index.ts";
const chance = new Chance(5);
for (const n of [12,12,12,50,100,200]) for (const planted of [{kind:"sound"},{kind:"interconnection",from:Math.floor(n*0.2),to:Math.floor(n*0.7),metres:4},{kind:"joint",conductor:"cpc",leg:3,ohms:0.4},{kind:"open",conductors:["line"],leg:3},{kind:"swapped",point:3,pair:"line-neutral"}] as any[]) {
  const input = inputOf({...drawRing(chance,n), planted}, chance);
  const t=performance.now(); const d=diagnoseRingReadings(input); console.log(n, planted.kind, (performance.now()-t).toFixed(1), d.explanations[0].faults.map(f=>f.kind).join(), d.leading, d.explanations[0].misfit.toFixed(1));
}
