import { useEffect, useRef, useState } from "preact/hooks";
import { clock } from "../../parts/clock.ts";
import { Notice } from "../../parts/notice.tsx";
import { type JobLabel, jobs } from "../../record/store.ts";
import { DEMONSTRATION, makeDemonstration } from "../../shell/demonstration.ts";
import { EarthingReminders } from "../../shell/earthing.tsx";
import { goTo, linkTo } from "../../shell/route.ts";
import { askToKeep } from "../../shell/storage.ts";
import { StorageWarning } from "../../shell/storage-warning.tsx";
import { ThemeButton } from "../../shell/theme-button.tsx";
import { JOBS } from "../../words/jobs.ts";
import { SHELL } from "../../words/shell.ts";
import { DeleteJob } from "./delete-job.tsx";

/** The jobs on this device; where one starts. */
export default function Jobs() {
  const [labels, setLabels] = useState<readonly JobLabel[]>();
  const [leaving, setLeaving] = useState<JobLabel>();
  const [problem, setProblem] = useState<readonly string[]>();
  const [busy, setBusy] = useState(false);
  const heading = useRef<HTMLHeadingElement>(null);
  const look = () => jobs().then(setLabels);
  useEffect(() => {
    document.title = `${JOBS.title} – ${SHELL.app}`;
    heading.current?.focus();
    void look();
  }, []);

  /** Starts something and opens it; what goes wrong is told here. */
  const start = async (work: () => Promise<string | readonly string[]>) => {
    setBusy(true);
    setProblem(undefined);
    try {
      const made = await work();
      if (typeof made !== "string") setProblem(made);
      else if (made === DEMONSTRATION) goTo("job", made);
      else goTo("job", made, "brief");
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
        <EarthingReminders />
        <StorageWarning />
      </aside>
      <main id="main" tabIndex={-1}>
        <h1 ref={heading} tabIndex={-1}>
          {JOBS.title}
        </h1>
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
        <div class="stack">
          <button
            type="button"
            class="main"
            disabled={busy}
            onClick={() => void start(async () => (await import("./start-job.ts")).startJob())}
          >
            {JOBS.fresh}
          </button>
          <label class="button file">
            {busy ? JOBS.reading : JOBS.fromFile}
            <input
              type="file"
              accept=".json,application/json"
              disabled={busy}
              aria-describedby="from-file-help"
              onChange={({ currentTarget }) => {
                const [file] = currentTarget.files ?? [];
                currentTarget.value = "";
                if (file !== undefined) void start(() => fromFile(file));
              }}
            />
          </label>
          <p id="from-file-help" class="quiet small">
            {JOBS.fromFileHelp}
          </p>
          {labels?.some(({ id }) => id === DEMONSTRATION) === false && (
            <button
              type="button"
              disabled={busy}
              onClick={() => void start(async () => makeDemonstration().then(() => DEMONSTRATION))}
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

async function fromFile(file: File): Promise<string | readonly string[]> {
  const { startFromFile } = await import("./start-job.ts");
  const started = await startFromFile(await file.text());
  if ("job" in started) return started.job;
  return started.issues
    .slice(0, MOST)
    .map(({ path, found, expected, advice }) => `${path.join("/")}: ${found}; expected ${expected}. ${advice}`);
}
