import { useDrafting } from "../parts/drafts.ts";
import { SHELL } from "../words/shell.ts";
import { STORES } from "../words/stores.ts";
import { useJob } from "./job.ts";
import { useStores } from "./use-stores.ts";

/** What of the job is on the disk. */
export function Kept() {
  const session = useJob();
  const drafting = useDrafting();
  const { waiting, trouble } = session.keeping;
  const { database, files } = useStores();
  const kept = typeof database === "string" && typeof files === "string" ? SHELL.kept : STORES.keptOnce;
  return (
    <span class="kept" data-kept={waiting === 0 && !drafting && trouble === undefined}>
      <span role="alert">{trouble !== undefined && <strong>{notKept(trouble)}</strong>}</span>
      {trouble === undefined && (
        <span class="quiet">{waiting > 0 ? SHELL.keeping(waiting) : drafting ? SHELL.writing : kept}</span>
      )}
    </span>
  );
}

/** Why something is not kept, in words that say what to do where that is known. */
export function notKept(trouble: string): string {
  return SHELL.notKept(/quota/i.test(trouble) ? SHELL.noRoom : SHELL.failing(trouble));
}
