import { PARTS } from "../words/parts.ts";

interface RemovedProps {
  /** What the member that was taken out last is called; undefined where none was. */
  readonly title: string | undefined;
  readonly onUndo: () => void;
}

/** Tells that a member of a list was taken out, with the way to take that back. */
export function Removed({ title, onUndo }: RemovedProps) {
  return (
    <div role="status">
      {title !== undefined && (
        <div class="row between sheet">
          <span>{PARTS.wasRemoved(title)}</span>
          <button type="button" onClick={onUndo}>
            {PARTS.undo}
          </button>
        </div>
      )}
    </div>
  );
}
