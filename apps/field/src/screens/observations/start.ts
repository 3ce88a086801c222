import { join, membersOf, ORDER } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import type { Session } from "../../record/session.ts";
import { newName, put } from "../../shell/job.ts";
import { boardName, circuitName } from "../readings/names.ts";
import { textAt } from "./read.ts";

interface Where {
  readonly board?: string | undefined;
  readonly circuit?: string | undefined;
}

/** Begins an observation, at a board or circuit where one is named, with what else is written in the same change. */
export function startObservation(
  session: Session,
  { board, circuit }: Where = {},
  more: (name: string) => readonly (readonly [path: string, value: Value])[] = () => [],
): string {
  const { record } = session;
  const name = newName("o");
  const at = join("observations", name);
  put(
    session,
    [at, true],
    [join(at, ORDER), membersOf(record, "observations").length],
    ...(board === undefined ? [] : [[join(at, "board"), board] as const]),
    ...(circuit === undefined ? [] : [[join(at, "circuit"), circuit] as const]),
    ...(board === undefined ? [] : [[join(at, "place"), placeAt(session, board, circuit)] as const]),
    ...more(name),
  );
  return name;
}

/** Where a board or circuit is, as an observation says it. */
function placeAt({ record }: Session, board: string, circuit: string | undefined): string {
  const parts = [
    boardName(record, board),
    circuit === undefined ? textAt(record, `boards/${board}/location`) : circuitName(record, board, circuit),
  ];
  return parts
    .filter((part) => part !== "")
    .join(", ")
    .replaceAll(/\s+/g, " ");
}
