import { join, membersOf, THING_LISTS } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";

/** The things that are recorded as being at a board: they go and come back with it. */
export function thingsAt(record: JobRecord, board: string): readonly string[] {
  return THING_LISTS.flatMap((kind) => {
    const list = `things/${kind}`;
    return membersOf(record, list)
      .map((name) => join(list, name))
      .filter((path) => record.value(join(path, "board")) === board);
  });
}
