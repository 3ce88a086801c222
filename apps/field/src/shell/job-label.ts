import type { JobLabel } from "../record/label.ts";
import type { Record as JobRecord } from "../record/record.ts";
import { SHELL } from "../words/shell.ts";

/** What a job is called: its title, or the first line of the address, or the day it is of. */
export function titleOf(record: JobRecord): string {
  const address = record.value("brief/premises/address");
  const [line] = Array.isArray(address) ? address : [];
  const named = [record.value("title"), line].find((one) => typeof one === "string" && one.trim() !== "");
  if (typeof named === "string") return named;
  const day = record.value("inspectedOn");
  return typeof day === "string" && !Number.isNaN(Date.parse(day)) ? SHELL.jobOf(dayWords(day)) : SHELL.unnamed;
}

export function labelOf(job: string, record: JobRecord, changed: string): JobLabel {
  return { id: job, title: titleOf(record), changed, invented: record.value("invented") === true };
}

function dayWords(day: string): string {
  return new Date(day).toLocaleDateString("en-GB", { day: "numeric", month: "long", year: "numeric", timeZone: "UTC" });
}
