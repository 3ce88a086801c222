import { judgedNow, standingOf } from "../../firm/judged-with.ts";
import { useKeptFolder } from "../../firm/kept.ts";
import { Notice } from "../../parts/notice.tsx";
import { put, useJob } from "../../shell/job.ts";
import { FIRM } from "../../words/firm.ts";

/** Says that a job was judged with another folder of topics than this device has. */
export function JudgedWith() {
  const session = useJob();
  const kept = useKeptFolder();
  if (kept === "unread") return null;
  const standing = standingOf(session.record, kept);
  if (standing.is !== "other") return null;
  return (
    <Notice title={FIRM.differs}>
      <p>{FIRM.differsHelp(standing.before, standing.now)}</p>
      <button type="button" onClick={() => put(session, judgedNow(kept))}>
        {FIRM.judgeAgain(standing.now)}
      </button>
    </Notice>
  );
}
