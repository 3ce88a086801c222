import type { ComponentChildren } from "preact";
import { useField } from "../shell/job.ts";
import { PARTS } from "../words/parts.ts";
import { Conflict } from "./conflict.tsx";
import { fieldId } from "./field-id.ts";

interface ChoiceFieldProps<T extends string> {
  readonly path: string;
  readonly label: string;
  readonly help?: ComponentChildren;
  /** What there is to choose from, with its words, in order. */
  readonly options: Readonly<Record<T, string>>;
}

/** More than this many are chosen from a list instead of from buttons. */
const MOST_BUTTONS = 5;

/** One of a few words at a place of the job. Nothing is chosen beforehand. */
export function ChoiceField<T extends string>({ path, label, help, options }: ChoiceFieldProps<T>) {
  const field = useField(path);
  const entries = Object.entries(options) as [T, string][];
  const id = fieldId(path);
  const helpId = help === undefined ? undefined : `${id}?`;
  const words = help !== undefined && (
    <div id={helpId} class="quiet small help">
      {help}
    </div>
  );
  const conflict = <Conflict field={field} show={(value) => options[value as T] ?? String(value)} />;
  if (entries.length > MOST_BUTTONS)
    return (
      <div class="field">
        <label for={id}>{label}</label>
        {words}
        <select
          id={id}
          aria-describedby={helpId}
          value={typeof field.value === "string" ? field.value : ""}
          onChange={({ currentTarget }) => field.write(currentTarget.value === "" ? null : currentTarget.value)}
        >
          <option value="">{PARTS.choose}</option>
          {entries.map(([value, said]) => (
            <option key={value} value={value}>
              {said}
            </option>
          ))}
        </select>
        {conflict}
      </div>
    );
  return (
    <fieldset class="field" aria-describedby={helpId}>
      <legend>{label}</legend>
      {words}
      <div class="choices">
        {entries.map(([value, said]) => (
          <label key={value} class="choice">
            <input
              type="radio"
              id={fieldId(path, value)}
              name={id}
              checked={field.value === value}
              onChange={() => field.write(value)}
            />
            <span>{said}</span>
          </label>
        ))}
      </div>
      {conflict}
    </fieldset>
  );
}
