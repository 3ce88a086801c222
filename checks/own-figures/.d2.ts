import { readFileSync } from "node:fs";
import { resolveInstallation } from "@good-grounds/inspection";
import { rowsOf } from "../../packages/judgement/src/own-figures/rows.ts";
import { adaptCase } from "../cases/adapt.ts";

const f = adaptCase(JSON.parse(readFileSync(new URL(`../cases/data/case-1.json`, import.meta.url), "utf8")));
for (const r of rowsOf(resolveInstallation(f)))
  console.log(
    r.name,
    r.cable && [(r.cable.line + r.cable.cpc) * (r.ring ? 0.25 : 1), r.cable.spread],
    r.r1r2?.value,
    r.r1r2?.doubt,
    r.zs?.value,
    r.zs?.doubt,
    r.before?.value,
    r.before?.doubt,
    r.zs &&
      r.r1r2 &&
      r.before &&
      (r.zs.value - r.before.value - r.r1r2.value) / Math.hypot(r.zs.doubt, r.before.doubt, r.r1r2.doubt),
  );
