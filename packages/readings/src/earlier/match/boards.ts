import type { Board, Circuit, Installation } from "@good-grounds/inspection";
import { assign, type Edge } from "./assignment.ts";
import { Vocabulary, wordsOf } from "./words.ts";

/** What a name in common speaks for two boards being one, and what each circuit does that has moved with it. */
const NAME = 2;
const CIRCUIT = 1;

/** Boards held to be the same: those that share most circuits, with their names as a help. Ties are left out. */
export function matchBoards(
  past: Installation,
  now: Installation,
  circuits: readonly (readonly [past: Circuit, now: Circuit])[],
): ReadonlyMap<Board, Board> {
  const words = new Map([...past.boards, ...now.boards].map((board) => [board, wordsOf(board.name)]));
  const vocabulary = new Vocabulary([...words.values()]);
  const shared = new Map<Board, Map<Board, number>>();
  for (const [a, b] of circuits) {
    const list = shared.get(a.board) ?? new Map<Board, number>();
    shared.set(a.board, list);
    list.set(b.board, (list.get(b.board) ?? 0) + 1);
  }
  const edges: Edge[] = past.boards.flatMap((a, row) =>
    now.boards.map((b, column) => {
      const likeness =
        vocabulary.likeness(words.get(a) as ReadonlySet<string>, words.get(b) as ReadonlySet<string>) ?? 0;
      const same = a.name.trim().toLowerCase() === b.name.trim().toLowerCase() ? 1 : likeness;
      return { row, column, weight: CIRCUIT * (shared.get(a)?.get(b) ?? 0) + NAME * same };
    }),
  );
  const { columnOf, excess } = assign(past.boards.length, now.boards.length, edges);
  const contested = new Set(
    excess
      .filter((one) => one.excess < 1e-9 && columnOf[one.row] !== one.column)
      .flatMap(({ row, column }) => [`t${row}`, `n${column}`]),
  );
  return new Map(
    columnOf.flatMap((column, row) => {
      const [a, b] = [past.boards[row], now.boards[column]];
      return a === undefined || b === undefined || contested.has(`t${row}`) || contested.has(`n${column}`)
        ? []
        : [[a, b] as const];
    }),
  );
}
