import { useState } from "preact/hooks";
import type { QuestionView } from "../../engine/protocol.ts";
import { fieldId } from "../../parts/field-id.ts";
import { join } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import { put, useSession } from "../../shell/job.ts";
import { OBSERVATIONS } from "../../words/observations.ts";
import { severities } from "./severities.ts";

interface NextQuestionProps {
  readonly observation: string;
  readonly question: QuestionView;
}

/** The one question that is expected to settle most, with large answers and what each would leave possible. */
export function NextQuestion({ observation, question }: NextQuestionProps) {
  const session = useSession();
  const at = join(observation, `facts/${question.fact}`);
  const [typed, setTyped] = useState("");
  const [why, setWhy] = useState<string>();
  const answer = (value: Value) => put(session, [at, value]);
  const id = fieldId(at);
  return (
    <fieldset class="sheet question">
      <legend>{OBSERVATIONS.next}</legend>
      <p id={`${id}?`}>
        <strong>{question.asks}</strong>
      </p>
      {question.kind === "quantity" ? (
        <form
          class="row"
          onSubmit={(event) => {
            event.preventDefault();
            const text = typed.trim().replace(",", ".");
            if (text !== "") answer(/[a-zµΩ%²]/i.test(text) ? text : `${text} ${question.unit ?? ""}`.trim());
          }}
        >
          <input
            id={id}
            inputMode="decimal"
            autoComplete="off"
            aria-labelledby={`${id}?`}
            value={typed}
            onInput={({ currentTarget }) => setTyped(currentTarget.value)}
          />
          <span>{question.unit}</span>
          <button type="submit">{OBSERVATIONS.take}</button>
        </form>
      ) : (
        <div class="answers">
          {question.leaves.map(({ value, words, possible }) => (
            <button
              key={value}
              type="button"
              class="answer"
              onClick={() => answer(question.kind === "yes-no" ? value === "yes" : value)}
            >
              <span>{words}</span>
              <span class="small quiet">{severities(possible)}</span>
            </button>
          ))}
        </div>
      )}
      {why === undefined ? (
        <button type="button" class="plain" onClick={() => setWhy("")}>
          {OBSERVATIONS.cannot}
        </button>
      ) : (
        <form
          onSubmit={(event) => {
            event.preventDefault();
            if (why.trim() !== "") answer({ notKnown: "limited", reason: why.trim() });
          }}
        >
          <label for={`${id}-why`}>{OBSERVATIONS.why}</label>
          <input
            id={`${id}-why`}
            maxLength={300}
            value={why}
            onInput={({ currentTarget }) => setWhy(currentTarget.value)}
          />
          <button type="submit">{OBSERVATIONS.take}</button>
        </form>
      )}
    </fieldset>
  );
}
