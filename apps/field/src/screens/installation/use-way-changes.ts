import { membersOf } from "../../record/document.ts";
import { newName, put, useSession } from "../../shell/job.ts";
import { goTo } from "../../shell/route.ts";
import { INSTALLATION } from "../../words/installation.ts";
import { circuitName } from "../readings/names.ts";
import { addMember, copyParticulars, moveMember, nextDesignation } from "./changes.ts";
import type { Said } from "./way-row.tsx";

interface Way {
  readonly board: string;
  readonly circuit: string;
  /** What the circuit is called. */
  readonly name: string;
  readonly onClose: () => void;
  readonly onSaid: (said: Said) => void;
}

/** What one way of a board can be changed by, and where it is among the others. */
export function useWayChanges({ board, circuit, name, onClose, onSaid }: Way) {
  const session = useSession();
  const { job, record } = session;
  const list = `boards/${board}/circuits`;
  const path = `${list}/${circuit}`;
  const circuits = membersOf(record, list);
  const next = circuits[circuits.indexOf(circuit) + 1];
  const another = () => {
    const fresh = newName("c");
    put(
      session,
      ...addMember(record, list, fresh, circuit),
      [`${list}/${fresh}/designation`, nextDesignation(record, `boards/${board}`)],
      ...copyParticulars(record, path, `${list}/${fresh}`),
    );
    goTo("job", job, "installation", board, fresh);
  };
  const copy = () => {
    const changes = copyParticulars(record, path, `${list}/${next}`);
    if (changes.length > 0) put(session, ...changes);
    onClose();
    onSaid({
      words: INSTALLATION.copied(circuitName(record, board, next ?? ""), changes.length),
      ...(changes.length === 0 ? {} : { undo: changes.map(([at]) => [at, null] as const) }),
    });
  };
  const move = (by: -1 | 1) => {
    const changes = moveMember(record, list, circuit, by);
    if (changes.length === 0) return;
    put(session, ...changes);
    onSaid({ words: INSTALLATION.moved(name, membersOf(record, list).indexOf(circuit) + 1) });
  };
  const remove = () => {
    put(session, [path, null]);
    onClose();
    onSaid({ words: INSTALLATION.removed(name), undo: [[path, true]] });
  };
  return { isFirst: circuits[0] === circuit, isLast: next === undefined, another, copy, move, remove };
}
