import { Dialog } from "../../parts/dialog.tsx";
import { type JobLabel, keepSetting } from "../../record/store.ts";
import { DEMONSTRATION } from "../../shell/demonstration.ts";
import { noteEarthing } from "../../shell/earthing.tsx";
import { SaveJobFile } from "../../shell/rescue.tsx";
import { JOBS } from "../../words/jobs.ts";
import { discardWithPhotographs } from "./discard.ts";

interface DeleteJobProps {
  readonly label: Pick<JobLabel, "id" | "title" | "invented">;
  readonly onClose: () => void;
  readonly onGone: () => void;
}

/** Asks before a job is thrown away. */
export function DeleteJob({ label: { id, title, invented }, onClose, onGone }: DeleteJobProps) {
  const discard = async () => {
    await discardWithPhotographs(id);
    await noteEarthing(id, undefined);
    if (id === DEMONSTRATION) await keepSetting(DEMONSTRATION, "thrown away");
    onGone();
  };
  return (
    <Dialog title={JOBS.removeTitle(title)} onClose={onClose}>
      <p>{JOBS.removeAsk}</p>
      {!invented && <p>{JOBS.removeFirst}</p>}
      <div class="stack">
        <button type="button" class="main" onClick={onClose}>
          {JOBS.no}
        </button>
        {!invented && <SaveJobFile job={id} />}
        <button type="button" onClick={() => void discard()}>
          {JOBS.yes}
        </button>
      </div>
    </Dialog>
  );
}
