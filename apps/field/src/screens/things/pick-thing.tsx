import { Conflict } from "../../parts/conflict.tsx";
import { fieldId } from "../../parts/field-id.ts";
import { useField } from "../../shell/job.ts";

interface PickThingProps {
  /** The place at which the id of what is picked stands. */
  readonly path: string;
  readonly label: string;
  readonly none: string;
  /** What there is, by id, with what it is called. */
  readonly options: readonly (readonly [id: string, words: string])[];
}

/** Picks one thing of those that are recorded. Nothing is drawn where there is none to pick. */
export function PickThing({ path, label, none, options }: PickThingProps) {
  const field = useField(path);
  const id = fieldId(path);
  const value = typeof field.value === "string" ? field.value : "";
  const words = (one: unknown) => options.find(([name]) => name === one)?.[1] ?? String(one);
  if (options.length === 0 && value === "" && field.standing.length < 2) return null;
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <select
        id={id}
        value={value}
        onChange={({ currentTarget }) => field.write(currentTarget.value === "" ? null : currentTarget.value)}
      >
        <option value="">{none}</option>
        {value !== "" && options.every(([name]) => name !== value) && <option value={value}>{value}</option>}
        {options.map(([name, said]) => (
          <option key={name} value={name}>
            {said}
          </option>
        ))}
      </select>
      <Conflict field={field} show={words} />
    </div>
  );
}
