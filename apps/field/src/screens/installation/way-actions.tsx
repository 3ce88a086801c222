import { Dialog } from "../../parts/dialog.tsx";
import { membersOf } from "../../record/document.ts";
import { newName, put, useSession } from "../../shell/job.ts";
import { goTo, linkTo } from "../../shell/route.ts";
import { INSTALLATION } from "../../words/installation.ts";
import { PARTS } from "../../words/parts.ts";
import { circuitName } from "../readings/names.ts";
import { addMember, copyParticulars, moveMember, nextDesignation } from "./changes.ts";
import type { WayRowProps } from "./way-row.tsx";

interface WayActionsProps extends WayRowProps {
  readonly name: string;
  readonly onClose: () => void;
}

/** What can be done with one way. */
export function WayActions({ board, circuit, name, onClose, onAddAfter, onAddBoard, onSaid }: WayActionsProps) {
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
  return (
    <Dialog title={name} onClose={onClose}>
      <div class="stack">
        <div class="row">
          <a class="button" href={linkTo("job", job, "readings", board, circuit)}>
            {INSTALLATION.readings}
          </a>
          <a class="button" href={linkTo("job", job, "installation", board, circuit)}>
            {INSTALLATION.openCircuit}
          </a>
        </div>
        <button type="button" onClick={another}>
          {INSTALLATION.another}
        </button>
        <button type="button" disabled={next === undefined} onClick={copy}>
          {INSTALLATION.copyToNext}
        </button>
        <p class="small quiet">{INSTALLATION.copyHelp}</p>
        <button type="button" onClick={onAddAfter}>
          {INSTALLATION.addAfter}
        </button>
        <button type="button" onClick={onAddBoard}>
          {INSTALLATION.addBoardFed}
        </button>
        <div class="row">
          <button type="button" disabled={circuits[0] === circuit} onClick={() => move(-1)}>
            ↑ {INSTALLATION.up}
          </button>
          <button type="button" disabled={next === undefined} onClick={() => move(1)}>
            ↓ {INSTALLATION.down}
          </button>
        </div>
        <button type="button" onClick={remove}>
          {INSTALLATION.remove}
        </button>
        <button type="button" class="plain" onClick={onClose}>
          {PARTS.close}
        </button>
      </div>
    </Dialog>
  );
}
