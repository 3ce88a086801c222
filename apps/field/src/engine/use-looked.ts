import { useEffect, useState } from "preact/hooks";
import { documentOf } from "../record/document.ts";
import { useJob } from "../shell/job.ts";

/** What the engine found in a job, or that it failed. */
interface Looked<T> {
  readonly found: T | "failed";
  /** Whether the job is still what was looked at. */
  readonly isNow: boolean;
}

/** Asks the engine about the job as it stands, again whenever something is written. Undefined until it answered once. */
export function useLooked<T>(ask: (document: ReturnType<typeof documentOf>) => Promise<T>): Looked<T> | undefined {
  const { record } = useJob();
  const [looked, setLooked] = useState<{ readonly size: number; readonly found: T | "failed" }>();
  const size = record.size;
  useEffect(() => {
    let left = false;
    ask(documentOf(record)).then(
      (found) => !left && setLooked({ size, found }),
      () => !left && setLooked({ size, found: "failed" }),
    );
    return () => {
      left = true;
    };
  }, [size]);
  return looked && { found: looked.found, isNow: looked.size === size };
}
