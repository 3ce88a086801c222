import type { Trouble } from "../../engine/view.ts";
import { placeWords } from "../../parts/place-words.ts";
import { put, useJob } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { FINISH } from "../../words/finish.ts";
import { whereOf } from "./where.ts";

/** Lists that may be found empty; nobody but the person says so. */
const NONE_OF: readonly string[] = ["brief/records", "extent/sampling", "limitations", "supply/bonding", "inspected"];

/** Troubles shown before the rest are counted. */
const SHOWN = 12;

/** What the report still lacks, each with the way to where it is put right. */
export function InTheWay({ troubles }: { readonly troubles: readonly Trouble[] }) {
  const session = useJob();
  const { record, job } = session;
  return (
    <ul class="rows">
      {troubles.slice(0, SHOWN).map(({ path, words }) => {
        const place = placeWords(record, path);
        const where = whereOf(record, path);
        const said = (
          <span>
            {words}
            {!words.toLowerCase().includes(place.toLowerCase()) && <span class="quiet small note">{place}</span>}
          </span>
        );
        return (
          <li key={`${path} ${words}`} class="row between">
            {where === undefined ? (
              said
            ) : (
              <a class="row-link grow" href={linkTo("job", job, ...where)}>
                {said}
              </a>
            )}
            {NONE_OF.includes(path) && record.names(path).length === 0 && (
              <button type="button" class="none-of" onClick={() => put(session, [path, []])}>
                {FINISH.thereIsNone}
                <span class="unseen">: {place}</span>
              </button>
            )}
          </li>
        );
      })}
      {troubles.length > SHOWN && <li>{FINISH.more(troubles.length - SHOWN)}</li>}
    </ul>
  );
}
