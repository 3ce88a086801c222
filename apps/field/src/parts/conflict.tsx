import type { Value } from "../record/entry.ts";
import { equal } from "../record/record.ts";
import { type Field, useSession } from "../shell/job.ts";
import { nameOf } from "../shell/safety.ts";
import { PARTS } from "../words/parts.ts";
import { clock } from "./clock.ts";

interface ConflictProps {
  readonly field: Field;
  /** How a value is shown; its text where it is left out. */
  readonly show?: (value: Value) => string;
}

/** Where two people wrote different values at one place: both, with who and when, and a choice. Nothing otherwise. */
export function Conflict({ field, show = plain }: ConflictProps) {
  const { record } = useSession();
  const different = field.standing.filter(
    ({ value }, i, all) => all.findIndex((other) => equal(other.value, value)) === i,
  );
  if (different.length < 2) return null;
  return (
    <fieldset class="warning" aria-label={PARTS.two}>
      <p>
        <strong>{PARTS.two}</strong>
      </p>
      {different.map(({ id, value, by, at }) => (
        <div key={id} class="row between">
          <span>
            {value === null ? PARTS.removed : show(value)}
            <span class="quiet small">
              {" "}
              {nameOf(record, by) ?? ""} {clock(at)}
            </span>
          </span>
          <button type="button" onClick={() => field.write(value)}>
            {PARTS.keepThis}
            <span class="unseen">: {value === null ? PARTS.removed : show(value)}</span>
          </button>
        </div>
      ))}
    </fieldset>
  );
}

function plain(value: Value): string {
  if (Array.isArray(value)) return value.join(", ");
  if (typeof value === "object" && value !== null) return Object.values(value).map(String).join(", ");
  return String(value);
}
