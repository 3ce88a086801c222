import { engine } from "../../engine/client.ts";
import type { DutyView } from "../../engine/duties-view.ts";
import { useLooked } from "../../engine/use-looked.ts";
import { save } from "../../hand-over/save.ts";
import { Section } from "../../parts/section.tsx";
import { useJob } from "../../shell/job.ts";
import { DUTIES } from "../../words/duties.ts";

/** Duties shown before the rest is opened. */
const SHOWN = 5;

/** What the law asks because of this job, the nearest date first, with a calendar of the dates to save. */
export function LawAsks() {
  const { record, job } = useJob();
  const looked = useLooked((document) => engine.duties(document));
  const found = looked?.isNow ? looked.found : undefined;
  return (
    <Section title={DUTIES.title}>
      {found === undefined && <p class="quiet">{DUTIES.looking}</p>}
      {found === "failed" && <p class="fault">{DUTIES.failed}</p>}
      {typeof found === "object" && (
        <>
          <p class="quiet small">{found.notAdvice}</p>
          {found.remark !== "" && <p>{found.remark}</p>}
          <Duties duties={found.duties.slice(0, SHOWN)} />
          {found.duties.length > SHOWN && (
            <details>
              <summary>{DUTIES.more(found.duties.length - SHOWN)}</summary>
              <Duties duties={found.duties.slice(SHOWN)} />
            </details>
          )}
          {found.calendar !== undefined && (
            <button type="button" onClick={() => void saveCalendar(String(record.value("id") ?? job), found.calendar)}>
              {DUTIES.calendar}
            </button>
          )}
        </>
      )}
    </Section>
  );
}

function saveCalendar(name: string, calendar = ""): Promise<void> {
  return save(`${name}.ics`, "text/calendar", calendar);
}

function Duties({ duties }: { readonly duties: readonly DutyView[] }) {
  if (duties.length === 0) return null;
  return (
    <ul class="rows">
      {duties.map(({ id, line, asks, grounds }) => (
        <li key={id} class="row">
          <details class="grow">
            <summary>{line}</summary>
            <p>{asks}</p>
            <p class="quiet small">{grounds}</p>
          </details>
        </li>
      ))}
    </ul>
  );
}
