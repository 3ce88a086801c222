import { EDITION } from "@good-grounds/tables";
import type { ContradictionRow } from "./row.ts";

/**
 * The outcome as the inspector states it beside the classifications the inspector chose: satisfactory over one that makes
 * it unsatisfactory, or unsatisfactory where none does and all are chosen.
 */
export const OUTCOME_STATED_OTHERWISE: ContradictionRow = {
  id: "outcome-stated-otherwise",
  find: ({ installation: { statedOutcome, edition, observations } }) => {
    if (statedOutcome === undefined || edition === undefined) return [];
    const { unsatisfactory } = EDITION[edition];
    const makeItSo = observations.flatMap(({ choice }, i) =>
      choice !== undefined && unsatisfactory.includes(choice.classification) ? [["observations", i]] : [],
    );
    const isWithout =
      makeItSo.length === 0 &&
      observations.every(({ choice }) => choice !== undefined && choice.classification !== "FI");
    const clashes = statedOutcome === "satisfactory" ? makeItSo.length > 0 : isWithout;
    return clashes ? [{ places: [["conclusion", "outcome"], ...makeItSo] }] : [];
  },
};
