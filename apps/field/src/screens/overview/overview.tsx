import { useEffect, useState } from "preact/hooks";
import { Notice } from "../../parts/notice.tsx";
import { useJob } from "../../shell/job.ts";
import { titleOf } from "../../shell/job-label.ts";
import { goTo, linkTo } from "../../shell/route.ts";
import { nameOf } from "../../shell/safety.ts";
import { SCREENS, type ScreenProps } from "../../shell/screens.ts";
import { OVERVIEW } from "../../words/overview.ts";
import { PART, SHELL } from "../../words/shell.ts";
import { DeleteJob } from "../jobs/delete-job.tsx";
import { StandsOpen } from "../outcome/stands-open.tsx";

interface OverviewProps extends ScreenProps {
  readonly onDrawn: () => void;
}

/** The parts of the visit and how far each is. */
export default function Overview({ onDrawn }: OverviewProps) {
  const session = useJob();
  const { record } = session;
  const [leaving, setLeaving] = useState(false);
  const conflicts = record.conflicts();
  const invented = record.value("invented") === true;
  useEffect(onDrawn, []);
  // The way goes on at the first part that has begun or waits, and is not done.
  const next = SCREENS.find(({ howFar, alongside }) => alongside !== true && howFar?.(record)?.done === false);
  return (
    <>
      <p class="row between person-line">
        <span>
          {OVERVIEW.who}: <strong>{nameOf(record, session.person) ?? OVERVIEW.nobody}</strong>
        </span>
        <a class="button" href={linkTo("job", session.job, "people")}>
          {OVERVIEW.change}
        </a>
      </p>
      {conflicts.length > 0 && <Notice kind="status" title={SHELL.conflicts(conflicts.length)} />}
      {next !== undefined && (
        <a class="button main wide" href={linkTo("job", session.job, next.id)}>
          {OVERVIEW.goOn(next.title)}
        </a>
      )}
      <div class="parts">
        {(Object.keys(PART) as (keyof typeof PART)[]).map((part) => {
          const screens = SCREENS.filter((screen) => screen.part === part);
          if (screens.length === 0) return null;
          return (
            <section key={part} aria-labelledby={`part-${part}`}>
              <h2 id={`part-${part}`}>{PART[part]}</h2>
              <ul class="list">
                {screens.map(({ id, title, howFar }) => {
                  const far = howFar?.(record);
                  return (
                    <li key={id}>
                      <a class="part" href={linkTo("job", session.job, id)}>
                        <span
                          class={far === undefined ? "bar none" : far.done ? "bar full" : "bar"}
                          aria-hidden="true"
                        />
                        <strong>{title}</strong>
                        {far !== undefined && <span class="quiet small">{far.words}</span>}
                      </a>
                    </li>
                  );
                })}
              </ul>
            </section>
          );
        })}
      </div>
      <StandsOpen shown={3} />
      {record.names("~earlier").length > 0 && <p class="quiet">{OVERVIEW.earlier}</p>}
      <button type="button" class="plain" onClick={() => setLeaving(true)}>
        {invented ? OVERVIEW.removeDemonstration : OVERVIEW.remove}
      </button>
      {leaving && (
        <DeleteJob
          label={{ id: session.job, title: titleOf(record), invented }}
          onClose={() => setLeaving(false)}
          onGone={() => goTo("jobs")}
        />
      )}
    </>
  );
}
