import { Chance } from "../../examples/simulate/chance.ts";
import { jobOf, shownOn } from "./jobs.ts";
import { PLANTED } from "./plant.ts";

const n = Number(process.argv[2] ?? 100);
for (const [name, plant] of Object.entries(PLANTED)) {
  const count = new Map<string, number>();
  let jobs = 0,
    any = 0;
  const missed: number[] = [];
  for (let i = 0; i < n; i++) {
    const f = plant(jobOf(i), new Chance(i + 5));
    if (!f) continue;
    jobs++;
    const s = shownOn(f);
    if (s.length) any++;
    else missed.push(i);
    for (const c of new Set(s)) count.set(c, (count.get(c) ?? 0) + 1);
  }
  console.log(name, any, "/", jobs, JSON.stringify([...count]), missed.slice(0, 12).join(","));
}
let any = 0;
const count = new Map<string, number>();
for (let i = 0; i < n; i++) {
  const s = shownOn(jobOf(i), jobOf(i));
  if (s.includes("copied-schedule")) any++;
  const t = shownOn(jobOf(i), jobOf(i + 4));
  for (const c of t) count.set(c, (count.get(c) ?? 0) + 1);
}
console.log("copied", any, n, "honest earlier", [...count]);
