import { useEffect, useState } from "preact/hooks";
import { engine } from "../../engine/client.ts";
import type { KeyView } from "../../engine/issue-view.ts";
import { type KeptIssue, keptIssues, keptKey } from "../../issued/kept.ts";
import { Section } from "../../parts/section.tsx";
import { linkTo } from "../../shell/route.ts";
import { CHECK, ISSUE } from "../../words/issue.ts";
import { IssuedList } from "./issued-list.tsx";
import { NewIssue } from "./new-issue.tsx";

interface IssueProps {
  readonly report: string;
  /** The inspection file as text; it is signed by somebody. */
  readonly text: string;
  /** Who signed it. */
  readonly signedBy: readonly string[];
}

/** The key of this device, as text and in words. */
export interface DeviceKey {
  readonly text: string;
  readonly view: KeyView;
}

/** Issuing the report: signed with the key of this device, kept, and listed with what was issued before. */
export function Issue({ report, text, signedBy }: IssueProps) {
  const [key, setKey] = useState<DeviceKey | "none">();
  const [issues, setIssues] = useState<readonly KeptIssue[]>([]);
  const [begun, setBegun] = useState(false);
  const look = () => keptIssues().then(setIssues, () => undefined);
  useEffect(() => {
    void keptKey()
      .then(async (kept) => setKey(kept === undefined ? "none" : { text: kept, view: await engine.keyView(kept) }))
      .catch(() => setKey("none"));
    void look();
  }, []);
  // What stood open belongs to the text as it was: begun again where that is another.
  useEffect(() => setBegun(false), [text]);
  const ofReport = issues.filter((one) => one.report === report);
  return (
    <Section title={ISSUE.title} help={ISSUE.help}>
      {key === "none" && (
        <>
          <p>{ISSUE.noKey}</p>
          <a class="button" href={linkTo("settings")}>
            {ISSUE.makeOne}
          </a>
        </>
      )}
      {key !== undefined && key !== "none" && (
        <>
          <p>{ISSUE.keyOf(key.view.person, key.view.device)}</p>
          {signedBy.length > 0 && !signedBy.includes(key.view.person) && (
            <p class="quiet">{ISSUE.otherPerson(key.view.person, signedBy.join(", "))}</p>
          )}
          {begun ? (
            <NewIssue text={text} keyText={key.text} issues={issues} onMade={look} />
          ) : (
            <button type="button" class="main" onClick={() => setBegun(true)}>
              {ISSUE.begin}
            </button>
          )}
        </>
      )}
      {ofReport.length > 0 && <IssuedList issues={ofReport} />}
      <p>
        <a class="button" href={linkTo("check")}>
          {CHECK.short}
        </a>
      </p>
    </Section>
  );
}
