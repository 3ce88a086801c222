import type { QuestionView } from "../../engine/reason-view.ts";
import { fieldId } from "../../parts/field-id.ts";
import { join } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import { put, useSession } from "../../shell/job.ts";
import { OBSERVATIONS } from "../../words/observations.ts";
import { CannotSay } from "./cannot-say.tsx";
import { QuantityAnswer } from "./quantity-answer.tsx";
import { severities } from "./severities.ts";

interface NextQuestionProps {
  readonly observation: string;
  readonly question: QuestionView;
}

/** The one question that is expected to settle most, with large answers and what each would leave possible. */
export function NextQuestion({ observation, question }: NextQuestionProps) {
  const session = useSession();
  const at = join(observation, `facts/${question.fact}`);
  const answer = (value: Value) => put(session, [at, value]);
  const id = fieldId(at);
  return (
    <fieldset class="sheet question">
      <legend>{OBSERVATIONS.next}</legend>
      <p id={`${id}?`}>
        <strong>{question.asks}</strong>
      </p>
      {question.kind === "quantity" ? (
        <QuantityAnswer id={id} unit={question.unit} onAnswer={answer} />
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
      <CannotSay id={id} onAnswer={answer} />
    </fieldset>
  );
}
