import { classificationMark } from "../../drawings/classification-mark.ts";
import { REPORT } from "../../locales/report-en.ts";
import type { Group } from "../../words/observation-number.ts";
import type { Drawings } from "../drawings.ts";

/** The letters of a group; an observation without a classification has a question mark and no mark of weight. */
export function codeOf(group: Group): string {
  return group === "open" ? REPORT.openCode : group;
}

/** The mark of a group by weight; empty where there is no classification. */
export function markOf(group: Group, drawings: Drawings): string {
  return group === "open" ? "" : drawings.add(classificationMark(group));
}

/** A line with a capital at its beginning. */
export function capitalised(words: string): string {
  const [first = "", ...rest] = words;
  return first.toUpperCase() + rest.join("");
}
