import type { Classification } from "@good-grounds/core";
import type { InspectionFile } from "@good-grounds/inspection";

export type Observation = InspectionFile["observations"][number];

/** The groups of the report; what has no classification yet may still be dangerous and stands before the improvements. */
export const GROUPS = ["C1", "C2", "FI", "open", "C3", "none"] as const satisfies readonly (Classification | "open")[];
export type Group = (typeof GROUPS)[number];

export interface Numbered<T = Observation> {
  /** The number it is known by in report and terminal alike. */
  readonly number: number;
  /** Its place in the file, from 1. */
  readonly at: number;
  readonly group: Group;
  readonly observation: T;
}

/** What its number depends on; an unfinished file has no more. */
interface Chosen {
  readonly id: string;
  readonly choice?: { readonly classification?: Classification | undefined } | undefined;
}

/** The observations in the order of the report, with the number they are known by. */
export function numbered<T extends Chosen>({
  observations,
}: {
  readonly observations: readonly T[];
}): readonly Numbered<T>[] {
  const placed = observations.map((observation, i) => ({
    observation,
    at: i + 1,
    group: observation.choice?.classification ?? ("open" as const),
  }));
  return GROUPS.flatMap((group) => placed.filter((one) => one.group === group)).map((one, i) => ({
    number: i + 1,
    ...one,
  }));
}

/** The number an observation is known by; undefined where there is none of this id. */
export function numberOf(id: string, file: { readonly observations: readonly Chosen[] }): number | undefined {
  return numbered(file).find(({ observation }) => observation.id === id)?.number;
}
