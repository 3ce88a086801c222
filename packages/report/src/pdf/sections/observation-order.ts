import type { Classification } from "@good-grounds/core";
import type { InspectionFile } from "@good-grounds/inspection";
import { classificationMark } from "../../drawings/classification-mark.ts";
import { REPORT } from "../../locales/report-en.ts";
import type { Drawings } from "../drawings.ts";

export type Observation = InspectionFile["observations"][number];

/** The groups of the report; what has no classification yet may still be dangerous and stands before the improvements. */
export const GROUPS = ["C1", "C2", "FI", "open", "C3", "none"] as const satisfies readonly (Classification | "open")[];
export type Group = (typeof GROUPS)[number];

export interface Numbered {
  readonly number: number;
  readonly group: Group;
  readonly observation: Observation;
}

function groupOf({ choice }: Observation): Group {
  return choice?.classification ?? "open";
}

/** The observations in the order of the report, with the number they are known by in it. */
export function numbered(file: InspectionFile): readonly Numbered[] {
  return GROUPS.flatMap((group) => file.observations.filter((one) => groupOf(one) === group)).map((observation, i) => ({
    number: i + 1,
    group: groupOf(observation),
    observation,
  }));
}

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
