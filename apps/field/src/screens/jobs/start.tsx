import { Notice } from "../../parts/notice.tsx";
import { DEMONSTRATION, makeDemonstration } from "../../shell/demonstration.ts";
import { goTo, linkTo } from "../../shell/route.ts";
import { askToKeep } from "../../shell/storage.ts";
import { CHECK } from "../../words/issue.ts";
import { JOBS } from "../../words/jobs.ts";
import { TakingInShown, useTakingIn } from "../hand-over/taking-in.tsx";
import { FileButton } from "./file-button.tsx";
import { fromFile, fromNothing } from "./made.ts";
import { takeInCopy } from "./take-in-copy.ts";
import { useStarting } from "./use-starting.ts";

interface StartProps {
  /** The demonstration is not among the jobs. */
  readonly offersDemonstration: boolean;
}

/** Where one starts: from nothing, from an inspection file, from a copy of a job, with the demonstration. */
export function Start({ offersDemonstration }: StartProps) {
  const { busy, problem, start } = useStarting();
  const taking = useTakingIn(async (copy, watch) => {
    await takeInCopy(copy, watch);
    goTo("job", copy.job);
    await askToKeep();
    return JOBS.copyIn;
  });
  return (
    <>
      <div class="stack">
        <button type="button" class="main" disabled={busy} onClick={() => void start(fromNothing)}>
          {JOBS.fresh}
        </button>
        <FileButton
          words={busy ? JOBS.reading : JOBS.fromFile}
          help={JOBS.fromFileHelp}
          accept=".json,application/json"
          disabled={busy}
          onFile={(file) => void start(() => fromFile(file))}
        />
        <FileButton
          words={taking.isBusy ? JOBS.reading : JOBS.copy}
          help={JOBS.copyHelp}
          accept=".good-grounds-job,.zip,.json,application/zip,application/json"
          disabled={busy || taking.isBusy}
          onFile={taking.open}
        />
        <TakingInShown of={taking} />
        {offersDemonstration && (
          <button
            type="button"
            disabled={busy}
            onClick={() => void start(async () => makeDemonstration().then(() => ({ job: DEMONSTRATION, at: [] })))}
          >
            {JOBS.again}
          </button>
        )}
        <a class="button" href={linkTo("settings")}>
          {JOBS.settings}
        </a>
        <a class="button" href={linkTo("check")}>
          {CHECK.short}
        </a>
      </div>
      {problem !== undefined && (
        <Notice kind="alert" title={JOBS.notRead}>
          <ul>
            {problem.map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
        </Notice>
      )}
    </>
  );
}
