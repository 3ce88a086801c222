import { jobOf, shownOn } from "/work/main/checks/own-figures/jobs.ts";

const n = Number(process.argv[2] ?? 400);
const count = new Map<string, number>();
let alarms = 0;
const t = Date.now();
for (let i = 0; i < n; i++) {
  const s = shownOn(jobOf(i));
  if (s.length) {
    alarms++;
    console.log(i, s.join(" "));
  }
  for (const c of s) count.set(c, (count.get(c) ?? 0) + 1);
}
console.log(alarms, n, [...count], (Date.now() - t) / n, "ms");
