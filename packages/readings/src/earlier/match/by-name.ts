import type { Board, Circuit, Installation } from "@good-grounds/inspection";
import type { Matching } from "./match.ts";

/** Matches by board, designation and description as written, where exactly one circuit of each file bears them. */
export function matchByName(past: Installation, now: Installation): Matching {
  const nameOf = ({ board, designation, description }: Circuit) =>
    [board.name, designation, description].map((part) => part.trim().toLowerCase()).join("\n");
  const before = unique(past.circuits, nameOf);
  const after = unique(now.circuits, nameOf);
  const pairs = [...before].flatMap(([name, circuit]) => {
    const partner = after.get(name);
    return partner === undefined ? [] : [{ past: circuit, now: partner, confidence: 1, because: [] }];
  });
  const [oldBoards, newBoards] = [past, now].map(({ boards }) =>
    unique(boards, ({ name }: Board) => name.trim().toLowerCase()),
  );
  const boards = [...(oldBoards ?? [])].flatMap(([name, board]) => {
    const partner = newBoards?.get(name);
    return partner === undefined ? [] : [[board, partner] as const];
  });
  const [known, knownNow] = [new Set(pairs.map((pair) => pair.past)), new Set(pairs.map((pair) => pair.now))];
  return {
    pairs,
    splits: [],
    merges: [],
    unsettled: [],
    onlyThen: past.circuits.filter((circuit) => !known.has(circuit)),
    onlyNow: now.circuits.filter((circuit) => !knownNow.has(circuit)),
    boards: new Map(boards),
    byNameOnly: true,
  };
}

/** Things by name, without those that share theirs. */
function unique<T>(things: readonly T[], nameOf: (thing: T) => string): ReadonlyMap<string, T> {
  const found = new Map<string, T | null>();
  for (const thing of things) found.set(nameOf(thing), found.has(nameOf(thing)) ? null : thing);
  return new Map([...found].flatMap(([name, thing]) => (thing === null ? [] : [[name, thing] as const])));
}
