import { useJob } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { CAUTIONS, pointsOf, type Stage } from "../../words/cautions.ts";
import { textAt } from "../observations/read.ts";
import { confirmedSteps, stepsOf } from "./precautions.ts";
import { StepRow } from "./step-row.tsx";

/** Stages of which some steps need not arise in every installation. */
const OPTIONAL: readonly Stage[] = ["insulation", "leave"];

/** The cautions and steps of one stage. */
export function StagePage({ stage }: { readonly stage: Stage }) {
  const { job, record } = useJob();
  const confirmed = confirmedSteps(record);
  return (
    <>
      <ul class="points">
        {pointsOf(stage, textAt(record, "brief/nation")).map((point) => (
          <li key={point}>{point}</li>
        ))}
      </ul>
      {stepsOf(stage).map((step) => (
        <StepRow key={step} step={step} confirmed={confirmed.get(step)} optional={OPTIONAL.includes(stage)} />
      ))}
      {stage === "danger" && (
        <a class="button" href={linkTo("job", job, "observations")}>
          {CAUTIONS.danger}
        </a>
      )}
    </>
  );
}
