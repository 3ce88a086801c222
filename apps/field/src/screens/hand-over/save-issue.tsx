import { save } from "../../hand-over/save.ts";
import type { KeptIssue } from "../../issued/kept.ts";
import { ISSUE } from "../../words/issue.ts";

interface SaveIssueProps {
  readonly issue: KeptIssue;
  readonly document: Uint8Array | Blob;
}

/** The two files of an issue, to hand on and to keep. */
export function SaveIssue({ issue: { name, record }, document }: SaveIssueProps) {
  return (
    <div class="stack">
      <button type="button" class="main" onClick={() => void save(`${name}.pdf`, "application/pdf", document)}>
        {ISSUE.savePdf}
      </button>
      <button type="button" onClick={() => void save(`${name}.json`, "application/json", record)}>
        {ISSUE.saveRecord}
      </button>
      <p class="quiet small">{ISSUE.saveRecordHelp}</p>
    </div>
  );
}
