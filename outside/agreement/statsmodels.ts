import { execFileSync } from "node:child_process";
import { PYTHON } from "../tools.ts";

/** Cohen's kappa as the library gives it for a table of counts. */
export interface LibraryCohen {
  readonly kappa: number;
  readonly standardError: number;
}

const PROGRAM = `
import json, sys, warnings
import numpy as np
from statsmodels.stats.inter_rater import cohens_kappa, fleiss_kappa
warnings.simplefilter("ignore")
asked = json.load(sys.stdin)
weights = {"unweighted": None, "linear": "linear", "quadratic": "quadratic"}
def cohen(table, weighting):
    found = cohens_kappa(np.array(table, dtype=float), wt=weights[weighting])
    return {"kappa": float(found.kappa), "standardError": float(found.std_kappa)}
json.dump({
    "cohen": [cohen(one["table"], one["weighting"]) for one in asked["cohen"]],
    "fleiss": [float(fleiss_kappa(np.array(table))) for table in asked["fleiss"]],
}, sys.stdout)
`;

/** Asks the library about all tables in one process. Fleiss' tables have an item a row and a category a column. */
export function askStatsmodels(asked: {
  readonly cohen: readonly { readonly table: readonly (readonly number[])[]; readonly weighting: string }[];
  readonly fleiss: readonly (readonly (readonly number[])[])[];
}): { readonly cohen: readonly LibraryCohen[]; readonly fleiss: readonly number[] } {
  const output = execFileSync(PYTHON, ["-c", PROGRAM], { input: JSON.stringify(asked), encoding: "utf8" });
  return JSON.parse(output);
}
