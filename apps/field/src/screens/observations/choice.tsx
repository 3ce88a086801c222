import { CLASSIFICATIONS, type Classification } from "@good-grounds/core";
import { CLASSIFICATION_SHORT } from "@good-grounds/report/labels";
import type { ReasonView } from "../../engine/reason-view.ts";
import { judgedWith } from "../../firm/judged-with.ts";
import { useKeptFolder } from "../../firm/kept.ts";
import { Conflict } from "../../parts/conflict.tsx";
import { useDraft } from "../../parts/drafts.ts";
import { fieldId } from "../../parts/field-id.ts";
import { Mark } from "../../parts/mark.tsx";
import { join } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import { momentNow, put, useField, useSession } from "../../shell/job.ts";
import { OBSERVATIONS } from "../../words/observations.ts";

interface ChoiceProps {
  readonly observation: string;
  readonly follows: ReasonView | undefined;
}

/** The classification a person chooses, with the reason. Nothing is chosen beforehand. */
export function Choice({ observation, follows }: ChoiceProps) {
  const session = useSession();
  const at = join(observation, "choice");
  const field = useField(at);
  const kept = useKeptFolder();
  const choice = (field.value ?? {}) as { readonly classification?: Value; readonly reason?: Value };
  const chosen = CLASSIFICATIONS.find((one) => one === choice.classification);
  const write = (classification: Classification, reason: string) =>
    put(
      session,
      [at, { classification, reason: reason.trim() || "–", by: session.person || "unnamed", at: momentNow() }],
      ...(kept === "unread" ? [] : judgedWith(session.record, kept)),
    );
  const reason = typeof choice.reason === "string" && choice.reason !== "–" ? choice.reason : "";
  const draft = useDraft(reason, (text) => chosen !== undefined && write(chosen, text));
  const id = fieldId(at);
  const differs =
    chosen !== undefined &&
    follows?.classification !== null &&
    follows !== undefined &&
    follows.classification !== chosen;
  const lacking = chosen !== undefined && draft.text.trim() === "";
  return (
    <>
      <fieldset class="field">
        <legend class="unseen">{OBSERVATIONS.choice}</legend>
        <div class="classes">
          {CLASSIFICATIONS.map((one) => (
            <label key={one} class="choice">
              <input
                type="radio"
                id={`${id}-${one}`}
                name={id}
                checked={chosen === one}
                onChange={() => write(one, draft.text)}
              />
              <span>
                <Mark of={one} /> {CLASSIFICATION_SHORT[one]}
              </span>
            </label>
          ))}
        </div>
      </fieldset>
      <Conflict
        field={field}
        show={(value) => String((value as { readonly classification?: Value }).classification ?? "")}
      />
      {chosen !== undefined && (
        <div class="field">
          <label for={`${id}-reason`}>{OBSERVATIONS.reason}</label>
          {differs && <p class="fault">{OBSERVATIONS.reasonDiffers}</p>}
          <textarea
            id={`${id}-reason`}
            rows={3}
            maxLength={4000}
            value={draft.text}
            aria-invalid={lacking && differs ? "true" : undefined}
            onInput={({ currentTarget }) => draft.type(currentTarget.value)}
            onBlur={draft.leave}
          />
        </div>
      )}
    </>
  );
}
