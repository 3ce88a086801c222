import { useRecord } from "../../keypad/use-record.ts";
import { fieldId } from "../../parts/field-id.ts";
import { TextField } from "../../parts/text-field.tsx";
import { Toggle } from "../../parts/toggle.tsx";
import { join } from "../../record/document.ts";
import { put, useSession } from "../../shell/job.ts";
import { goTo, linkTo } from "../../shell/route.ts";
import { THINGS } from "../../words/things.ts";
import { AddThing } from "./add-thing.tsx";
import { addThing, thingsIn } from "./recorded.ts";
import { means, type Named, namedBy, type Speakable, speakable, speakOf } from "./spoken-of.ts";
import { ThingLink } from "./thing-link.tsx";

/** What an observation speaks of: ticked among what is recorded, or brought in. */
export function SpeaksOf({ observation }: { readonly observation: string }) {
  const session = useSession();
  const record = useRecord();
  const all = speakable(record, observation);
  const named = namedBy(record, observation);
  const gone = named.filter((one) => !all.some((other) => means(record, observation, one, other)));
  const brought = thingsIn(record).filter(({ path }) => path.startsWith(`${observation}/`));
  const namedAs = (one: Speakable) => named.find((other) => means(record, observation, other, one));
  const shown = all.filter((one) => one.isHere || namedAs(one) !== undefined);
  const others = all.filter((one) => !shown.includes(one));
  const row = (one: Speakable) => (
    <Row key={`${one.board ?? ""} ${one.id}`} observation={observation} one={one} named={namedAs(one)} />
  );
  return (
    <fieldset class="field">
      <legend>{THINGS.speaksOf}</legend>
      <p class="quiet small">{THINGS.speaksOfHelp}</p>
      {shown.map(row)}
      {gone.map(({ at, id }) => (
        <Toggle key={at} checked onChange={() => put(session, [at, null])}>
          {THINGS.gone(id)}
        </Toggle>
      ))}
      <ul class="rows">
        {brought.map((thing) => (
          <li key={thing.path}>
            <ThingLink record={record} job={session.job} thing={thing} />
          </li>
        ))}
      </ul>
      {others.length > 0 && (
        <details>
          <summary>{THINGS.others}</summary>
          {others.map(row)}
        </details>
      )}
      <AddThing
        label={THINGS.bring}
        onAdd={(kind) => {
          const at = (member: string) => {
            const value = record.value(join(observation, member));
            return typeof value === "string" ? value : undefined;
          };
          const { name, changes } = addThing(record, kind, { board: at("board"), circuit: at("circuit") });
          const one = { id: name, words: name, isHere: true, address: [] };
          put(session, ...changes, ...speakOf(record, observation, one));
          goTo("job", session.job, "things", kind, name);
        }}
      />
    </fieldset>
  );
}

interface RowProps {
  readonly observation: string;
  readonly one: Speakable;
  readonly named: Named | undefined;
}

function Row({ observation, one, named }: RowProps) {
  const session = useSession();
  const { id, board, words, address } = one;
  return (
    <>
      <Toggle
        id={fieldId(join(observation, "things"), `${board ?? ""}.${id}`)}
        checked={named !== undefined}
        onChange={(checked) =>
          put(
            session,
            ...(checked
              ? speakOf(session.record, observation, one)
              : named === undefined
                ? []
                : [[named.at, null] as const]),
          )
        }
      >
        {words}
      </Toggle>
      {named !== undefined && (
        <>
          <TextField path={join(named.at, "quantity")} label={THINGS.howMany(words)} kind="count" />
          <p class="way-links">
            <a href={linkTo("job", session.job, ...address)}>{THINGS.fill(words)}</a>
          </p>
        </>
      )}
    </>
  );
}
