import type { FieldGroup } from "../../keypad/fields.ts";
import { valueAt } from "../../keypad/spot.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { circuitGroups } from "./circuit-fields.ts";

export interface Progress {
  readonly done: number;
  readonly all: number;
}

/** How many of the fields that want a value have one. */
export function progressOf(record: JobRecord, groups: readonly FieldGroup[]): Progress {
  const asked = groups
    .filter(({ folded }) => folded !== true)
    .flatMap(({ fields }) => fields)
    // One more point of a ring is offered, not asked for.
    .filter((field) => field.optional !== true && !("with" in field));
  return { done: asked.filter(({ spot }) => valueAt(record, spot) !== undefined).length, all: asked.length };
}

export function circuitProgress(record: JobRecord, board: string, circuit: string): Progress {
  return progressOf(
    record,
    circuitGroups(record, board, circuit, () => "-"),
  );
}
