import type { Classification, Outcome } from "@good-grounds/core";
import type { InspectionFile } from "@good-grounds/inspection";
import { EDITION } from "@good-grounds/tables";

/**
 * The technical outcome from the classifications the inspector chose, under the edition the report is made to. An
 * observation still without a classification leaves a satisfactory outcome open; an unsatisfactory one stands whatever
 * the rest come to. What the law asks of a landlord is another matter and is not decided here.
 */
export function outcomeOf(file: InspectionFile): Outcome {
  const rule = EDITION[file.edition];
  const count: Record<Classification, number> = { C1: 0, C2: 0, C3: 0, FI: 0, none: 0 };
  const because: string[] = [];
  const open: string[] = [];
  for (const { id, choice } of file.observations) {
    if (choice === undefined) {
      open.push(id);
      continue;
    }
    count[choice.classification] += 1;
    if (rule.unsatisfactory.includes(choice.classification)) because.push(id);
  }
  const outcome = because.length > 0 ? "unsatisfactory" : open.length > 0 ? "not-determined" : "satisfactory";
  const remarks = count.FI > 0 ? [{ code: "further-investigation", words: rule.furtherInvestigation }] : [];
  return Object.freeze({ edition: file.edition, outcome, because, count: Object.freeze(count), open, remarks });
}
