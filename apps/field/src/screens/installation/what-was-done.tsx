import { INSTALLATION } from "../../words/installation.ts";
import type { Change } from "./changes.ts";
import type { Said } from "./way-row.tsx";

interface WhatWasDoneProps {
  readonly said: Said | undefined;
  readonly onUndo: (undo: readonly Change[]) => void;
}

/** Tells what was done last, with the way to take it back. */
export function WhatWasDone({ said, onUndo }: WhatWasDoneProps) {
  return (
    <div class="said" role="status">
      {said !== undefined && (
        <div class="sheet row between">
          <span>{said.words}</span>
          {said.undo !== undefined && (
            <button type="button" onClick={() => onUndo(said.undo ?? [])}>
              {INSTALLATION.undo}
            </button>
          )}
        </div>
      )}
    </div>
  );
}
