import { parseInspectionData, resolveInstallation } from "@good-grounds/inspection";
import { OWN_FIGURES_LOOKS } from "@good-grounds/judgement";
import { Chance } from "../../examples/simulate/chance.ts";
import { entriesOf } from "../../packages/judgement/src/own-figures/entries.ts";
import { rowsOf } from "../../packages/judgement/src/own-figures/rows.ts";
import { jobOf } from "./jobs.ts";
import { PLANTED } from "./plant.ts";

const [name, look, ...ns] = process.argv.slice(2);
for (const i of ns.map(Number)) {
  const clean = jobOf(i);
  const f = (PLANTED as any)[name!](clean, new Chance(i + 5));
  const inst = resolveInstallation(f);
  const diff: string[] = [];
  const walk = (a: any, b: any, p: string) => {
    if (typeof a === "string") {
      if (a !== b && p.endsWith("shown")) diff.push(`${p} ${a} -> ${b}`);
    } else if (a && typeof a === "object") for (const k of Object.keys(a)) walk(a[k], b?.[k], `${p}/${k}`);
  };
  walk(clean.boards, f.boards, "");
  const r: any = OWN_FIGURES_LOOKS.find((l) => l.id === look)!.look({
    installation: inst,
    rows: rowsOf(inst),
    entries: entriesOf(f),
    earlier: undefined,
  });
  console.log(
    i,
    clean.id,
    clean.supply.earthing,
    diff.slice(0, 4).join("; "),
    "\n   ",
    r.map?.((x: any) => x.words + " " + x.chance + JSON.stringify(x.numbers)),
  );
}
