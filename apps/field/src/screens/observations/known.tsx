import type { ReasonView } from "../../engine/reason-view.ts";
import { join } from "../../record/document.ts";
import { put, useSession } from "../../shell/job.ts";
import { OBSERVATIONS } from "../../words/observations.ts";

interface KnownProps {
  readonly observation: string;
  readonly view: ReasonView;
}

/** The facts that are known, each to be taken back. */
export function Known({ observation, view }: KnownProps) {
  const session = useSession();
  const known = view.facts.filter((fact) => fact.known !== undefined);
  if (known.length === 0) return null;
  return (
    <>
      <h3>{OBSERVATIONS.known}</h3>
      <ul class="rows">
        {known.map(({ fact, asks, known: said }) => {
          const at = join(observation, `facts/${fact}`);
          const stated = session.record.standing(at).some(({ value }) => value !== null);
          return (
            <li key={fact} class="row between">
              <span>
                <span class="tag">{said?.tag}</span> {said?.words}
              </span>
              {stated && (
                <button
                  type="button"
                  class="plain"
                  aria-label={`${OBSERVATIONS.forget}: ${asks}`}
                  onClick={() => put(session, [at, null])}
                >
                  {OBSERVATIONS.forget}
                </button>
              )}
            </li>
          );
        })}
      </ul>
    </>
  );
}
