import { clock } from "../../parts/clock.ts";
import { fieldId } from "../../parts/field-id.ts";
import { put, useSession } from "../../shell/job.ts";
import { nameOf } from "../../shell/safety.ts";
import { CAUTIONS, STEPS } from "../../words/cautions.ts";
import { type Confirmed, confirming, type Step } from "./precautions.ts";

interface StepRowProps {
  readonly step: Step;
  readonly confirmed: Confirmed | undefined;
  /** Whether it may be said not to arise. */
  readonly optional?: boolean;
}

/** One step for safety: confirmed with name and time, or said not to arise. */
export function StepRow({ step, confirmed, optional = false }: StepRowProps) {
  const session = useSession();
  const choose = (outcome: Confirmed["outcome"] | undefined) =>
    put(session, confirming(session.record, step, outcome, session.person));
  const answers = optional
    ? ([
        ["done", CAUTIONS.done],
        ["not-applicable", CAUTIONS.doesNotArise],
      ] as const)
    : ([["done", CAUTIONS.done]] as const);
  return (
    <fieldset
      class={`step${optional ? " wide" : ""}${confirmed === undefined ? "" : " confirmed"}`}
      aria-label={STEPS[step]}
    >
      <p>{STEPS[step]}</p>
      <div class="row">
        {answers.map(([outcome, words]) => (
          <button
            key={outcome}
            type="button"
            id={fieldId(step, outcome)}
            aria-pressed={confirmed?.outcome === outcome}
            onClick={() => choose(confirmed?.outcome === outcome ? undefined : outcome)}
          >
            {words}
          </button>
        ))}
        <span class="quiet small" role="status">
          {confirmed !== undefined && CAUTIONS.at(clock(confirmed.at), nameOf(session.record, confirmed.by))}
        </span>
      </div>
    </fieldset>
  );
}
