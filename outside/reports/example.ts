import { readFileSync } from "node:fs";
import { CHECKS } from "@good-grounds/computations";
import {
  contentHash,
  parseInspection,
  parseInspectionData,
  printInspection,
  resolveInstallation,
} from "@good-grounds/inspection";
import { dutiesOf, harm, outcomeOf, reasonObservations, weigh } from "@good-grounds/judgement";
import type { ReportInput } from "@good-grounds/report";

/** The invented terraced house as its file has it. */
export const EXAMPLE = readFileSync(new URL("../../examples/terraced-house.json", import.meta.url), "utf8");

/** Everything a report is made from, for the text of an inspection file. */
export function inputOf(text: string): ReportInput {
  const parsed = parseInspection(text);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  const installation = resolveInstallation(parsed.file);
  const weighing = weigh(installation);
  const reasoned = reasonObservations(installation, weighing);
  const outcome = outcomeOf(installation, weighing, reasoned, []);
  return {
    installation,
    weighing,
    outcome,
    duties: dutiesOf(installation, outcome),
    checks: CHECKS.map(({ id, title, formula, regulations }) => ({ id, title, formula, regulations, harm: harm(id) })),
    edition: { id: parsed.file.edition, label: "BS 7671:2018+A4:2026", notes: ["A note about the edition."] },
    curves: [],
    samples: parsed.file.extent.sampling.map(() => null),
    reasoned,
  };
}

type Editable = Record<string, unknown> & { readonly observations: Record<string, unknown>[] };

/** The text of the example with something changed. */
export function changed(edit: (file: Editable) => void): string {
  const file = JSON.parse(EXAMPLE) as Editable;
  edit(file);
  const parsed = parseInspectionData(file);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return printInspection(parsed.file);
}

/** The text of the example with something changed, and signed again for what stands in it then. */
export function changedAndSigned(edit: (file: Editable) => void): string {
  return changed((file) => {
    edit(file);
    const parsed = parseInspectionData(file);
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
    const content = contentHash(parsed.file);
    file.signatures = (file.signatures as object[]).map((one) => ({ ...one, content }));
  });
}

/** An inspection of which next to nothing is known. */
export function nearlyNothing(file: Editable): void {
  Object.assign(file, {
    supply: { bonding: [] },
    boards: [
      { id: "b", name: "Board", fedFrom: "supply", circuits: [{ id: "c", designation: "1", description: "lights" }] },
      { id: "e", name: "Board without circuits", fedFrom: "supply", circuits: [] },
    ],
    things: {},
    observations: [],
    inspected: [],
    limitations: [],
    instruments: [],
    people: [],
    conditions: {},
    signatures: [],
    photographs: [],
    extent: { covered: "What could be reached.", sampling: [] },
  });
  delete file.conclusion;
}
