/** Lists of boards and circuits that are shorter than what was written down. */
export interface ShortLists {
  readonly boards: boolean;
  /** Positions of the boards that lack some of their circuits. */
  readonly circuits: ReadonlySet<number>;
}

/** Nothing was left out of any of them. */
export const WHOLE_LISTS: ShortLists = Object.freeze({ boards: false, circuits: new Set<number>() });

/** How many boards a document lists, and how many circuits each of them, before anything is left out. */
export interface BoardCounts {
  readonly boards: number;
  readonly circuits: ReadonlyMap<unknown, number>;
}

export function boardCounts(document: object): BoardCounts {
  const boards = listOf(document, "boards");
  return { boards: boards.length, circuits: new Map(boards.map((board) => [board, listOf(board, "circuits").length])) };
}

/** What has gone since; boards that are left are the same objects, wherever they stand now. */
export function shortOf(document: object, before: BoardCounts): ShortLists {
  const boards = listOf(document, "boards");
  const short = boards.flatMap((board, i) =>
    listOf(board, "circuits").length < (before.circuits.get(board) ?? 0) ? [i] : [],
  );
  return { boards: boards.length < before.boards, circuits: new Set(short) };
}

function listOf(holder: unknown, name: string): readonly unknown[] {
  const list = typeof holder === "object" && holder !== null ? Reflect.get(holder, name) : undefined;
  return Array.isArray(list) ? list : [];
}
