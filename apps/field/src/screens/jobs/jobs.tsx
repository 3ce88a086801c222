import { useEffect, useRef, useState } from "preact/hooks";
import { sweepCopies } from "../../hand-over/sink.ts";
import { clock } from "../../parts/clock.ts";
import { Notice } from "../../parts/notice.tsx";
import { type JobLabel, jobs, storesChecked } from "../../record/store.ts";
import { DEMONSTRATION, makeDemonstration } from "../../shell/demonstration.ts";
import { EarthingReminders } from "../../shell/earthing.tsx";
import { goTo, linkTo } from "../../shell/route.ts";
import { askToKeep } from "../../shell/storage.ts";
import { StorageWarning } from "../../shell/storage-warning.tsx";
import { StoresNotice } from "../../shell/stores-notice.tsx";
import { ThemeButton } from "../../shell/theme-button.tsx";
import { UnkeptJobs } from "../../shell/unkept-jobs.tsx";
import { JOBS } from "../../words/jobs.ts";
import { SHELL } from "../../words/shell.ts";
import { TakingInShown, useTakingIn } from "../hand-over/taking-in.tsx";
import { DeleteJob } from "./delete-job.tsx";
import { FileButton } from "./file-button.tsx";
import { takeInCopy } from "./take-in-copy.ts";

interface JobsProps {
  /** It is shown instead of a place whose address cannot be read. */
  readonly lostPlace?: boolean;
}

/** The jobs on this device; where one starts. */
export default function Jobs({ lostPlace = false }: JobsProps) {
  const [labels, setLabels] = useState<readonly JobLabel[]>();
  const [leaving, setLeaving] = useState<JobLabel>();
  const [problem, setProblem] = useState<readonly string[]>();
  const [busy, setBusy] = useState(false);
  const heading = useRef<HTMLHeadingElement>(null);
  const [refused, setRefused] = useState(false);
  const look = () => jobs().then(setLabels, () => setRefused(true));
  useEffect(() => {
    document.title = `${JOBS.title} – ${SHELL.app}`;
    heading.current?.focus();
    void look();
    // Putting the stores in step may end what throwing a job away began.
    void storesChecked().then(look);
    // Most often there is no such folder.
    sweepCopies().catch(() => undefined);
  }, []);

  const taking = useTakingIn(async (copy, watch) => {
    await takeInCopy(copy, watch);
    goTo("job", copy.job);
    await askToKeep();
    return JOBS.copyIn;
  });

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

  return (
    <>
      <header class="top">
        <div class="job">
          <strong class="job-name">{SHELL.app}</strong>
        </div>
        <ThemeButton />
      </header>
      <aside class="notices" aria-label={SHELL.notices}>
        <div class="alarms">
          <EarthingReminders />
        </div>
        <UnkeptJobs />
        <StoresNotice />
        <StorageWarning />
      </aside>
      <main id="main" tabIndex={-1}>
        <h1 ref={heading} tabIndex={-1}>
          {JOBS.title}
        </h1>
        {lostPlace && (
          <Notice kind="status" title={SHELL.lostPlace}>
            <p>{SHELL.lostPlaceWhy}</p>
          </Notice>
        )}
        {refused && (
          <Notice kind="alert" title={SHELL.cannotKeep}>
            <p>{SHELL.cannotKeepWhy}</p>
          </Notice>
        )}
        <div class="columns">
          <div>
            {labels?.length === 0 && <p class="quiet">{JOBS.none}</p>}
            <ul class="list">
              {labels?.map((label) => (
                <li key={label.id} class="job-row">
                  <a href={linkTo("job", label.id)}>
                    <strong>{label.title}</strong>
                    <span class="quiet small">
                      {label.invented ? `${JOBS.demonstration}, ` : ""}
                      {JOBS.changed(clock(label.changed))}
                    </span>
                  </a>
                  <button
                    type="button"
                    class="plain"
                    aria-label={JOBS.remove(label.title)}
                    onClick={() => setLeaving(label)}
                  >
                    {JOBS.removeShort}
                  </button>
                </li>
              ))}
            </ul>
          </div>
          <div>
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
              {labels?.some(({ id }) => id === DEMONSTRATION) === false && (
                <button
                  type="button"
                  disabled={busy}
                  onClick={() =>
                    void start(async () => makeDemonstration().then(() => ({ job: DEMONSTRATION, at: [] })))
                  }
                >
                  {JOBS.again}
                </button>
              )}
              <a class="button" href={linkTo("settings")}>
                {JOBS.settings}
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
            <p class="quiet small">{JOBS.competent}</p>
          </div>
        </div>
      </main>
      {leaving !== undefined && (
        <DeleteJob
          label={leaving}
          onClose={() => setLeaving(undefined)}
          onGone={() => {
            setLeaving(undefined);
            void look();
            heading.current?.focus();
          }}
        />
      )}
    </>
  );
}

/** So many of the things that are wrong with a file are shown. */
const MOST = 6;

/** A job and the screen on which it starts. */
interface Made {
  readonly job: string;
  readonly at: readonly string[];
}

async function fromNothing(): Promise<Made> {
  const { startJob } = await import("./start-job.ts");
  return { job: await startJob(), at: ["brief"] };
}

async function fromFile(file: File): Promise<Made | readonly string[]> {
  const { startFromFile } = await import("./start-job.ts");
  const started = await startFromFile(await file.text());
  if ("job" in started) return { job: started.job, at: ["brief"] };
  return started.issues.slice(0, MOST);
}
