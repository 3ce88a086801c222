import type { ReportInput } from "../../input.ts";
import { WORKS } from "../../locales/works-list-en.ts";
import type { Cell } from "../../pdf/cell.ts";
import { headOf } from "../head.ts";
import { type CircuitOfWork, type WorkItem, workPlaces } from "./work-items.ts";

/** A cell of the list as a table for other programs. */
export type WorkCell = string | number;

/** The list of works as a table: its head, and a row for each work in the order of the document. */
export function workRows(input: ReportInput): readonly (readonly WorkCell[])[] {
  const { id, address } = headOf(input);
  const rows = workPlaces(input).flatMap(({ location, items }) =>
    items.map((item) => [id, address, ...cellsOf(item, location)]),
  );
  return [WORKS.columns, ...rows];
}

function cellsOf(item: WorkItem, location: string): readonly WorkCell[] {
  return [
    item.number,
    item.code,
    item.meaning,
    item.board,
    location,
    item.place,
    item.circuits.map(({ name }) => name).join("\n"),
    item.quantities.map(({ what, quantity }) => WORKS.counted(quantity, what)).join("\n"),
    item.what,
    item.madeSafe,
    item.remedy,
    item.ways.map(({ words, leads }) => WORKS.way(words, leads)).join("\n"),
    item.below,
    item.regulations.join(", "),
    ofEach(item.circuits, "device"),
    ofEach(item.circuits, "rcd"),
    ofEach(item.circuits, "cable"),
    item.circuits.map(({ readings }) => readings || WORKS.noReadings).join("\n"),
    item.checks.join("\n"),
    item.photographs.map(({ name, description, sha256 }) => `${name}: ${description} (${sha256})`).join("\n"),
    // Filled in by whoever does the work.
    "",
    "",
    "",
  ];
}

/** A line for each circuit. */
function ofEach(circuits: readonly CircuitOfWork[], part: "device" | "rcd" | "cable"): string {
  return circuits.map((one) => (one[part] as Cell).words).join("\n");
}
