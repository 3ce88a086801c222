import { useState } from "preact/hooks";
import { engine } from "../../engine/client.ts";
import type { ToConfirm } from "../../engine/outcome-view.ts";
import type { Data } from "../../engine/protocol.ts";
import { useDraft } from "../../parts/drafts.ts";
import { fieldId } from "../../parts/field-id.ts";
import { Section } from "../../parts/section.tsx";
import { documentOf } from "../../record/document.ts";
import { put, useField, useSession } from "../../shell/job.ts";
import { OWN_FIGURES } from "../../words/finish.ts";

/** As many as are shown; the heaviest come first. */
const SHOWN = 3;

/** A look at one's own figures before somebody else takes one. It never stops anything. */
export function OwnFigures() {
  const { record } = useSession();
  const [found, setFound] = useState<readonly ToConfirm[] | "looking" | { readonly failed: string }>();
  const look = () => {
    setFound("looking");
    const [name] = record.names("~earlier");
    const earlier = name === undefined ? undefined : (record.value(`~earlier/${name}`) as Data | undefined);
    engine
      .ownFigures(documentOf(record), earlier)
      .then(setFound, (error: unknown) => setFound({ failed: error instanceof Error ? error.message : String(error) }));
  };
  return (
    <Section title={OWN_FIGURES.title} help={OWN_FIGURES.help}>
      <button type="button" disabled={found === "looking"} onClick={look}>
        {found === "looking" ? OWN_FIGURES.looking : OWN_FIGURES.look}
      </button>
      <div role="status">
        {Array.isArray(found) && found.length === 0 && <p>{OWN_FIGURES.nothing}</p>}
        {typeof found === "object" && "failed" in found && <p class="fault">{found.failed}</p>}
      </div>
      {Array.isArray(found) &&
        found.slice(0, SHOWN).map((one: ToConfirm) => <One key={`${one.check} ${one.words}`} one={one} />)}
      {Array.isArray(found) && found.length > SHOWN && <p class="quiet">{OWN_FIGURES.more(found.length - SHOWN)}</p>}
    </Section>
  );
}

function One({ one }: { readonly one: ToConfirm }) {
  return (
    <div class="sheet">
      <p>
        <strong>
          {OWN_FIGURES.confirm}: {one.title}
        </strong>
      </p>
      <p>{one.words}</p>
      <p class="quiet small">{[one.test, ...one.numbers].join(" · ")}</p>
      <details>
        <summary>{OWN_FIGURES.readings}</summary>
        <ul>
          {one.readings.map((reading) => (
            <li key={reading}>{reading}</li>
          ))}
        </ul>
      </details>
      <details>
        <summary>{OWN_FIGURES.innocent}</summary>
        <ul>
          {one.innocent.map((cause) => (
            <li key={cause}>{cause}</li>
          ))}
        </ul>
      </details>
      <Note check={one.check} />
    </div>
  );
}

/** The inspector's answer; it stays in the file and out of every report. */
function Note({ check }: { readonly check: string }) {
  const session = useSession();
  const at = `ownFigures/${check}`;
  const field = useField(`${at}/note`);
  const draft = useDraft(typeof field.value === "string" ? field.value : "", (text) =>
    text.trim() === ""
      ? put(session, [at, null], [`${at}/note`, null])
      : put(session, [at, true], [`${at}/check`, check], [`${at}/note`, text]),
  );
  return (
    <div class="field">
      <label for={fieldId(at)}>{OWN_FIGURES.note}</label>
      <textarea
        id={fieldId(at)}
        rows={2}
        maxLength={1000}
        value={draft.text}
        onInput={({ currentTarget }) => draft.type(currentTarget.value)}
        onBlur={draft.leave}
      />
    </div>
  );
}
