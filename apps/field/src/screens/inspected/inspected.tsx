import { ITEM_GROUPS, ITEMS } from "@good-grounds/inspection/items";
import { Beside } from "../../parts/beside.tsx";
import { useJob } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import type { ScreenProps } from "../../shell/screens.ts";
import { INSPECTED } from "../../words/inspected.ts";
import { answered } from "./answers.ts";
import { Group } from "./group.tsx";

/** What an inspection has to look at, group by group. */
export default function Inspected({ rest: [open] }: ScreenProps) {
  const { record } = useJob();
  if (open !== undefined)
    return (
      <Beside label={INSPECTED.groups} list={() => <Groups current={open} />}>
        <Group id={open} />
      </Beside>
    );
  return (
    <>
      <p>{INSPECTED.far(answered(record), ITEMS.length)}</p>
      <p class="quiet">{INSPECTED.intro}</p>
      <Groups />
    </>
  );
}

/** The groups with how much of each is open; `current` is the one that is open beside them. */
function Groups({ current }: { readonly current?: string }) {
  const { job, record } = useJob();
  return (
    <ul class="list" aria-label={INSPECTED.groups}>
      {ITEM_GROUPS.map(({ id, title, items }) => {
        const left = items.length - answered(record, items);
        return (
          <li key={id}>
            <a
              class="part"
              href={linkTo("job", job, "inspected", id)}
              aria-current={current === id ? "page" : undefined}
            >
              <span class={left === 0 ? "bar full" : "bar"} aria-hidden="true" />
              <strong>{title}</strong>
              <span class="quiet small">{left === 0 ? INSPECTED.done : INSPECTED.open(left)}</span>
            </a>
          </li>
        );
      })}
    </ul>
  );
}
