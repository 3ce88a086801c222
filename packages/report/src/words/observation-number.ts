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
  readonly board?: string | undefined;
  readonly circuit?: string | undefined;
  readonly place?: string | undefined;
  readonly choice?: { readonly classification?: Classification | undefined } | undefined;
}

interface Observed<T> {
  readonly observations: readonly T[];
  readonly boards?:
    | readonly { readonly id: string; readonly circuits?: readonly { readonly id: string }[] }[]
    | undefined;
}

/**
 * The observations in the order of the report, with the number they are known by: by class, and in a class from board to
 * board as the file has them, each board before its circuits; what is at no board comes last, and what is at one place
 * stays together.
 */
export function numbered<T extends Chosen>({ observations, boards = [] }: Observed<T>): readonly Numbered<T>[] {
  const placed = observations.map((observation, i) => ({
    observation,
    at: i + 1,
    group: observation.choice?.classification ?? ("open" as const),
  }));
  const ranks = new Map(placed.map(({ observation }) => [observation, rankOf(observation, boards)]));
  const first = new Map<string, number>();
  for (const { observation, at } of placed) {
    const key = placeKey(observation);
    if (!first.has(key)) first.set(key, at);
  }
  const rank = ({ observation, at }: (typeof placed)[number]) => [
    ...(ranks.get(observation) ?? []),
    first.get(placeKey(observation)) ?? at,
    at,
  ];
  return GROUPS.flatMap((group) =>
    placed.filter((one) => one.group === group).sort((a, b) => compared(rank(a), rank(b))),
  ).map((one, i) => ({ number: i + 1, ...one }));
}

/** Where it stands among boards, and among the circuits of its board; what is at none of them has no end. */
function rankOf({ board, circuit }: Chosen, boards: NonNullable<Observed<Chosen>["boards"]>): readonly number[] {
  const at = boards.findIndex(({ id }) => id === board);
  if (at < 0) return [boards.length, 0];
  return [at, 1 + (boards[at]?.circuits ?? []).findIndex(({ id }) => id === circuit)];
}

function placeKey({ board = "", circuit = "", place = "" }: Chosen): string {
  return JSON.stringify([board, circuit, place.trim().toLowerCase()]);
}

function compared(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((one, i) => one !== b[i]);
  return at < 0 ? 0 : (a[at] ?? 0) - (b[at] ?? 0);
}

/** The number an observation is known by; undefined where there is none of this id. */
export function numberOf(id: string, file: Observed<Chosen>): number | undefined {
  return numbered(file).find(({ observation }) => observation.id === id)?.number;
}
