import { useMemo, useState } from "preact/hooks";
import { isRejected, rejectedOf } from "../../keypad/rejected.ts";
import { clock } from "../../parts/clock.ts";
import { placeWords } from "../../parts/place-words.ts";
import { Section } from "../../parts/section.tsx";
import type { Entry } from "../../record/entry.ts";
import type { Record as JobRecord } from "../../record/record.ts";
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

/** Whether somebody asks for a change: what a person wrote, and readings that were rejected as long as they are. */
function isShown(record: JobRecord, entry: Entry): boolean {
  const { path, value } = entry;
  if (isRejected(path)) return rejectedOf(value) !== undefined && record.standing(path).includes(entry);
  return !path.split("/").some((step) => step.startsWith("~") || OF_THE_FILE.has(step));
}

/** A change in words: where, and what stands there since. */
function changeWords(record: JobRecord, { path, value }: Entry): string {
  const rejected = isRejected(path) ? rejectedOf(value) : undefined;
  if (rejected !== undefined) {
    const { of, reading } = rejected;
    const taken = reading.at === undefined ? undefined : clock(reading.at);
    return `${placeWords(record, of)}: ${HAND_OVER.rejected(reading.shown, taken)}`;
  }
  // That a member is there stands at its own place, which has no value besides.
  const said = value === true && isMember(path) ? HAND_OVER.added : valueWords(record, path, value);
  return `${placeWords(record, path)}: ${said}`;
}

function Changes({ shown, onMore }: { readonly shown: number; readonly onMore: () => void }) {
  const session = useJob();
  const { record } = session;
  const size = record.size;
  const latest = useMemo(
    () =>
      record
        .history()
        .filter((entry) => isShown(record, entry))
        .reverse(),
    [record, size],
  );
  return (
    <>
      <ul class="rows">
        {latest.slice(0, shown).map((entry) => {
          const { id, at, by, path, value } = entry;
          const words = changeWords(record, entry);
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
              {isRejected(path) ? null : stands ? (
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
