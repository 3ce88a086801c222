import { Dialog } from "../../parts/dialog.tsx";
import { useSession } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { INSTALLATION } from "../../words/installation.ts";
import { PARTS } from "../../words/parts.ts";
import { useWayChanges } from "./use-way-changes.ts";
import type { WayRowProps } from "./way-row.tsx";

interface WayActionsProps extends WayRowProps {
  readonly name: string;
  readonly onClose: () => void;
}

/** What can be done with one way. */
export function WayActions({ board, circuit, name, onClose, onAddAfter, onAddBoard, onSaid }: WayActionsProps) {
  const { job } = useSession();
  const { isFirst, isLast, another, copy, move, remove } = useWayChanges({ board, circuit, name, onClose, onSaid });
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
        <button type="button" disabled={isLast} onClick={copy}>
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
          <button type="button" disabled={isFirst} onClick={() => move(-1)}>
            ↑ {INSTALLATION.up}
          </button>
          <button type="button" disabled={isLast} onClick={() => move(1)}>
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
