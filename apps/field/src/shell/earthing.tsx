import { useEffect, useState } from "preact/hooks";
import { clock } from "../parts/clock.ts";
import { Dialog } from "../parts/dialog.tsx";
import { keepSetting, setting } from "../record/store.ts";
import { EARTHING } from "../words/shell.ts";
import { useJob } from "./job.ts";
import { titleOf } from "./job-label.ts";
import { goTo, linkTo } from "./route.ts";
import { earthingOff, nameOf } from "./safety.ts";

/** A job whose earthing conductor is off, as the device remembers it outside the job. */
interface LeftOff {
  readonly job: string;
  readonly title: string;
  readonly since: string;
}

const NAME = "earthing off";

async function jobsLeftOff(): Promise<readonly LeftOff[]> {
  const noted = await setting<unknown>(NAME).catch(() => undefined);
  return Array.isArray(noted) ? noted.flatMap(leftOff) : [];
}

/** What was noted of a job; as long as the job is known it is reminded of, whatever else cannot be read. */
function leftOff(one: unknown): readonly LeftOff[] {
  if (typeof one !== "object" || one === null) return [];
  const { job, title, since } = one as { readonly [name: string]: unknown };
  if (typeof job !== "string") return [];
  return [{ job, title: typeof title === "string" ? title : job, since: typeof since === "string" ? since : "" }];
}

/** Notes on the device that a job's earthing conductor is off, or no longer, for screens outside the job. */
export async function noteEarthing(job: string, off: Omit<LeftOff, "job"> | undefined): Promise<void> {
  const others = (await jobsLeftOff()).filter((one) => one.job !== job);
  await keepSetting(NAME, off === undefined ? others : [...others, { job, ...off }]);
}

/** Stands on every screen of a job as long as its earthing conductor is off; opening the job says so first of all. */
export function EarthingBanner() {
  const session = useJob();
  const off = earthingOff(session.record);
  const [asked, setAsked] = useState(off === undefined);
  const since = off?.since;
  const isOff = off !== undefined;
  useEffect(() => {
    // Disconnected from now on, by whoever is at this screen: no question is needed.
    if (isOff === false) setAsked(true);
    const title = titleOf(session.record);
    noteEarthing(session.job, isOff ? { title, since: since ?? "" } : undefined).catch(() => undefined);
  }, [session, isOff, since]);
  if (off === undefined) return null;
  const link = linkTo("job", session.job, "cautions", "earthing");
  return (
    <>
      <OffBanner since={off.since} who={nameOf(session.record, off.by)} link={link} action={EARTHING.putBack} />
      {!asked && (
        <Dialog title={EARTHING.stillTitle} mustAnswer onClose={() => setAsked(true)}>
          <p>{EARTHING.since(clock(off.since ?? ""), nameOf(session.record, off.by))}</p>
          <p>{EARTHING.stillAsk}</p>
          <div class="stack">
            <button
              type="button"
              class="main"
              onClick={() => {
                setAsked(true);
                goTo("job", session.job, "cautions", "earthing");
              }}
            >
              {EARTHING.goBack}
            </button>
            <button type="button" onClick={() => setAsked(true)}>
              {EARTHING.stillOff}
            </button>
          </div>
        </Dialog>
      )}
    </>
  );
}

/** The same outside any job: every job of this device that was left so. */
export function EarthingReminders() {
  const [left, setLeft] = useState<readonly LeftOff[]>([]);
  useEffect(() => void jobsLeftOff().then(setLeft), []);
  return (
    <>
      {left.map(({ job, title, since }) => (
        <OffBanner
          key={job}
          since={since}
          who={undefined}
          link={linkTo("job", job, "cautions", "earthing")}
          action={EARTHING.open(title)}
        />
      ))}
    </>
  );
}

interface OffBannerProps {
  readonly since: string | undefined;
  readonly who: string | undefined;
  readonly link: string;
  readonly action: string;
}

function OffBanner({ since, who, link, action }: OffBannerProps) {
  return (
    <div class="alarm earthing-off" role="alert">
      <div class="frame" aria-hidden="true" />
      <div class="row between">
        <span>
          <strong class="earthing-what">{EARTHING.off}</strong>
          <span class="small">
            {since === undefined || since === "" ? "" : `${EARTHING.since(clock(since), who)}. `}
            {EARTHING.stay}
          </span>
        </span>
        <a class="button" href={link}>
          {action}
        </a>
      </div>
    </div>
  );
}
