import { useEffect, useRef, useState } from "preact/hooks";
import { Session } from "../record/session.ts";
import { jobs, keepJob, setting } from "../record/store.ts";
import Overview from "../screens/overview/overview.tsx";
import { SHELL } from "../words/shell.ts";
import { EarthingBanner } from "./earthing.tsx";
import { Header } from "./header.tsx";
import { InventedStrip } from "./invented-strip.tsx";
import { JobContext, useJob } from "./job.ts";
import { labelOf, titleOf } from "./job-label.ts";
import { Loaded } from "./loaded.tsx";
import { settleFocus } from "./place.ts";
import { linkTo } from "./route.ts";
import { SCREENS } from "./screens.ts";
import { StorageWarning } from "./storage-warning.tsx";
import { StoresNotice } from "./stores-notice.tsx";
import { Trouble } from "./trouble.tsx";
import { UntoldBanner } from "./untold.tsx";

interface JobFrameProps {
  readonly job: string;
  readonly screen: string | undefined;
  readonly rest: readonly string[];
}

/** An open job: its record is read, then it is shown. */
export function JobFrame({ job, screen, rest }: JobFrameProps) {
  const [session, setSession] = useState<Session | "missing">();
  const [failed, setFailed] = useState<{ readonly error: unknown }>();
  useEffect(() => {
    let opened: Session | undefined;
    let left = false;
    openJob(job).then(
      (one) => {
        if (one !== "missing") opened = one;
        if (left) opened?.close();
        else setSession(one);
      },
      (error: unknown) => setFailed({ error }),
    );
    return () => {
      left = true;
      opened?.close();
    };
  }, [job]);
  if (failed !== undefined) throw failed.error;
  if (session === undefined) return <p aria-busy="true">{SHELL.loading}</p>;
  if (session === "missing") return <NoJob words={SHELL.noJob} />;
  return (
    <JobContext.Provider value={session}>
      <OpenJob screen={screen} rest={rest} />
    </JobContext.Provider>
  );
}

/** Instead of a job that is not there. */
function NoJob({ words }: { readonly words: string }) {
  return (
    <main id="main" tabIndex={-1}>
      <h1>{words}</h1>
      <a class="button" href={linkTo("jobs")}>
        {SHELL.jobs}
      </a>
    </main>
  );
}

async function openJob(job: string): Promise<Session | "missing"> {
  const session = await Session.open(job);
  if (session.record.size === 0 && !(await jobs()).some(({ id }) => id === job)) {
    session.close();
    return "missing";
  }
  // Who was at work is asked again where it was not remembered; it keeps nobody from the job.
  const person = await setting<unknown>(`person ${job}`).catch(() => undefined);
  session.person = typeof person === "string" ? person : "";
  return session;
}

function OpenJob({ screen, rest }: Omit<JobFrameProps, "job">) {
  const session = useJob();
  const found = SCREENS.find(({ id }) => id === screen);
  const title = found?.title ?? SHELL.overview;
  const heading = useRef<HTMLHeadingElement>(null);
  const first = useRef(true);
  const place = [screen, ...rest].join("/");
  const drawn = useRef("");
  const settle = () => {
    if (drawn.current === place && !first.current) return;
    settleFocus(heading.current, !first.current);
    first.current = false;
    drawn.current = place;
  };
  useEffect(() => {
    document.title = `${title} – ${titleOf(session.record)} – ${SHELL.app}`;
  });
  useLabel();
  // Thrown away in another tab: nothing that is written here would be kept.
  if (session.gone) return <NoJob words={SHELL.gone} />;
  return (
    <>
      <Header at={found?.id} rest={rest} />
      <aside class="notices" aria-label={SHELL.notices}>
        <div class="alarms">
          <EarthingBanner />
          <UntoldBanner />
        </div>
        {session.record.value("invented") === true && <InventedStrip />}
        <StoresNotice />
        <StorageWarning />
      </aside>
      <main id="main" tabIndex={-1}>
        <h1 ref={heading} tabIndex={-1}>
          {title}
        </h1>
        <Trouble key={place} job={session.job}>
          {found === undefined ? (
            <Overview rest={rest} onDrawn={settle} />
          ) : (
            <Loaded key={place} screen={found} rest={rest} onDrawn={settle} />
          )}
        </Trouble>
        {found !== undefined && rest.length === 0 && <Next after={found.id} />}
      </main>
    </>
  );
}

/** The way on to the next part of the visit, where the thumb is. */
function Next({ after }: { readonly after: string }) {
  const session = useJob();
  const next = SCREENS[SCREENS.findIndex(({ id }) => id === after) + 1];
  if (next === undefined) return null;
  return (
    <nav class="next" aria-label={SHELL.next(next.title)}>
      <a class="button" href={linkTo("job", session.job, next.id)}>
        {SHELL.next(next.title)}
      </a>
    </nav>
  );
}

/** Keeps the list of jobs in step with the job. */
function useLabel(): void {
  const session = useJob();
  const size = session.record.size;
  const known = useRef(size);
  useEffect(() => {
    if (size === known.current || session.gone) return;
    const timer = setTimeout(() => {
      known.current = size;
      if (!session.gone) keepJob(labelOf(session.job, session.record, new Date().toISOString())).catch(() => undefined);
    }, 300);
    return () => clearTimeout(timer);
  }, [session, size]);
}
