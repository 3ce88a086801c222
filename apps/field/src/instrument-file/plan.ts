import { COLUMNS, type Use } from "./columns.ts";
import type { Row, Sheet } from "./rows.ts";
import { readingIn } from "./value.ts";

/** A circuit of the job as a file may name it. */
export interface Target {
  /** The place of the circuit in the record. */
  readonly path: string;
  readonly names: readonly string[];
}

/** One cell that can be taken in. */
export interface Taken {
  readonly line: number;
  /** The place of the reading. */
  readonly path: string;
  readonly shown: string;
}

/** Everything a file comes to: what can be taken in, what stands twice, and what was not placed, with the reason. */
export interface Plan {
  readonly taken: readonly Taken[];
  /** Places for which the file has more than one value; none of them is taken until one is chosen. */
  readonly twice: readonly (readonly Taken[])[];
  readonly unplaced: readonly {
    readonly line: number;
    readonly cell: string;
    readonly because: "no-circuit" | "not-a-reading" | "no-column";
  }[];
}

/** What a sheet comes to with its columns used so. Every cell that holds something is in exactly one of the three lists. */
export function planOf(
  { rows, columns }: Sheet,
  uses: readonly (Use | undefined)[],
  targets: readonly Target[],
  range?: string,
): Plan {
  const found: Taken[] = [];
  const unplaced: Plan["unplaced"][number][] = [];
  for (const row of rows) {
    const target = targetOf(row, uses, targets);
    for (let i = 0; i < columns; i++) {
      const cell = row.cells[i] ?? "";
      const use = uses[i];
      if (cell === "" || use?.column === "circuit" || use?.column === "time") continue;
      if (use === undefined) {
        unplaced.push({ line: row.line, cell, because: "no-column" });
        continue;
      }
      const value = readingIn(cell, use.unit || COLUMNS[use.column].unit, range);
      if ("because" in value) {
        if (value.because !== "empty") unplaced.push({ line: row.line, cell, because: "not-a-reading" });
      } else if (target === undefined) unplaced.push({ line: row.line, cell, because: "no-circuit" });
      else found.push({ line: row.line, path: `${target.path}/readings/${use.column}`, shown: value.shown });
    }
  }
  const places = new Map<string, Taken[]>();
  for (const one of found) places.set(one.path, [...(places.get(one.path) ?? []), one]);
  const groups = [...places.values()];
  return {
    taken: groups.flatMap((group) => (group.length === 1 ? group : [])),
    twice: groups.filter((group) => group.length > 1),
    unplaced,
  };
}

/** The circuit a row names, where it names exactly one. */
function targetOf({ cells }: Row, uses: readonly (Use | undefined)[], targets: readonly Target[]): Target | undefined {
  const at = uses.findIndex((use) => use?.column === "circuit");
  const name = plain(cells[at] ?? "");
  if (name === "") return undefined;
  const exact = targets.filter(({ names }) => names.some((one) => plain(one) === name));
  return exact.length === 1 ? exact[0] : undefined;
}

function plain(name: string): string {
  return name
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
}
