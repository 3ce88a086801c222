import { useEffect } from "preact/hooks";
import { useDrafting } from "../parts/drafts.ts";
import { SHELL } from "../words/shell.ts";
import { useJob } from "./job.ts";

/** How often a change that could not be kept is tried again. */
const AGAIN = 5000;

/** What of the job is on the disk. */
export function Kept() {
  const session = useJob();
  const drafting = useDrafting();
  const { waiting, trouble } = session.keeping;
  useEffect(() => {
    if (trouble === undefined) return;
    const timer = setInterval(() => session.again().catch(() => undefined), AGAIN);
    return () => clearInterval(timer);
  }, [session, trouble]);
  // Leaving while something is not kept asks first.
  useEffect(() => {
    if (waiting === 0) return;
    const ask = (event: BeforeUnloadEvent) => event.preventDefault();
    addEventListener("beforeunload", ask);
    return () => removeEventListener("beforeunload", ask);
  }, [waiting === 0]);
  return (
    <span class="kept" data-kept={waiting === 0 && !drafting && trouble === undefined}>
      <span role="alert">
        {trouble !== undefined && <strong>{SHELL.notKept(/quota/i.test(trouble) ? SHELL.noRoom : trouble)}</strong>}
      </span>
      {trouble === undefined && (
        <span class="quiet">{waiting > 0 ? SHELL.keeping(waiting) : drafting ? SHELL.writing : SHELL.kept}</span>
      )}
    </span>
  );
}
