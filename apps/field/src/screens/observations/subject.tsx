import { useEffect, useState } from "preact/hooks";
import { engine } from "../../engine/client.ts";
import type { TopicLabel } from "../../engine/protocol.ts";
import { fieldId } from "../../parts/field-id.ts";
import { join } from "../../record/document.ts";
import { put, useSession } from "../../shell/job.ts";
import { OBSERVATIONS } from "../../words/observations.ts";

/** Subjects shown at once; typing another word narrows them down. */
const SHOWN = 12;

/** The choice of the subject an observation is about, by typing a word of it. */
export function Subject({ observation }: { readonly observation: string }) {
  const session = useSession();
  const [topics, setTopics] = useState<readonly TopicLabel[]>([]);
  const [typed, setTyped] = useState("");
  useEffect(() => {
    engine.topics().then(setTopics, () => undefined);
  }, []);
  const words = typed
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== "");
  const found = topics.filter(({ id, title, groupTitle }) => {
    const text = `${id} ${title} ${groupTitle}`.toLowerCase();
    return words.every((word) => text.includes(word));
  });
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
        {typed === "" ? "" : found.length}
      </div>
      {topics.length > 0 && found.length === 0 && <p class="quiet">{OBSERVATIONS.noSubjects}</p>}
      <ul class="rows">
        {(typed === "" ? [] : found.slice(0, SHOWN)).map((one) => (
          <li key={one.id}>
            <button type="button" class="row-link" onClick={() => put(session, [join(observation, "topic"), one.id])}>
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
