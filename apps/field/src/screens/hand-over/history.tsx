import { useMemo, useState } from "preact/hooks";
import { clock } from "../../parts/clock.ts";
import { placeWords } from "../../parts/place-words.ts";
import { Section } from "../../parts/section.tsx";
import { put, useJob } from "../../shell/job.ts";
import { nameOf } from "../../shell/safety.ts";
import { HAND_OVER } from "../../words/finish.ts";
import { ONE_OF } from "../../words/members.ts";
import { valueWords } from "./value-words.ts";

const PAGE = 40;

/** What only says how a job is kept; nobody wrote it and nobody asks for it. */
const OF_THE_FILE: ReadonlySet<string> = new Set(["format", "version", "id", "sha256", "content", "drawn"]);

/** Whether a place is that of a member of a list, and not of a fact or of an answer of yes or no. */
function isMember(path: string): boolean {
  const list = path.split("/").at(-2) ?? "";
  return list !== "facts" && Object.hasOwn(ONE_OF, list);
}

/** Every change of the job, newest first, and the way back to what stood before. */
export function History() {
  const [shown, setShown] = useState(0);
  return (
    <Section title={HAND_OVER.history} help={HAND_OVER.historyHelp}>
      {shown === 0 ? (
        <button type="button" onClick={() => setShown(PAGE)}>
          {HAND_OVER.history}
        </button>
      ) : (
        <Changes shown={shown} onMore={() => setShown(shown + PAGE)} />
      )}
    </Section>
  );
}

function Changes({ shown, onMore }: { readonly shown: number; readonly onMore: () => void }) {
  const session = useJob();
  const { record } = session;
  const size = record.size;
  const latest = useMemo(
    () =>
      record
        .history()
        .filter(({ path }) => !path.split("/").some((step) => step.startsWith("~") || OF_THE_FILE.has(step)))
        .reverse(),
    [record, size],
  );
  return (
    <>
      <ul class="rows">
        {latest.slice(0, shown).map((entry) => {
          const { id, at, by, path, value } = entry;
          // That a member is there stands at its own place, which has no value besides.
          const said = value === true && isMember(path) ? HAND_OVER.added : valueWords(record, path, value);
          const words = `${placeWords(record, path)}: ${said}`;
          const stands = record.standing(path).includes(entry);
          return (
            <li key={id} class="row between">
              <span class="grow">
                <span class="quiet small">
                  {clock(at)}, {nameOf(record, by) ?? HAND_OVER.nobody}
                </span>
                <br />
                {words}
              </span>
              {stands ? (
                <span class="quiet small">{HAND_OVER.standsNow}</span>
              ) : (
                <button type="button" class="plain" onClick={() => put(session, [path, value])}>
                  {HAND_OVER.putBack}
                  <span class="unseen">: {words}</span>
                </button>
              )}
            </li>
          );
        })}
      </ul>
      {shown < latest.length && (
        <button type="button" onClick={onMore}>
          {HAND_OVER.showMore}
        </button>
      )}
    </>
  );
}
