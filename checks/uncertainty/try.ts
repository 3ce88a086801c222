import { readFileSync } from "node:fs";
import { parseInspection, resolveInstallation } from "@good-grounds/inspection";
import { conformities, weigh } from "@good-grounds/judgement";

const f = process.argv[2];
const parsed: any = (parseInspection as any)(readFileSync(f, "utf8"));
const inst = resolveInstallation(parsed.file);
const w = weigh(inst);
for (let k = 0; k < 5; k++) {
  const t = performance.now();
  conformities(w, inst);
  console.log("ms", performance.now() - t, inst.circuits.length, "circuits");
}
const c = conformities(w, inst);
for (const [find, x] of c) {
  if (find.judgement.verdict === "not-applicable" || find.judgement.verdict === "not-known") continue;
  console.log(
    find.check.padEnd(26),
    find.judgement.verdict.padEnd(8),
    x.kind.padEnd(9),
    String(x.probability === null ? null : x.probability.toFixed(4)),
    x.lowest.toFixed(3),
    x.highest.toFixed(3),
    x.decision.simple,
    x.decision.guarded,
    x.notes.join(","),
    x.deciding ? x.deciding.difference.toPrecision(3) + " ± " + x.deciding.expanded.toPrecision(3) : "",
  );
}
