import { useState } from "preact/hooks";
import { memo } from "../../keypad/memo.tsx";
import { usePicked } from "../../keypad/use-record.ts";
import { newName, put, useSession } from "../../shell/job.ts";
import { goTo, linkTo } from "../../shell/route.ts";
import { INSTALLATION } from "../../words/installation.ts";
import { BoardRow } from "./board-row.tsx";
import { addMember, nextDesignation } from "./changes.ts";
import { OriginRow } from "./origin-row.tsx";
import { type TreeRow, treeOf } from "./tree.ts";
import { type Said, WayRow } from "./way-row.tsx";
import { WhatWasDone } from "./what-was-done.tsx";

const Board = memo(BoardRow);
const Way = memo(WayRow);

interface LineDiagramProps {
  /** What is open beside the diagram: "cu" or "cu/c1". */
  readonly current?: string;
}

/** The installation as a line diagram that is edited where it is drawn, and read as a list. */
export function LineDiagram({ current }: LineDiagramProps) {
  const session = useSession();
  const { record, job } = session;
  // Rows are drawn again one by one; the whole only when one comes, goes or moves.
  const rows = JSON.parse(usePicked((now) => JSON.stringify(treeOf(now)))) as readonly TreeRow[];
  const [said, setSaid] = useState<Said>();
  const addBoard = (fedFrom: Parameters<typeof put>[1][1]) => {
    const name = newName("b");
    put(session, ...addMember(record, "boards", name), [`boards/${name}/fedFrom`, fedFrom]);
    goTo("job", job, "installation", name);
  };
  const addCircuit = (board: string, after?: string) => {
    const name = newName("c");
    const list = `boards/${board}/circuits`;
    put(session, ...addMember(record, list, name, after), [
      `${list}/${name}/designation`,
      nextDesignation(record, `boards/${board}`),
    ]);
    goTo("job", job, "installation", board, name);
  };
  return (
    <>
      <p class="quiet">{rows.length === 0 ? INSTALLATION.empty : INSTALLATION.lead}</p>
      <ol class="line-diagram" aria-label={INSTALLATION.tree}>
        <OriginRow />
        {rows.map((row) =>
          row.kind === "board" ? (
            <Board
              key={row.board}
              board={row.board}
              depth={row.depth}
              current={current === row.board}
              onAddCircuit={() => addCircuit(row.board)}
              onSaid={setSaid}
            />
          ) : (
            <Way
              key={`${row.board}/${row.circuit}`}
              board={row.board}
              circuit={row.circuit}
              depth={row.depth}
              last={row.last}
              current={current === `${row.board}/${row.circuit}`}
              onAddAfter={() => addCircuit(row.board, row.circuit)}
              onAddBoard={() => addBoard({ board: row.board, circuit: row.circuit })}
              onSaid={setSaid}
            />
          ),
        )}
      </ol>
      <div class="row">
        <button type="button" id="add-board" class={rows.length === 0 ? "main" : ""} onClick={() => addBoard("supply")}>
          {INSTALLATION.addBoard}
        </button>
        {rows.length > 0 && (
          <a class="button" href={linkTo("job", job, "readings")}>
            {INSTALLATION.toReadings}
          </a>
        )}
      </div>
      <WhatWasDone
        said={said}
        onUndo={(undo) => {
          put(session, ...undo);
          setSaid(undefined);
        }}
      />
    </>
  );
}
