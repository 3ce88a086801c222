import type { KnownItem } from "@good-grounds/inspection/items";
import { useEffect, useRef } from "preact/hooks";
import { Conflict } from "../../parts/conflict.tsx";
import { useDraft } from "../../parts/drafts.ts";
import { fieldId } from "../../parts/field-id.ts";
import { ReasonText } from "../../parts/reason-field.tsx";
import { put, useField, useSession } from "../../shell/job.ts";
import { ANSWERS, INSPECTED } from "../../words/inspected.ts";
import { answering, type Outcome } from "./answers.ts";
import { WhichObservations } from "./which-observations.tsx";

interface ItemProps {
  readonly item: KnownItem;
  readonly place: string;
}

/** One item: what is asked, the five answers, and what the answer needs. */
export function Item({ item, place }: ItemProps) {
  const session = useSession();
  const outcome = useField(`${place}/outcome`);
  const answer = outcome.value as Outcome | undefined;
  const needsReason = answer !== undefined && answer !== "in-order" && answer !== "observed";
  return (
    <fieldset class="sheet item" data-item={item.id}>
      <legend>
        {item.asks} <span class="quiet small">{INSPECTED.regulations(item.regulations)}</span>
      </legend>
      <div class="answers">
        {(Object.keys(ANSWERS) as Outcome[]).map((one) => (
          <label key={one} class="choice">
            <input
              type="radio"
              id={fieldId(place, one)}
              name={fieldId(place)}
              checked={answer === one}
              onChange={() => put(session, ...answering(session.record, place, item.id, one))}
            />
            <span>{ANSWERS[one]}</span>
          </label>
        ))}
      </div>
      <Conflict field={outcome} show={(value) => ANSWERS[value as Outcome] ?? String(value)} />
      {needsReason && <Why place={place} free={answer === "not-applicable"} />}
      {answer === "observed" && <WhichObservations place={place} />}
      {answer !== undefined && (
        <button type="button" class="plain" onClick={() => put(session, [place, null], [`${place}/outcome`, null])}>
          {INSPECTED.clear}
        </button>
      )}
    </fieldset>
  );
}

/** The reason of an answer. Where one is needed and missing, the focus goes to it at once. */
function Why({ place, free }: { readonly place: string; readonly free: boolean }) {
  const reason = useField(`${place}/reason`);
  const recorded = typeof reason.value === "string" ? reason.value : "";
  const draft = useDraft(recorded, (text) => reason.write(text.trim() === "" ? null : text));
  const box = useRef<HTMLDivElement>(null);
  const known = useRef(recorded !== "");
  useEffect(() => {
    // Arrow keys go through the answers; only a finger is taken on to the reason.
    if (!free && !known.current && document.activeElement?.matches(":focus-visible") === false)
      box.current?.querySelector("input")?.focus();
  }, [free]);
  return (
    <div ref={box}>
      <ReasonText id={fieldId(`${place}/reason`)} draft={draft} lacking={!free && draft.text.trim() === ""} />
      <Conflict field={reason} />
    </div>
  );
}
