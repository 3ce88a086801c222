import { within } from "../../keypad/spot.ts";
import { join } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { INSTALLATION } from "../../words/installation.ts";
import { circuitName } from "../readings/names.ts";

/** What a row of the line diagram shows of a circuit. */
export interface WayShown {
  readonly name: string;
  /** "32 A B". */
  readonly device: string;
  /** What stands in the sign of the RCD: its residual current in mA. Empty where none is recorded. */
  readonly residual: string;
  readonly rcdWords: string;
}

export function wayShown(record: JobRecord, board: string, circuit: string): WayShown {
  const path = `boards/${board}/circuits/${circuit}`;
  const device = record.value(join(path, "device"));
  const residual = residualOf(record, `boards/${board}`, record.value(join(path, "rcd")));
  return {
    name: circuitName(record, board, circuit),
    device: [textOf(within(device, ["rated"])), textOf(within(device, ["type"]))].filter(Boolean).join(" "),
    residual: residual === undefined ? "" : residual.replace(/ mA$/, "") || "?",
    rcdWords: residual === undefined ? INSTALLATION.noRcd : INSTALLATION.rcdOf(residual),
  };
}

/** The rated residual current of the RCD that serves a circuit; undefined where none is recorded. */
function residualOf(record: JobRecord, board: string, rcd: Value | undefined): string | undefined {
  if (within(rcd, ["own"]) !== undefined) return textOf(within(rcd, ["own", "residual"]));
  const shared = within(rcd, ["board"]);
  return typeof shared === "string" ? textOf(record.value(join(board, `rcds/${shared}/residual`))) : undefined;
}

function textOf(value: Value | undefined): string {
  return typeof value === "string" ? value : "";
}
