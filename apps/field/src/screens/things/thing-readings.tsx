import { type FieldSet, THING_KINDS } from "@good-grounds/inspection";
import type { FieldGroup, ReadingField } from "../../keypad/fields.ts";
import { KIND_OF_RANGE } from "../../keypad/kinds.ts";
import { ReadingList } from "../../keypad/reading-list.tsx";
import { useRecord } from "../../keypad/use-record.ts";
import { useSession } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { THINGS } from "../../words/things.ts";
import { type RecordedThing, thingName } from "./recorded.ts";

const END = "after-readings";

/** The readings that can be taken of a thing, as its fields describe them; none for most kinds. */
export function thingGroups({ kind, path }: Pick<RecordedThing, "kind" | "path">): readonly FieldGroup[] {
  const described: FieldSet = THING_KINDS[kind].fields;
  const fields = Object.entries(described).flatMap(([name, field]): readonly ReadingField[] => {
    const { kind: is, label, help, range, usual } = field;
    if (is !== "reading" || range === undefined) return [];
    return [
      {
        spot: { path: `${path}/${name}` },
        kind: KIND_OF_RANGE[range],
        label,
        ...(help === undefined ? {} : { hint: help }),
        ...(usual === undefined ? {} : { usual }),
      },
    ];
  });
  return fields.length === 0 ? [] : [{ title: THINGS.readings, fields }];
}

/** The readings of one thing, by the keypad. */
export function ThingReadings({ thing }: { readonly thing: RecordedThing }) {
  const { job } = useSession();
  const record = useRecord();
  const name = thingName(record, thing);
  const back = linkTo("job", job, "things", thing.kind, thing.name);
  return (
    <>
      <h2 tabIndex={-1} data-start="">
        {name}
      </h2>
      <p class="way-links">
        <a class="up-link" href={back}>
          {THINGS.particulars}
        </a>
      </p>
      <ReadingList label={`${THINGS.readings}: ${name}`} groupsOf={() => thingGroups(thing)} endId={END}>
        <a id={END} class="button main wide" href={back}>
          {THINGS.particulars}
        </a>
      </ReadingList>
    </>
  );
}
