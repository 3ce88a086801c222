import { join, membersOf } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { BOARD } from "../../words/installation.ts";

/** What a board's RCD is called: by the id a file gave it, or by its number where the app made one up. */
export function rcdName(record: JobRecord, board: string, name: string): string {
  if (!/^rcd-[0-9a-f]{8}$/.test(name)) return name;
  return BOARD.rcdNumber(membersOf(record, join(board, "rcds")).indexOf(name) + 1);
}
