import { Record as JobRecord } from "../record/record.ts";
import { unkeptJobs } from "../record/session.ts";
import { entriesOf } from "../record/store.ts";
import { TROUBLE } from "../words/shell.ts";
import { titleOf } from "./job-label.ts";
import { SaveCopy, type Source } from "./save-copy.tsx";

/** Saves the file of a job as the disk holds it; where that part of the app fails as well, its record alone. */
export function SaveJobFile({ job }: { readonly job: string }) {
  return <SaveCopy job={job} words={TROUBLE.save} read={() => sourceOf(job)} inNeed />;
}

/** What the disk has of a job, and what it did not take yet. */
async function sourceOf(job: string): Promise<Source> {
  const unkept =
    unkeptJobs()
      .find((session) => session.job === job)
      ?.record.entries() ?? [];
  const kept = await entriesOf(job).catch((error: unknown) => {
    if (unkept.length === 0) throw error;
    return [];
  });
  const record = new JobRecord([...kept, ...unkept]);
  return { name: titleOf(record), entries: record.entries() };
}
