import { Record as JobRecord } from "../record/record.ts";
import { entriesOf } from "../record/store.ts";
import { titleOf } from "./job-label.ts";

/** Hands out the copy of a job as the disk holds it; where that part of the app fails as well, its bare entries. */
export async function saveJobFile(job: string): Promise<void> {
  const entries = await entriesOf(job);
  try {
    const [{ copyOf }, { save }] = await Promise.all([import("../hand-over/copy.ts"), import("../hand-over/save.ts")]);
    const record = new JobRecord(entries);
    await save(`${titleOf(record)}.good-grounds-job`, "application/zip", await copyOf(job, record));
  } catch {
    const link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([JSON.stringify({ job, entries })], { type: "application/json" }));
    link.download = `${job}.json`;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
  }
}
