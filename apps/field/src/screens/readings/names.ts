import { join, membersOf } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { UNNAMED } from "../../words/engine.ts";
import { READINGS } from "../../words/readings.ts";

export function boardName(record: JobRecord, board: string): string {
  const name = record.value(`boards/${board}/name`);
  return typeof name === "string" && name !== "" ? name : UNNAMED.board;
}

export function circuitName(record: JobRecord, board: string, circuit: string): string {
  const at = `boards/${board}/circuits/${circuit}`;
  const text = (name: string, otherwise: string) => {
    const value = record.value(join(at, name));
    return typeof value === "string" && value !== "" ? value : otherwise;
  };
  return READINGS.circuit(text("designation", UNNAMED.designation), text("description", UNNAMED.description));
}

/** Board and circuit pairs in the order of the installation. */
export function allCircuits(record: JobRecord): readonly (readonly [board: string, circuit: string])[] {
  return membersOf(record, "boards").flatMap((board) =>
    membersOf(record, `boards/${board}/circuits`).map((circuit) => [board, circuit] as const),
  );
}
