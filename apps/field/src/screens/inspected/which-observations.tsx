import { fieldId } from "../../parts/field-id.ts";
import { Toggle } from "../../parts/toggle.tsx";
import { membersOf } from "../../record/document.ts";
import { useField, useJob } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { INSPECTED } from "../../words/inspected.ts";

/** The observations that were made at an item. */
export function WhichObservations({ place }: { readonly place: string }) {
  const { job, record } = useJob();
  const field = useField(`${place}/observations`);
  const named = Array.isArray(field.value) ? field.value.map(String) : [];
  const all = membersOf(record, "observations");
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
          {String(record.value(`observations/${id}/place`) ?? id)}
          {": "}
          {String(record.value(`observations/${id}/what`) ?? "")}
        </Toggle>
      ))}
      {named.length === 0 && <p class="fault">{INSPECTED.whichNeeded}</p>}
      <a class="button" href={linkTo("job", job, "observations")}>
        {INSPECTED.write}
      </a>
    </fieldset>
  );
}
