import { useState } from "preact/hooks";
import { inspectionText } from "../../hand-over/content.ts";
import { copyOf } from "../../hand-over/copy.ts";
import { save } from "../../hand-over/save.ts";
import { Section } from "../../parts/section.tsx";
import { useJob } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { HAND_OVER } from "../../words/finish.ts";
import { Conflicts } from "./conflicts.tsx";
import { History } from "./history.tsx";
import { Join } from "./join.tsx";
import { Letter } from "./letter.tsx";
import { Pdf } from "./pdf.tsx";

/** Handing over: the inspection file, the letter, a copy of the whole job, and joining a colleague's copy. */
export default function HandOver() {
  const session = useJob();
  const { record, job } = session;
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState(false);
  const text = inspectionText(record);
  const name = String(record.value("id") ?? job);
  const saveCopy = async () => {
    setBusy(true);
    try {
      await save(`${name}.good-grounds-job`, "application/zip", await copyOf(job, record));
      setTrouble(false);
    } catch {
      setTrouble(true);
    } finally {
      setBusy(false);
    }
  };
  return (
    <>
      <Conflicts />
      <div class="columns">
        <div>
          <Section title={HAND_OVER.report}>
            {text === undefined ? (
              <a class="button main" href={linkTo("job", job, "finish")}>
                {HAND_OVER.notYet}
              </a>
            ) : (
              <>
                <Pdf name={name} text={text} />
                <button type="button" onClick={() => void save(`${name}.json`, "application/json", text)}>
                  {HAND_OVER.save}
                </button>
                <p class="quiet small">{HAND_OVER.saveHelp}</p>
              </>
            )}
          </Section>
          <Letter />
        </div>
        <div>
          <Section title={HAND_OVER.copy} help={HAND_OVER.copyHelp}>
            <button type="button" disabled={busy} onClick={() => void saveCopy()}>
              {busy ? HAND_OVER.working : HAND_OVER.saveCopy}
            </button>
            <div role="status">{trouble && <p class="fault">{HAND_OVER.notSaved}</p>}</div>
          </Section>
          <Join />
          <History />
        </div>
      </div>
    </>
  );
}
