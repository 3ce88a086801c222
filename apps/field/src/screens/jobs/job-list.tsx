import { clock } from "../../parts/clock.ts";
import type { JobLabel } from "../../record/store.ts";
import { linkTo } from "../../shell/route.ts";
import { JOBS } from "../../words/jobs.ts";

interface JobListProps {
  /** Undefined until they are read. */
  readonly labels: readonly JobLabel[] | undefined;
  /** A job is to be thrown away. */
  readonly onLeave: (label: JobLabel) => void;
}

/** The jobs on this device, each to be opened or thrown away. */
export function JobList({ labels, onLeave }: JobListProps) {
  return (
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
          <button type="button" class="plain" aria-label={JOBS.remove(label.title)} onClick={() => onLeave(label)}>
            {JOBS.removeShort}
          </button>
        </li>
      ))}
    </ul>
  );
}
