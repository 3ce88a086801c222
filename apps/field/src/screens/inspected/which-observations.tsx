import { fieldId } from "../../parts/field-id.ts";
import { Toggle } from "../../parts/toggle.tsx";
import { membersOf } from "../../record/document.ts";
import { useField, useJob } from "../../shell/job.ts";
import { goTo } from "../../shell/route.ts";
import { INSPECTED } from "../../words/inspected.ts";
import { OBSERVATIONS } from "../../words/observations.ts";
import { startObservation } from "../observations/start.ts";

/** The observations that were made at an item. */
export function WhichObservations({ place }: { readonly place: string }) {
  const session = useJob();
  const { job, record } = session;
  const field = useField(`${place}/observations`);
  const named = Array.isArray(field.value) ? field.value.map(String) : [];
  const all = membersOf(record, "observations");
  const write = () => {
    const at = `${place}/observations`;
    const name = startObservation(session, {}, (fresh) => [[at, [...named, fresh]]]);
    goTo("job", job, "observations", name);
  };
  return (
    <fieldset aria-label={INSPECTED.which}>
      <strong>{INSPECTED.which}</strong>
      {all.length === 0 && <p class="quiet">{INSPECTED.none}</p>}
      {all.map((id) => (
        <Toggle
          key={id}
          id={fieldId(`${place}/observations`, id)}
          checked={named.includes(id)}
          onChange={(checked) => field.write(checked ? [...named, id] : named.filter((other) => other !== id))}
        >
          {String(record.value(`observations/${id}/place`) ?? OBSERVATIONS.untitled)}
          {": "}
          {String(record.value(`observations/${id}/what`) ?? "")}
        </Toggle>
      ))}
      {named.length === 0 && <p class="fault">{INSPECTED.whichNeeded}</p>}
      <button type="button" onClick={write}>
        {INSPECTED.write}
      </button>
    </fieldset>
  );
}
