import { useState } from "preact/hooks";
import { useDraft } from "../../parts/drafts.ts";
import { fieldId } from "../../parts/field-id.ts";
import { Notice } from "../../parts/notice.tsx";
import { Section } from "../../parts/section.tsx";
import { TextField } from "../../parts/text-field.tsx";
import { join } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import { momentNow, useField, useJob } from "../../shell/job.ts";
import { nameOf } from "../../shell/safety.ts";
import { DANGER } from "../../words/observations.ts";
import { textAt } from "./read.ts";

/** What was done about danger, who was told and what they said; and the notice to hand over. */
export function MakeSafe({ observation }: { readonly observation: string }) {
  const { record } = useJob();
  const field = useField(join(observation, "madeSafe"));
  const safe = (field.value ?? {}) as { readonly [name: string]: Value };
  const text = (name: string) => (typeof safe[name] === "string" ? (safe[name] as string) : "");
  const write = (name: string, value: string) => {
    const next = { ...safe, [name]: value.trim() };
    const kept = Object.fromEntries(Object.entries(next).filter(([, one]) => one !== ""));
    field.write(Object.keys(kept).length === 0 ? null : kept);
  };
  return (
    <Section title={DANGER.section} help={DANGER.intro(textAt(record, "brief/nation"))}>
      <Line
        id={fieldId(observation, "done")}
        label={DANGER.done}
        help={DANGER.doneHelp}
        recorded={text("done")}
        write={(value) => write("done", value)}
      />
      <Line
        id={fieldId(observation, "told")}
        label={DANGER.told}
        help={DANGER.toldHelp}
        recorded={text("told")}
        write={(value) => write("told", value)}
      />
      <div class="field row">
        <span>
          <strong>{DANGER.at}</strong> {text("at").replace("T", " ").slice(0, 16) || DANGER.untold}
        </span>
        <button type="button" onClick={() => write("at", momentNow())}>
          {DANGER.now}
        </button>
      </div>
      <Line
        id={fieldId(observation, "reply")}
        label={DANGER.reply}
        recorded={text("reply")}
        write={(value) => write("reply", value)}
      />
      {text("told") === "" && (
        <TextField path={join(observation, "untold")} label={DANGER.reasonUntold} help={DANGER.reasonUntoldHelp} />
      )}
      <DangerNotice observation={observation} done={text("done")} />
    </Section>
  );
}

interface LineProps {
  readonly id: string;
  readonly label: string;
  readonly help?: string;
  readonly recorded: string;
  readonly write: (text: string) => void;
}

function Line({ id, label, help, recorded, write }: LineProps) {
  const draft = useDraft(recorded, write);
  return (
    <div class="field">
      <label for={id}>{label}</label>
      {help !== undefined && (
        <div id={`${id}?`} class="quiet small help">
          {help}
        </div>
      )}
      <textarea
        id={id}
        rows={2}
        maxLength={1000}
        aria-describedby={help === undefined ? undefined : `${id}?`}
        value={draft.text}
        onInput={({ currentTarget }) => draft.type(currentTarget.value)}
        onBlur={draft.leave}
      />
    </div>
  );
}

/** The notice in plain words, to copy or send at once. */
function DangerNotice({ observation, done }: { readonly observation: string; readonly done: string }) {
  const session = useJob();
  const { record } = session;
  const [copied, setCopied] = useState(false);
  const address = record.value("brief/premises/address");
  const words = DANGER.text({
    address: Array.isArray(address) ? address.join(", ") : "",
    date: momentNow().replace("T", " ").slice(0, 16),
    where: textAt(record, join(observation, "place")),
    what: textAt(record, join(observation, "what")),
    done,
    by: nameOf(record, session.person) ?? "",
    nation: textAt(record, "brief/nation"),
  });
  const share = async () => {
    try {
      if (navigator.share !== undefined) await navigator.share({ text: words });
      else await navigator.clipboard.writeText(words);
      setCopied(true);
    } catch {
      // Whoever closes the share sheet has changed their mind; nothing is lost.
    }
  };
  return (
    <details>
      <summary>{DANGER.notice}</summary>
      <pre class="notice-text">{words}</pre>
      <button type="button" onClick={() => void share()}>
        {"share" in navigator ? DANGER.share : DANGER.copy}
      </button>
      <div role="status">{copied && <Notice>{DANGER.copied}</Notice>}</div>
    </details>
  );
}
