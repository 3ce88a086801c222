import { useState } from "preact/hooks";
import { goTo } from "../../shell/route.ts";
import { askToKeep } from "../../shell/storage.ts";
import type { Made } from "./made.ts";

/** Starting a job: whether one is being made, and what went wrong with the last one. */
export function useStarting() {
  const [problem, setProblem] = useState<readonly string[]>();
  const [busy, setBusy] = useState(false);
  /** Starts something and opens it; what goes wrong is told here. */
  const start = async (work: () => Promise<Made | readonly string[]>) => {
    setBusy(true);
    setProblem(undefined);
    try {
      const made = await work();
      if (!("job" in made)) return setProblem(made);
      goTo("job", made.job, ...made.at);
      // Asked for after something worth keeping was made: browsers grant it more readily then.
      await askToKeep();
    } catch (error) {
      setProblem([error instanceof Error ? `${error.name}: ${error.message}` : String(error)]);
    } finally {
      setBusy(false);
    }
  };
  return { busy, problem, start };
}
