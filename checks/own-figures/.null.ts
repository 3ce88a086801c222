import { resolveInstallation } from "@good-grounds/inspection";
import { OWN_FIGURES_LOOKS } from "@good-grounds/judgement";
import { entriesOf } from "../../packages/judgement/src/own-figures/entries.ts";
import { rowsOf } from "../../packages/judgement/src/own-figures/rows.ts";
import { jobOf } from "./jobs.ts";

const n = 2000;
const t = new Map<string, number[]>();
for (let i = 0; i < n; i++) {
  const f = jobOf(i);
  const inst = resolveInstallation(f);
  const job = { installation: inst, rows: rowsOf(inst), entries: entriesOf(f), earlier: undefined };
  for (const l of OWN_FIGURES_LOOKS) {
    const r: any = l.look(job);
    if (r.because) continue;
    for (const x of r)
      if (x.chance !== null) {
        const a = t.get(l.id) ?? [];
        a.push(x.chance);
        t.set(l.id, a);
      }
  }
}
for (const [id, a] of t)
  console.log(
    id,
    a.length,
    "<.1",
    a.filter((x) => x < 0.1).length,
    "<.03",
    a.filter((x) => x < 0.03).length,
    "<.01",
    a.filter((x) => x < 0.01).length,
    "<.003",
    a.filter((x) => x < 0.003).length,
    "<.001",
    a.filter((x) => x < 0.001).length,
  );
