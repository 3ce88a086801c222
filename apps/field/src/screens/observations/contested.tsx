import type { ReasonView } from "../../engine/reason-view.ts";
import { fieldId } from "../../parts/field-id.ts";
import { join } from "../../record/document.ts";
import { put, useSession } from "../../shell/job.ts";
import { OBSERVATIONS } from "../../words/observations.ts";
import { severities } from "./severities.ts";

interface ContestedProps {
  readonly observation: string;
  readonly view: ReasonView;
}

/** Points on which competent inspectors differ, with what each position leads to. The person takes one. */
export function Contested({ observation, view }: ContestedProps) {
  const session = useSession();
  if (view.contested.length === 0) return null;
  return (
    <>
      <h3>{OBSERVATIONS.differ}</h3>
      {view.contested.map(({ point, question, positions }) => {
        const at = join(observation, `positions/${point}`);
        return (
          <fieldset key={point} class="sheet">
            <legend>{question}</legend>
            {positions.map(({ position, words, because, taken, possible }) => (
              <label key={position} class="choice">
                <input
                  type="radio"
                  id={fieldId(at, position)}
                  name={fieldId(at)}
                  checked={taken}
                  onChange={() => put(session, [at, { position }])}
                />
                <span>
                  {words} → {severities(possible)}
                  <span class="quiet small note">{because}</span>
                </span>
              </label>
            ))}
          </fieldset>
        );
      })}
    </>
  );
}
