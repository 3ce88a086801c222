import { THING_KIND_IDS, THING_KINDS, type ThingKind } from "@good-grounds/inspection";
import { useId, useState } from "preact/hooks";
import { THINGS } from "../../words/things.ts";

interface AddThingProps {
  readonly label?: string;
  readonly onAdd: (kind: ThingKind) => void;
}

/** Chooses a kind of thing and adds one. */
export function AddThing({ label = THINGS.kind, onAdd }: AddThingProps) {
  const id = useId();
  const [kind, setKind] = useState<ThingKind>("enclosures");
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <select
        id={id}
        value={kind}
        onChange={({ currentTarget }) =>
          setKind(THING_KIND_IDS.find((one) => one === currentTarget.value) ?? "enclosures")
        }
      >
        {THING_KIND_IDS.map((one) => (
          <option key={one} value={one}>
            {THING_KINDS[one].noun}
          </option>
        ))}
      </select>
      <button type="button" onClick={() => onAdd(kind)}>
        {THINGS.addThis(THING_KINDS[kind].noun)}
      </button>
    </div>
  );
}
