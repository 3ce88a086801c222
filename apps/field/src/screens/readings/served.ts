import { within } from "../../keypad/spot.ts";
import { join, membersOf } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { READINGS } from "../../words/readings.ts";

/** Which circuits a board's RCD serves, in words. */
export function servedBy(record: JobRecord, boardId: string, rcd: string): string {
  const board = `boards/${boardId}`;
  if (record.value(join(board, `rcds/${rcd}/serves`)) === "whole-board") return READINGS.servesAll;
  const circuits = membersOf(record, join(board, "circuits"))
    .map((name) => join(board, `circuits/${name}`))
    .filter((circuit) => within(record.value(join(circuit, "rcd")), ["board"]) === rcd)
    .map((circuit) => String(record.value(join(circuit, "designation")) ?? "–"));
  return circuits.length === 0 ? READINGS.servesNone : READINGS.serves(circuits.join(", "));
}
