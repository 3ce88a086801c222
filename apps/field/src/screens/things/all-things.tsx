import { THING_KIND_IDS, THING_KINDS } from "@good-grounds/inspection";
import { useRecord } from "../../keypad/use-record.ts";
import { Notice } from "../../parts/notice.tsx";
import { put, useSession } from "../../shell/job.ts";
import { goTo } from "../../shell/route.ts";
import { THINGS } from "../../words/things.ts";
import { AddThing } from "./add-thing.tsx";
import { addThing, thingsIn, unfolding } from "./recorded.ts";
import { ThingLink } from "./thing-link.tsx";

/** Every thing of the job by its kind. */
export function AllThings({ current }: { readonly current?: string }) {
  const session = useSession();
  const record = useRecord();
  const things = thingsIn(record);
  return (
    <>
      <p class="quiet">{THINGS.lead}</p>
      <Unfold />
      {things.length === 0 && <p class="quiet">{THINGS.none}</p>}
      {THING_KIND_IDS.map((kind) => {
        const own = things.filter((thing) => thing.kind === kind);
        if (own.length === 0) return null;
        return (
          <section key={kind} aria-label={THING_KINDS[kind].noun}>
            <ul class="rows">
              {own.map((thing) => (
                <li key={thing.path}>
                  <ThingLink record={record} job={session.job} thing={thing} current={thing.path === current} />
                </li>
              ))}
            </ul>
          </section>
        );
      })}
      <AddThing
        onAdd={(kind) => {
          const { name, changes } = addThing(session.record, kind, {});
          put(session, ...changes);
          goTo("job", session.job, "things", kind, name);
        }}
      />
    </>
  );
}

/** The way to edit what an earlier version wrote as one value. */
function Unfold() {
  const session = useSession();
  const record = useRecord();
  const changes = unfolding(record);
  if (changes.length === 0) return null;
  return (
    <Notice>
      <p>{THINGS.unfold(changes.filter(([, value]) => value === null).length)}</p>
      <button type="button" onClick={() => put(session, ...unfolding(session.record))}>
        {THINGS.unfoldDo}
      </button>
    </Notice>
  );
}
