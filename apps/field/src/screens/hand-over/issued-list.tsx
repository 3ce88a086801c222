import { useState } from "preact/hooks";
import { type KeptIssue, keptDocument } from "../../issued/kept.ts";
import { clock } from "../../parts/clock.ts";
import { ISSUE } from "../../words/issue.ts";
import { SaveIssue } from "./save-issue.tsx";

/** What was issued of a report on this device, the newest first, each to be saved again. */
export function IssuedList({ issues }: { readonly issues: readonly KeptIssue[] }) {
  return (
    <>
      <h3>{ISSUE.issued}</h3>
      <ul class="rows">
        {issues.toReversed().map((issue) => (
          <Row key={`${issue.number} ${issue.at}`} issue={issue} by={issues.find((one) => one.number > issue.number)} />
        ))}
      </ul>
    </>
  );
}

function Row({ issue, by }: { readonly issue: KeptIssue; readonly by: KeptIssue | undefined }) {
  const [document, setDocument] = useState<Blob | "gone">();
  const open = async () => setDocument((await keptDocument(issue)) ?? "gone");
  return (
    <li class="row between">
      <span>
        {ISSUE.row(issue.number, clock(issue.at))}
        {by !== undefined && <span class="quiet small note">{ISSUE.replaced(by.number)}</span>}
      </span>
      {document === undefined && (
        <button type="button" onClick={() => void open()}>
          {ISSUE.saveAgain}
        </button>
      )}
      {document === "gone" && <span class="quiet">{ISSUE.gone}</span>}
      {document !== undefined && document !== "gone" && <SaveIssue issue={issue} document={document} />}
    </li>
  );
}
