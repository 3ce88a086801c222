import { useRecord } from "../../keypad/use-record.ts";
import { Section } from "../../parts/section.tsx";
import { put, useSession } from "../../shell/job.ts";
import { goTo } from "../../shell/route.ts";
import { THINGS } from "../../words/things.ts";
import { AddThing } from "./add-thing.tsx";
import { addThing, thingsAt, type Whose } from "./recorded.ts";
import { ThingLink } from "./thing-link.tsx";

/** The things of a board, of a circuit, or of the origin, with the way to add one there. */
export function ThingsHere(whose: Whose) {
  const session = useSession();
  const record = useRecord();
  const things = thingsAt(record, whose);
  return (
    <Section title={THINGS.here} help={THINGS.hereHelp}>
      {things.length === 0 && <p class="quiet">{THINGS.none}</p>}
      <ul class="rows">
        {things.map((thing) => (
          <li key={thing.path}>
            <ThingLink record={record} job={session.job} thing={thing} />
          </li>
        ))}
      </ul>
      <AddThing
        onAdd={(kind) => {
          const { name, changes } = addThing(session.record, kind, whose);
          put(session, ...changes);
          goTo("job", session.job, "things", kind, name);
        }}
      />
    </Section>
  );
}
