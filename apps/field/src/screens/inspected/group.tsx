import { ITEM_GROUPS, type KnownItem } from "@good-grounds/inspection/items";
import { put, useJob } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { ABSENT, INSPECTED } from "../../words/inspected.ts";
import { absentees, answered, answeringAbsent, placeOf, placesByItem } from "./answers.ts";
import { Item } from "./item.tsx";

/** The items of one group, one below the other. */
export function Group({ id }: { readonly id: string }) {
  const session = useJob();
  const { record } = session;
  const at = ITEM_GROUPS.findIndex((group) => group.id === id);
  const group = ITEM_GROUPS[at];
  if (group === undefined) return <p>{INSPECTED.noGroup}</p>;
  const items: readonly KnownItem[] = group.items;
  const places = placesByItem(record);
  const missing = [...absentees(record, items)];
  const next = ITEM_GROUPS[at + 1];
  return (
    <>
      <h2 tabIndex={-1} data-start="">
        {group.title}
      </h2>
      <p class="quiet" role="status">
        {INSPECTED.far(answered(record, items), items.length)}
      </p>
      {missing.length > 0 && (
        <fieldset class="sheet stack" aria-label={INSPECTED.absentTitle}>
          <strong>{INSPECTED.absentTitle}</strong>
          {missing.map(([circumstance, which]) => (
            <button
              key={circumstance}
              type="button"
              onClick={() => put(session, ...answeringAbsent(record, circumstance, which))}
            >
              {INSPECTED.absent(ABSENT[circumstance], which.length)}
            </button>
          ))}
        </fieldset>
      )}
      <div class="items">
        {items.map((item) => (
          <Item key={item.id} item={item} place={placeOf(places, item.id)} />
        ))}
      </div>
      <nav class="stack" aria-label={INSPECTED.onwards}>
        {next !== undefined && (
          <a class="button main" href={linkTo("job", session.job, "inspected", next.id)}>
            {INSPECTED.next(next.title)}
          </a>
        )}
        <a class="button" href={linkTo("job", session.job, "inspected")}>
          {INSPECTED.all}
        </a>
      </nav>
    </>
  );
}
