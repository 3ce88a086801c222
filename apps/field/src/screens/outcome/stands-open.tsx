import { engine } from "../../engine/client.ts";
import type { OutcomeView } from "../../engine/outcome-view.ts";
import { useLooked } from "../../engine/use-looked.ts";
import { Section } from "../../parts/section.tsx";
import { useJob } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { OUTCOME_NOW } from "../../words/outcome.ts";
import { whereOf } from "../finish/where.ts";

interface StandsOpenProps {
  /** Points shown before the rest are counted. */
  readonly shown: number;
}

/** The outcome as it follows from what is recorded now, and what stands open, each with the way to its place. */
export function StandsOpen({ shown }: StandsOpenProps) {
  const { job } = useJob();
  const looked = useLooked((document) => engine.outcome(document));
  const found = looked?.isNow ? looked.found : undefined;
  return (
    <Section title={OUTCOME_NOW.title}>
      {found === undefined && <p class="quiet">{OUTCOME_NOW.looking}</p>}
      {found === "failed" && <p class="fault">{OUTCOME_NOW.failed}</p>}
      {typeof found === "object" && (
        <>
          <p role="status">
            <strong>{OUTCOME_NOW.outcome[found.outcome]}</strong>
            {found.points.length > 0 && <> {OUTCOME_NOW.open(found.points.length)}</>}
          </p>
          {[...new Set(found.signatures)].map((standing) => (
            <p key={standing}>{OUTCOME_NOW.signatures[standing]}</p>
          ))}
          <Points job={job} points={found.points.slice(0, shown)} />
          {found.points.length > shown && <p>{OUTCOME_NOW.more(found.points.length - shown)}</p>}
          {found.below.length > 0 && <h3>{OUTCOME_NOW.below}</h3>}
          <Points job={job} points={found.below} />
          {found.dismissed.length > 0 && <h3>{OUTCOME_NOW.dismissed}</h3>}
          <Points job={job} points={found.dismissed} />
          {found.investigate.length > 0 && <h3>{OUTCOME_NOW.investigate}</h3>}
          <Points job={job} points={found.investigate} />
        </>
      )}
    </Section>
  );
}

function Points({ job, points }: { readonly job: string; readonly points: OutcomeView["points"] }) {
  const { record } = useJob();
  if (points.length === 0) return null;
  return (
    <ul class="rows">
      {points.map(({ path, words }) => {
        const where = whereOf(record, path);
        return (
          <li key={`${path} ${words}`} class="row">
            {where === undefined ? (
              words
            ) : (
              <a class="row-link grow" href={linkTo("job", job, ...where)}>
                {words}
              </a>
            )}
          </li>
        );
      })}
    </ul>
  );
}
