import { useState } from "preact/hooks";
import { clock } from "../../parts/clock.ts";
import { Section } from "../../parts/section.tsx";
import type { Value } from "../../record/entry.ts";
import { useJob } from "../../shell/job.ts";
import { nameOf } from "../../shell/safety.ts";
import { HAND_OVER } from "../../words/finish.ts";

const PAGE = 40;

/** Every change of the job, newest first. */
export function History() {
  const { record } = useJob();
  const [shown, setShown] = useState(0);
  if (shown === 0)
    return (
      <Section title={HAND_OVER.history} help={HAND_OVER.historyHelp}>
        <button type="button" onClick={() => setShown(PAGE)}>
          {HAND_OVER.history}
        </button>
      </Section>
    );
  const all = record.entries().filter(({ path }) => !path.split("/").some((step) => step.startsWith("~")));
  const latest = [...all].sort((a, b) => (a.at < b.at ? 1 : a.at > b.at ? -1 : b.number - a.number));
  return (
    <Section title={HAND_OVER.history} help={HAND_OVER.historyHelp}>
      <ul class="rows">
        {latest.slice(0, shown).map(({ id, at, by, path, value }) => (
          <li key={id}>
            <span class="quiet small">
              {clock(at)}, {nameOf(record, by) ?? HAND_OVER.nobody}
            </span>
            <br />
            {path.replaceAll("/", " › ")}: {short(value)}
          </li>
        ))}
      </ul>
      {shown < latest.length && (
        <button type="button" onClick={() => setShown(shown + PAGE)}>
          {HAND_OVER.showMore}
        </button>
      )}
    </Section>
  );
}

function short(value: Value): string {
  if (value === null) return HAND_OVER.removed;
  const text = typeof value === "object" ? JSON.stringify(value) : String(value);
  return text.length > 120 ? `${text.slice(0, 120)}…` : text;
}
