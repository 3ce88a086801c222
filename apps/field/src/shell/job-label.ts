import type { Record as JobRecord } from "../record/record.ts";
import type { JobLabel } from "../record/store.ts";
import { SHELL } from "../words/shell.ts";

/** What a job is called: its title, or the first line of the address, or its number. */
export function titleOf(record: JobRecord): string {
  const address = record.value("brief/premises/address");
  const [line] = Array.isArray(address) ? address : [];
  const named = [record.value("title"), line, record.value("id")].find(
    (one) => typeof one === "string" && one.trim() !== "",
  );
  return typeof named === "string" ? named : SHELL.unnamed;
}

export function labelOf(job: string, record: JobRecord, changed: string): JobLabel {
  return { id: job, title: titleOf(record), changed, invented: record.value("invented") === true };
}
