import { useDrafting } from "../parts/drafts.ts";
import { SHELL } from "../words/shell.ts";
import { useJob } from "./job.ts";

/** Why something is not on the disk, and what becomes of it. */
export function whyNotKept(trouble: string): string {
  return SHELL.notKept(/quota|space|full/i.test(trouble) ? SHELL.noRoom : SHELL.failing(trouble));
}

/** What of the job is on the disk. */
export function Kept() {
  const session = useJob();
  const drafting = useDrafting();
  const { waiting, trouble } = session.keeping;
  return (
    <span class="kept" data-kept={waiting === 0 && !drafting && trouble === undefined}>
      <span role="alert">
        {trouble !== undefined && <strong>{whyNotKept(trouble)}</strong>}
      </span>
      {trouble === undefined && (
        <span class="quiet">{waiting > 0 ? SHELL.keeping(waiting) : drafting ? SHELL.writing : SHELL.kept}</span>
      )}
    </span>
  );
}
