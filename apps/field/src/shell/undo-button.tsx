import { useEffect, useState } from "preact/hooks";
import { flushDrafts } from "../parts/drafts.ts";
import { placeWords } from "../parts/place-words.ts";
import { SHELL } from "../words/shell.ts";
import { useJob } from "./job.ts";

/** How long it is said what was taken back. */
const SAID = 6000;

/** Takes the last change of this tab back and says where. */
export function UndoButton() {
  const session = useJob();
  const [said, setSaid] = useState("");
  useEffect(() => {
    if (said === "") return;
    const timer = setTimeout(() => setSaid(""), SAID);
    return () => clearTimeout(timer);
  }, [said]);
  return (
    <>
      <button
        type="button"
        class="theme"
        disabled={session.undoable.length === 0}
        onClick={() => {
          flushDrafts();
          const places = session.undoable.map(([path]) => placeWords(session.record, path));
          session.undo().catch(() => undefined);
          setSaid(SHELL.undone(places[0] ?? ""));
        }}
      >
        <svg viewBox="0 0 24 24" width="22" height="22" aria-hidden="true">
          <path d="M9 5 4 10l5 5M4 10h10a5 5 0 0 1 0 10h-4" fill="none" stroke="currentColor" stroke-width="2" />
        </svg>
        {SHELL.undo}
      </button>
      <span class={said === "" ? "unseen" : "said"} role="status">
        {said}
      </span>
    </>
  );
}
