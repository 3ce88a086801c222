import { useEffect, useState } from "preact/hooks";
import { engine } from "../../engine/client.ts";
import type { TopicLabel } from "../../engine/reason-view.ts";
import { judgedWith } from "../../firm/judged-with.ts";
import { keptFolder } from "../../firm/kept.ts";
import { fieldId } from "../../parts/field-id.ts";
import { join } from "../../record/document.ts";
import { put, useSession } from "../../shell/job.ts";
import { OBSERVATIONS } from "../../words/observations.ts";

/** Subjects shown at once; typing another word narrows them down. */
const SHOWN = 12;

/** The choice of the subject an observation is about, by typing a word of it. */
export function Subject({ observation }: { readonly observation: string }) {
  const session = useSession();
  const [found, setFound] = useState<readonly TopicLabel[] | undefined>();
  const [typed, setTyped] = useState("");
  useEffect(() => {
    // What was typed meanwhile asks again; a late answer to fewer letters is left aside.
    let late = false;
    if (typed.trim() === "") setFound(undefined);
    else
      engine.topics(typed).then(
        (topics) => late || setFound(topics.slice(0, SHOWN)),
        () => undefined,
      );
    return () => {
      late = true;
    };
  }, [typed]);
  const choose = async (topic: string) => {
    const kept = await keptFolder();
    put(session, [join(observation, "topic"), topic], ...judgedWith(session.record, kept));
  };
  const id = fieldId(join(observation, "topic"));
  return (
    <div class="field">
      <label for={id}>{OBSERVATIONS.subject}</label>
      <div id={`${id}?`} class="quiet small help">
        {OBSERVATIONS.subjectHelp}
      </div>
      <input
        id={id}
        type="search"
        autoComplete="off"
        aria-describedby={`${id}?`}
        value={typed}
        onInput={({ currentTarget }) => setTyped(currentTarget.value)}
      />
      <div role="status" class="unseen">
        {found?.length ?? ""}
      </div>
      {found?.length === 0 && <p class="quiet">{OBSERVATIONS.noSubjects}</p>}
      <ul class="rows">
        {(found ?? []).map((one) => (
          <li key={one.id}>
            <button type="button" class="row-link" onClick={() => void choose(one.id)}>
              <span>
                <strong>{one.title}</strong>
                <br />
                <span class="quiet small">{one.groupTitle}</span>
              </span>
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}
