import { useSession } from "../../shell/job.ts";
import { goTo } from "../../shell/route.ts";
import { INSTALLATION } from "../../words/installation.ts";
import { startObservation } from "./start.ts";

interface ObserveHereProps {
  readonly board: string;
  readonly circuit?: string;
}

/** Starts an observation at a board or circuit, its place filled in. */
export function ObserveHere({ board, circuit }: ObserveHereProps) {
  const session = useSession();
  return (
    <button
      type="button"
      class="plain"
      onClick={() => goTo("job", session.job, "observations", startObservation(session, { board, circuit }))}
    >
      {INSTALLATION.observe}
    </button>
  );
}
