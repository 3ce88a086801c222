import { inspectionText } from "../../hand-over/content.ts";
import { save } from "../../hand-over/save.ts";
import { Section } from "../../parts/section.tsx";
import { useJob } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { SaveCopy } from "../../shell/save-copy.tsx";
import { HAND_OVER } from "../../words/finish.ts";
import { Conflicts } from "./conflicts.tsx";
import { History } from "./history.tsx";
import { Join } from "./join.tsx";
import { Pdf } from "./pdf.tsx";

/** Handing over: the report, the inspection file, a copy of the whole job, and joining a colleague's copy. */
export default function HandOver() {
  const session = useJob();
  const { record, job } = session;
  const text = inspectionText(record);
  const name = String(record.value("id") ?? job);
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
        </div>
        <div>
          <Section title={HAND_OVER.copy} help={HAND_OVER.copyHelp}>
            <SaveCopy
              job={job}
              words={HAND_OVER.saveCopy}
              read={() => Promise.resolve({ name, entries: record.entries() })}
            />
          </Section>
          <Join />
          <History />
        </div>
      </div>
    </>
  );
}
