import type { Evidence, Unit } from "@good-grounds/core";
import type { Field, FieldSet } from "@good-grounds/inspection";
import { type AnyFact, type Cell, cell, fullCell, fullFactCell, joined } from "./cell.ts";

export type Row = readonly [label: string, cell: Cell];

type Leaf = Evidence<Unit> | AnyFact;

/** The fields of a thing of which something was recorded, with their labels: also why one of them is not known. */
export function recordedRows(
  fields: FieldSet,
  state: Readonly<Record<string, unknown>>,
  leaveOut: readonly string[] = [],
): readonly Row[] {
  return Object.entries(fields).flatMap(([name, field]): readonly Row[] => {
    if (leaveOut.includes(name)) return [];
    const leaves = leavesIn(state[name]).filter((leaf) => !isSilent(leaf));
    return leaves.length === 0 ? [] : [[field.label, joined(leaves.map((leaf) => leafCell(field, leaf)))]];
  });
}

/** The same in one line: "Kind rod; Resistance 20 Ω". */
export function recordedLine(rows: readonly Row[]): Cell {
  return joined(
    rows.map(([label, one]) => joined([cell(`${label}: `), one], "")),
    "; ",
  );
}

/** A reading with how it was taken and what was noted with it. */
export function readingCell(reading: Evidence<Unit>): Cell {
  const { method, note } = reading.kind === "measured" ? reading.detail.taken : {};
  return joined(
    [fullCell(reading), ...[method, note].flatMap((words) => (words === undefined ? [] : [cell(words)]))],
    "; ",
  );
}

/** Whether nobody recorded anything there. */
export function isSilent(leaf: Leaf): boolean {
  return (leaf.kind === "not-known" || leaf.kind === "fact-not-known") && leaf.detail.silence === "absent";
}

function leafCell(field: Field, leaf: Leaf): Cell {
  return isFact(leaf) ? fullFactCell(leaf, field.words) : readingCell(leaf);
}

function isFact(leaf: Leaf): leaf is AnyFact {
  return leaf.kind === "fact" || leaf.kind === "fact-not-known";
}

/** One leaf or several; points of a ring are no leaves and have a place of their own. */
function leavesIn(value: unknown): readonly Leaf[] {
  if (Array.isArray(value)) return value.flatMap(leavesIn);
  return typeof value === "object" && value !== null && "kind" in value ? [value as Leaf] : [];
}
