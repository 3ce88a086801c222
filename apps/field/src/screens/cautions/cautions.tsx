import { Beside } from "../../parts/beside.tsx";
import { membersOf } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { useJob } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { earthingOff } from "../../shell/safety.ts";
import type { ScreenProps } from "../../shell/screens.ts";
import { CAUTIONS, STAGES, type Stage } from "../../words/cautions.ts";
import { EarthingPage } from "./earthing-page.tsx";
import { confirmedSteps, stepsOf } from "./precautions.ts";
import { StagePage } from "./stage-page.tsx";

const ORDER = Object.keys(STAGES) as Stage[];

/** What is due for safety, stage by stage. */
export default function Cautions({ rest: [open] }: ScreenProps) {
  const { job } = useJob();
  if (open === undefined)
    return (
      <>
        <p class="quiet">{CAUTIONS.intro}</p>
        <Stages />
      </>
    );
  const at = ORDER.indexOf(open as Stage);
  const stage = ORDER[at];
  if (stage === undefined) return <p>{CAUTIONS.noStage}</p>;
  const next = ORDER[at + 1];
  return (
    <Beside label={CAUTIONS.stages} list={() => <Stages current={stage} />}>
      <h2 tabIndex={-1} data-start="">
        {STAGES[stage].title}
      </h2>
      {stage === "earthing" ? <EarthingPage /> : <StagePage stage={stage} />}
      <nav class="stack" aria-label={CAUTIONS.onwards}>
        {next !== undefined && (
          <a class="button" href={linkTo("job", job, "cautions", next)}>
            {CAUTIONS.next(STAGES[next].title)}
          </a>
        )}
        <a class="button" href={linkTo("job", job, "cautions")}>
          {CAUTIONS.all}
        </a>
      </nav>
    </Beside>
  );
}

/** The stages with how far each is; `current` is the one that is open beside them. */
function Stages({ current }: { readonly current?: Stage }) {
  const { job, record } = useJob();
  const confirmed = confirmedSteps(record);
  return (
    <ul class="list" aria-label={CAUTIONS.stages}>
      {ORDER.map((stage) => {
        const steps = stepsOf(stage);
        const have = steps.filter((step) => confirmed.has(step)).length;
        const words =
          stage === "earthing"
            ? earthingWords(record)
            : steps.length === 0
              ? CAUTIONS.read
              : CAUTIONS.far(have, steps.length);
        return (
          <li key={stage}>
            <a
              class="part"
              href={linkTo("job", job, "cautions", stage)}
              aria-current={current === stage ? "page" : undefined}
            >
              <span class={steps.length > 0 && have === steps.length ? "bar full" : "bar"} aria-hidden="true" />
              <strong>{STAGES[stage].title}</strong>
              <span class="quiet small">{words}</span>
            </a>
          </li>
        );
      })}
    </ul>
  );
}

function earthingWords(record: JobRecord): string {
  if (earthingOff(record) !== undefined) return CAUTIONS.off;
  return membersOf(record, "earthingOff").length === 0 ? CAUTIONS.never : CAUTIONS.back;
}
