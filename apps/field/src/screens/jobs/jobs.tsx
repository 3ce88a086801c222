import { useEffect, useRef, useState } from "preact/hooks";
import { sweepCopies } from "../../hand-over/sink.ts";
import { Notice } from "../../parts/notice.tsx";
import { type JobLabel, jobs, storesChecked } from "../../record/store.ts";
import { DEMONSTRATION } from "../../shell/demonstration.ts";
import { EarthingReminders } from "../../shell/earthing.tsx";
import { StorageWarning } from "../../shell/storage-warning.tsx";
import { StoresNotice } from "../../shell/stores-notice.tsx";
import { ThemeButton } from "../../shell/theme-button.tsx";
import { UnkeptJobs } from "../../shell/unkept-jobs.tsx";
import { JOBS } from "../../words/jobs.ts";
import { SHELL } from "../../words/shell.ts";
import { DeleteJob } from "./delete-job.tsx";
import { JobList } from "./job-list.tsx";
import { Start } from "./start.tsx";

interface JobsProps {
  /** It is shown instead of a place whose address cannot be read. */
  readonly lostPlace?: boolean;
}

/** The jobs on this device; where one starts. */
export default function Jobs({ lostPlace = false }: JobsProps) {
  const [labels, setLabels] = useState<readonly JobLabel[]>();
  const [leaving, setLeaving] = useState<JobLabel>();
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
            <JobList labels={labels} onLeave={setLeaving} />
          </div>
          <div>
            <Start offersDemonstration={labels?.some(({ id }) => id === DEMONSTRATION) === false} />
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
