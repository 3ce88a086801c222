import type { Classification } from "@good-grounds/core";
import { Mark } from "../../parts/mark.tsx";
import { join, membersOf } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { useJob } from "../../shell/job.ts";
import { goTo, linkTo } from "../../shell/route.ts";
import { OBSERVATIONS } from "../../words/observations.ts";
import { untold } from "../danger/told.ts";
import { chosenOf, textAt } from "./read.ts";
import { startObservation } from "./start.ts";

/** Every observation, with its mark, and what of it was not told yet. */
export function List({ current }: { readonly current?: string | undefined }) {
  const session = useJob();
  const { record, job } = session;
  const names = byWeight(record);
  const open = new Set(untold(record));
  return (
    <>
      <button
        type="button"
        class="main wide"
        onClick={() => goTo("job", job, "observations", startObservation(session))}
      >
        {OBSERVATIONS.add}
      </button>
      {names.length === 0 && <p class="quiet">{OBSERVATIONS.none}</p>}
      <ul class="rows">
        {names.map((name) => {
          const at = join("observations", name);
          const chosen = chosenOf(record, at);
          return (
            <li key={name}>
              <a
                class="row-link"
                href={linkTo("job", job, "observations", name)}
                aria-current={current === name ? "page" : undefined}
              >
                <span class="row-mark">
                  {chosen === undefined ? <span class="quiet">{OBSERVATIONS.open}</span> : <Mark of={chosen} />}
                </span>
                <span>
                  <strong>{textAt(record, join(at, "place")) || OBSERVATIONS.untitled}</strong>
                  {open.has(name) && <strong class="note alarm-word">{OBSERVATIONS.notTold}</strong>}
                  <span class="quiet note">{textAt(record, join(at, "what"))}</span>
                </span>
              </a>
            </li>
          );
        })}
      </ul>
    </>
  );
}

/** What wants attention first: danger, then what nobody has classified yet. */
const ORDER: readonly (Classification | undefined)[] = ["C1", undefined, "C2", "FI", "C3", "none"];

/** As they were written, what wants attention first. */
function byWeight(record: JobRecord): readonly string[] {
  const weight = (name: string) => ORDER.indexOf(chosenOf(record, join("observations", name)));
  return [...membersOf(record, "observations")].sort((a, b) => weight(a) - weight(b));
}
