import { Conflict } from "../../parts/conflict.tsx";
import { placeWords } from "../../parts/place-words.ts";
import { Section } from "../../parts/section.tsx";
import { takenOutAndWritten } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import { put, useField, useJob } from "../../shell/job.ts";
import { HAND_OVER } from "../../words/finish.ts";
import { valueWords } from "./value-words.ts";

/** Every place where two people wrote different values, each for a choice. */
export function Conflicts() {
  const session = useJob();
  const places = session.record.conflicts();
  const takenOut = takenOutAndWritten(session.record);
  return (
    <>
      {places.length > 0 && (
        <Section title={HAND_OVER.conflicts} help={HAND_OVER.conflictsHelp}>
          {places.map((path) => (
            <One key={path} path={path} />
          ))}
        </Section>
      )}
      {takenOut.length > 0 && (
        <Section title={HAND_OVER.takenOut} help={HAND_OVER.takenOutHelp}>
          {takenOut.map((path) => {
            const decide = (value: Value) => () => put(session, [path, value]);
            const words = placeWords(session.record, path);
            return (
              <fieldset key={path} class="warning" aria-label={words}>
                <p>
                  <strong>{words}</strong>
                </p>
                <div class="row">
                  <button type="button" onClick={decide(true)}>
                    {HAND_OVER.keep}
                    <span class="unseen">: {words}</span>
                  </button>
                  <button type="button" onClick={decide(null)}>
                    {HAND_OVER.takeOut}
                    <span class="unseen">: {words}</span>
                  </button>
                </div>
              </fieldset>
            );
          })}
        </Section>
      )}
    </>
  );
}

function One({ path }: { readonly path: string }) {
  const field = useField(path);
  const { record } = useJob();
  return (
    <>
      <p class="small quiet">{placeWords(record, path)}</p>
      <Conflict field={field} show={(value) => valueWords(record, path, value)} />
    </>
  );
}
