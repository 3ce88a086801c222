import { readFileSync } from "node:fs";
import { parseInspection, resolveInstallation } from "@good-grounds/inspection";
import { comparedParts, instrumentTableOf, weigh } from "@good-grounds/judgement";

const parsed: any = (parseInspection as any)(readFileSync(process.argv[2], "utf8"));
const inst = resolveInstallation(parsed.file);
const w = weigh(inst);
const t = instrumentTableOf(inst);
for (const f of w.circuits.flat())
  if (f.check === process.argv[3]) {
    console.log(
      JSON.stringify(
        comparedParts(f.judgement, t).map(({ matter, budget, ...x }) => ({
          m: matter.id,
          ...x,
          budget: budget.map((b) =>
            [b.kind, b.term.id, b.values, b.contribution.toPrecision(3), b.share.toFixed(3)].join(" "),
          ),
        })),
        null,
        1,
      ),
    );
    break;
  }
