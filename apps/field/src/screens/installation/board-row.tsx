import { useState } from "preact/hooks";
import { shownWords } from "../../keypad/reading.ts";
import { within } from "../../keypad/spot.ts";
import { usePicked } from "../../keypad/use-record.ts";
import { Dialog } from "../../parts/dialog.tsx";
import { membersOf } from "../../record/document.ts";
import { put, useSession } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { INSTALLATION } from "../../words/installation.ts";
import { PARTS } from "../../words/parts.ts";
import { boardName } from "../readings/names.ts";
import { thingsAt } from "./things-at.ts";
import type { Said } from "./way-row.tsx";

interface BoardRowProps {
  readonly board: string;
  readonly depth: number;
  readonly current: boolean;
  readonly onAddCircuit: () => void;
  readonly onSaid: (said: Said) => void;
}

/** A board with its bar, from which its ways go off. */
export function BoardRow({ board, depth, current, onAddCircuit, onSaid }: BoardRowProps) {
  const session = useSession();
  const { job } = session;
  const path = `boards/${board}`;
  const [open, setOpen] = useState(false);
  const name = usePicked((record) => boardName(record, board));
  const detail = usePicked((record) => {
    const rated = within(record.value(`${path}/mainSwitch`), ["rated"]);
    const zdb = shownWords(record.value(`${path}/readings/zdb`));
    return [
      INSTALLATION.ways(membersOf(record, `${path}/circuits`).length),
      typeof rated === "string" ? INSTALLATION.mainSwitch(rated) : "",
      zdb === "" ? "" : INSTALLATION.zdb(zdb),
    ]
      .filter(Boolean)
      .join(", ");
  });
  return (
    <li class="line-row board" style={{ "--depth": depth }}>
      <a class="line-link" href={linkTo("job", job, "installation", board)} aria-current={current ? "page" : undefined}>
        <span class="line-node bar" aria-hidden="true" />
        <span class="line-name">
          <strong>{name}</strong>
          <span class="quiet small">{detail}</span>
        </span>
      </a>
      <button type="button" class="line-add" aria-label={`${INSTALLATION.addCircuit}: ${name}`} onClick={onAddCircuit}>
        +
      </button>
      <button type="button" class="line-more" aria-label={INSTALLATION.more(name)} onClick={() => setOpen(true)}>
        {INSTALLATION.moreShort}
      </button>
      {open && (
        <Dialog title={name} onClose={() => setOpen(false)}>
          <div class="stack">
            <a class="button" href={linkTo("job", job, "installation", board)}>
              {INSTALLATION.openBoard}
            </a>
            <a class="button" href={linkTo("job", job, "readings", board)}>
              {INSTALLATION.readings}
            </a>
            <button type="button" onClick={onAddCircuit}>
              {INSTALLATION.addCircuit}
            </button>
            <button
              type="button"
              onClick={() => {
                setOpen(false);
                const gone = [path, ...thingsAt(session.record, board)];
                put(session, ...gone.map((at) => [at, null] as const));
                onSaid({ words: INSTALLATION.removed(name), undo: gone.map((at) => [at, true] as const) });
              }}
            >
              {INSTALLATION.remove}
            </button>
            <button type="button" class="plain" onClick={() => setOpen(false)}>
              {PARTS.close}
            </button>
          </div>
        </Dialog>
      )}
    </li>
  );
}
