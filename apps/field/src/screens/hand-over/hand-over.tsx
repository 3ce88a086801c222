import { inspectionText } from "../../hand-over/content.ts";
import { save } from "../../hand-over/save.ts";
import { Section } from "../../parts/section.tsx";
import { membersOf } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { useJob } from "../../shell/job.ts";
import { linkTo } from "../../shell/route.ts";
import { SaveCopy } from "../../shell/save-copy.tsx";
import { HAND_OVER } from "../../words/finish.ts";
import { Conflicts } from "./conflicts.tsx";
import { History } from "./history.tsx";
import { Issue } from "./issue.tsx";
import { Join } from "./join.tsx";
import { Pdf } from "./pdf.tsx";

/** Names of those whose signatures stand in the job. */
function signedBy(record: JobRecord): readonly string[] {
  const names = membersOf(record, "signatures").map((one) => {
    const person = record.value(`signatures/${one}/person`);
    return typeof person === "string" ? record.value(`people/${person}/name`) : undefined;
  });
  return [...new Set(names.filter((name) => typeof name === "string"))];
}

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
          {text !== undefined && <Issue report={name} text={text} signedBy={signedBy(record)} />}
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
