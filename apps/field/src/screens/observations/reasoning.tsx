import type { Classification } from "@good-grounds/core";
import type { ReasonView } from "../../engine/reason-view.ts";
import { Mark } from "../../parts/mark.tsx";
import { Notice } from "../../parts/notice.tsx";
import { join } from "../../record/document.ts";
import { put, useSession } from "../../shell/job.ts";
import { OBSERVATIONS } from "../../words/observations.ts";
import { Contested } from "./contested.tsx";
import { Known } from "./known.tsx";
import { NextQuestion } from "./next-question.tsx";
import { Opening } from "./opening.tsx";
import { Reach } from "./reach.tsx";
import { severities } from "./severities.ts";
import { Subject } from "./subject.tsx";
import type { ReasoningState } from "./use-reasoning.ts";

interface ReasoningProps {
  readonly observation: string;
  readonly state: ReasoningState;
}

/** The line of reasoning, growing with each answer: what is possible, the next question, what is known, where practice is divided. */
export function Reasoning({ observation, state }: ReasoningProps) {
  const { topic, view, failed } = state;
  const session = useSession();
  if (topic === "") return <Subject observation={observation} />;
  if (failed !== undefined) return <Notice kind="alert">{OBSERVATIONS.failed(failed)}</Notice>;
  if (view === undefined || view.topic.id !== topic) return <p aria-busy="true">{OBSERVATIONS.loading}</p>;
  return (
    <>
      <div class="row between">
        <strong>{view.topic.title}</strong>
        <button type="button" class="plain" onClick={() => put(session, [join(observation, "topic"), null])}>
          {OBSERVATIONS.otherSubject}
        </button>
      </div>
      <Possible view={view} />
      {view.against.map(({ words }) => (
        <Notice key={words}>{words}</Notice>
      ))}
      {view.next !== undefined && <NextQuestion key={view.next.fact} observation={observation} question={view.next} />}
      <Reach observation={observation} topic={topic} />
      <Opening observation={observation} view={view} />
      <Known observation={observation} view={view} />
      <Contested observation={observation} view={view} />
      <Changes view={view} />
      <details>
        <summary>{OBSERVATIONS.argument}</summary>
        <Argument parts={view.parts} />
      </details>
      <Remedies observation={observation} view={view} />
    </>
  );
}

/** The marks of what is still possible; they get fewer as facts are known. */
function Possible({ view }: { readonly view: ReasonView }) {
  const shown: readonly Classification[] = view.classification === null ? view.possible : [view.classification];
  return (
    <div class="sheet" role="status">
      <p class="small quiet">{view.classification === null ? OBSERVATIONS.possible : OBSERVATIONS.follows}</p>
      <div class="row">
        {shown.map((one) => (
          <Mark key={one} of={one} />
        ))}
      </div>
      <p>{view.headline}</p>
      <p class="small quiet">{OBSERVATIONS.derived}</p>
    </div>
  );
}

function Changes({ view }: { readonly view: ReasonView }) {
  const changes = [...view.down, ...view.up].slice(0, 8);
  if (changes.length === 0) return null;
  return (
    <details>
      <summary>{OBSERVATIONS.changes}</summary>
      <ul>
        {changes.map(({ clauses, possible }) => (
          <li key={clauses.join()}>{OBSERVATIONS.to(severities(possible), clauses.join(" and "))}</li>
        ))}
      </ul>
    </details>
  );
}

function Argument({ parts }: Pick<ReasonView, "parts">) {
  return (
    <>
      {parts.map(({ heading, lines }) => (
        <div key={heading}>
          <h3>{heading}</h3>
          {lines.map(({ depth, tag, words }, i) => (
            <p key={`${i} ${words}`} class="line" style={{ marginInlineStart: `${depth * 0.9}rem` }}>
              {tag !== "" && <span class="tag">{tag}</span>} {words}
            </p>
          ))}
        </div>
      ))}
    </>
  );
}

function Remedies({ observation, view }: { readonly observation: string; readonly view: ReasonView }) {
  const session = useSession();
  if (view.remedies.length === 0) return null;
  return (
    <details>
      <summary>{OBSERVATIONS.remedies}</summary>
      {view.remedies.map(({ words, after }) => (
        <div key={words} class="row between sheet">
          <span>
            {words} → {severities(after)}
          </span>
          <button type="button" onClick={() => put(session, [join(observation, "remedy"), words])}>
            {OBSERVATIONS.useRemedy}
          </button>
        </div>
      ))}
    </details>
  );
}
