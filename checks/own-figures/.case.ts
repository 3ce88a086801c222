import { readFileSync } from "node:fs";
import { parseInspection, resolveInstallation } from "@good-grounds/inspection";
import { lookAtOwnFigures } from "@good-grounds/judgement";
import { adaptCase } from "../cases/adapt.ts";

for (const c of ["case-1", "case-2"]) {
  const f = adaptCase(JSON.parse(readFileSync(new URL(`../cases/data/${c}.json`, import.meta.url), "utf8")));
  const r = lookAtOwnFigures(resolveInstallation(f));
  console.log(
    c,
    r.toConfirm.map((x) => [x.check, x.words, x.chance, x.numbers]),
    r.notLookedAt.map((x) => x.check + ": " + x.because),
  );
}
for (const c of ["terraced-house", "farmhouse", "workshop"]) {
  const p = parseInspection(readFileSync(new URL(`../../examples/${c}.json`, import.meta.url), "utf8"));
  if (p.ok)
    console.log(
      c,
      lookAtOwnFigures(resolveInstallation(p.file)).toConfirm.map((x) => x.check),
    );
}
