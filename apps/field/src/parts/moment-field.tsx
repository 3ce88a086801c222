import { momentNow, useField } from "../shell/job.ts";
import { clock } from "./clock.ts";
import { Conflict } from "./conflict.tsx";
import { fieldId } from "./field-id.ts";

interface MomentFieldProps {
  readonly path: string;
  readonly label: string;
  /** The words of the button that takes the time of now. */
  readonly now: string;
}

/** A date and time: typed, or taken from the clock of the device. */
export function MomentField({ path, label, now }: MomentFieldProps) {
  const field = useField(path);
  const id = fieldId(path);
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <div class="row">
        <input
          id={id}
          type="datetime-local"
          value={typeof field.value === "string" ? field.value.slice(0, 16) : ""}
          onChange={({ currentTarget }) => {
            const at = new Date(currentTarget.value);
            field.write(Number.isNaN(at.getTime()) ? null : momentNow(at));
          }}
        />
        <button type="button" onClick={() => field.write(momentNow())}>
          {now}
          <span class="unseen">: {label}</span>
        </button>
      </div>
      <Conflict field={field} show={(value) => clock(String(value))} />
    </div>
  );
}
