import { useState } from "preact/hooks";
import { placeWords } from "../parts/place-words.ts";
import { SHELL } from "../words/shell.ts";
import { useJob } from "./job.ts";

/** Takes back the last change made here, one after the other. The history keeps what was taken back. */
export function Undo() {
  const session = useJob();
  const [said, setSaid] = useState("");
  const [last] = session.undoable;
  const words = last === undefined ? "" : placeWords(session.record, last[0]);
  return (
    <>
      <button
        type="button"
        class="undo"
        disabled={last === undefined}
        onClick={() => {
          setSaid(SHELL.undone(words));
          session.undo().catch(() => undefined);
        }}
      >
        <svg viewBox="0 0 24 24" width="22" height="22" aria-hidden="true">
          <path d="M9 5 4 10l5 5M4 10h10a6 5 0 0 1 0 10h-4" fill="none" stroke="currentColor" stroke-width="2" />
        </svg>
        {SHELL.undo}
        <span class="unseen">{words === "" ? "" : SHELL.undoWhat(words)}</span>
      </button>
      <span class="unseen" role="status">
        {said}
      </span>
    </>
  );
}
