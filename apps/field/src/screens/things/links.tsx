import { useRecord } from "../../keypad/use-record.ts";
import { Conflict } from "../../parts/conflict.tsx";
import { fieldId } from "../../parts/field-id.ts";
import { Toggle } from "../../parts/toggle.tsx";
import { join, membersOf } from "../../record/document.ts";
import { useField } from "../../shell/job.ts";
import { THINGS } from "../../words/things.ts";
import { circuitName } from "../readings/names.ts";
import { PickThing } from "./pick-thing.tsx";
import { type RecordedThing, thingName, thingsIn } from "./recorded.ts";

/** The other things that a thing names: what a joint joins and lies in, the circuits that a device feeds. */
export function ThingLinks({ thing: { kind, path } }: { readonly thing: RecordedThing }) {
  const record = useRecord();
  const named = (wanted: string) =>
    thingsIn(record)
      .filter((one) => one.kind === wanted)
      .map((one) => [one.name, thingName(record, one)] as const);
  if (kind === "joints")
    return (
      <>
        <PickSeveral path={join(path, "between")} label={THINGS.between} options={named("sections")} />
        <PickThing
          path={join(path, "enclosure")}
          label={THINGS.enclosure}
          none={THINGS.noEnclosure}
          options={named("enclosures")}
        />
      </>
    );
  const board = record.value(join(path, "board"));
  if (kind !== "arcDevices" || typeof board !== "string") return null;
  const circuits = membersOf(record, `boards/${board}/circuits`).map(
    (circuit) => [circuit, circuitName(record, board, circuit)] as const,
  );
  return <PickSeveral path={join(path, "feeds")} label={THINGS.feeds} options={circuits} />;
}

interface PickSeveralProps {
  readonly path: string;
  readonly label: string;
  readonly options: readonly (readonly [id: string, words: string])[];
}

/** Picks several of what is recorded, by their ids. One that is named and not there any more can be taken out. */
function PickSeveral({ path, label, options }: PickSeveralProps) {
  const field = useField(path);
  const picked = (Array.isArray(field.value) ? field.value : []).map(String);
  const gone = picked.filter((one) => options.every(([id]) => id !== one));
  const all = [...options, ...gone.map((id) => [id, THINGS.gone(id)] as const)];
  if (all.length === 0) return null;
  return (
    <fieldset class="field">
      <legend>{label}</legend>
      {all.map(([id, words]) => (
        <Toggle
          key={id}
          id={fieldId(path, id)}
          checked={picked.includes(id)}
          onChange={(checked) => {
            const next = all.map(([one]) => one).filter((one) => (one === id ? checked : picked.includes(one)));
            field.write(next.length === 0 ? null : next);
          }}
        >
          {words}
        </Toggle>
      ))}
      <Conflict field={field} />
    </fieldset>
  );
}
