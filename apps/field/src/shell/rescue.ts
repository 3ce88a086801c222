import { entriesOf } from "../record/store.ts";

/** Hands out everything the disk holds of a job as a file, without asking any other part of the app for help. */
export async function saveEntries(job: string): Promise<void> {
  const text = JSON.stringify({ job, entries: await entriesOf(job) });
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  link.download = `${job}.good-grounds-entries.json`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
