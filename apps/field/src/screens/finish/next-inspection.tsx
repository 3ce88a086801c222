import { useDraft } from "../../parts/drafts.ts";
import { fieldId } from "../../parts/field-id.ts";
import type { Value } from "../../record/entry.ts";
import { useField } from "../../shell/job.ts";
import { FINISH } from "../../words/finish.ts";

const PATH = "conclusion/nextInspection";

/** When the next inspection is due, with the reason for it. */
export function NextInspection() {
  const field = useField(PATH);
  const { by = "", reason = "" } = (field.value ?? {}) as { readonly by?: Value; readonly reason?: Value };
  const write = (next: { readonly by: string; readonly reason: string }) =>
    field.write(next.by === "" && next.reason === "" ? null : next);
  const draft = useDraft(String(reason), (text) => write({ by: String(by), reason: text }));
  return (
    <>
      <div class="field">
        <label for={fieldId(PATH, "by")}>{FINISH.nextBy}</label>
        <input
          id={fieldId(PATH, "by")}
          type="date"
          value={String(by)}
          onChange={({ currentTarget }) => write({ by: currentTarget.value, reason: draft.text })}
        />
      </div>
      <div class="field">
        <label for={fieldId(PATH, "reason")}>{FINISH.nextReason}</label>
        <textarea
          id={fieldId(PATH, "reason")}
          rows={2}
          maxLength={4000}
          value={draft.text}
          onInput={({ currentTarget }) => draft.type(currentTarget.value)}
          onBlur={draft.leave}
        />
      </div>
    </>
  );
}
