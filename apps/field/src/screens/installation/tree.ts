import { join, membersOf } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";

/** One row of the line diagram, in the order from the origin outwards. */
export type TreeRow =
  | { readonly kind: "board"; readonly board: string; readonly depth: number }
  | {
      readonly kind: "way";
      readonly board: string;
      readonly circuit: string;
      readonly depth: number;
      readonly last: boolean;
    };

/**
 * Boards with their ways, those fed from a way set in below it. Boards whose feeder is not known, or that feed each
 * other in a circle, stand at the end so that none is lost from sight.
 */
export function treeOf(record: JobRecord): readonly TreeRow[] {
  const rows: TreeRow[] = [];
  const drawn = new Set<string>();
  const boards = membersOf(record, "boards");
  const feeders = new Map(boards.map((board) => [board, feederOf(record, board)]));
  const draw = (board: string, depth: number) => {
    if (drawn.has(board)) return;
    drawn.add(board);
    rows.push({ kind: "board", board, depth });
    const circuits = membersOf(record, `boards/${board}/circuits`);
    for (const [i, circuit] of circuits.entries()) {
      rows.push({ kind: "way", board, circuit, depth, last: i === circuits.length - 1 });
      for (const other of boards) if (feeders.get(other) === `${board}/${circuit}`) draw(other, depth + 1);
    }
  };
  for (const board of boards) if (feeders.get(board) === "") draw(board, 0);
  for (const board of boards) draw(board, 0);
  return rows;
}

function feederOf(record: JobRecord, board: string): string | undefined {
  const fed = record.value(join(`boards/${board}`, "fedFrom"));
  if (fed === "supply" || fed === undefined) return "";
  if (typeof fed !== "object" || fed === null || Array.isArray(fed)) return undefined;
  const { board: from, circuit } = fed as { readonly board?: string; readonly circuit?: string };
  return `${from}/${circuit}`;
}
