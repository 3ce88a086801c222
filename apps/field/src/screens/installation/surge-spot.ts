import { join, membersOf } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { addMember, type Change } from "./changes.ts";

const LIST = "things/surgeDevices";
/** Ids are at most this long. */
const LONGEST = 40;

/** Where it is recorded whether a board has surge protection, and what has to be written with the first answer. */
export interface SurgeSpot {
  readonly path: string;
  readonly fitted: "word" | "yes-no";
  readonly along: readonly Change[];
}

/**
 * The first surge protective device of a board; a job begun before devices had a place of their own keeps what it says of
 * the board. A new device takes its name from the board, so that two copies of a job that both add it mean the same.
 */
export function surgeSpot(record: JobRecord, board: string): SurgeSpot {
  const former = `boards/${board}/surgeProtection`;
  if (record.value(former) !== undefined) return { path: former, fitted: "word", along: [] };
  const listed = membersOf(record, LIST).find((name) => record.value(join(LIST, `${name}/board`)) === board);
  if (listed !== undefined) return { path: join(LIST, `${listed}/fitted`), fitted: "yes-no", along: [] };
  const name = `surge-${board}`.slice(0, LONGEST);
  return {
    path: join(LIST, `${name}/fitted`),
    fitted: "yes-no",
    along: [...addMember(record, LIST, name), [join(LIST, `${name}/board`), board]],
  };
}
