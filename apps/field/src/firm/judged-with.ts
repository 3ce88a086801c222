import type { FolderLabel } from "@good-grounds/topics";
import type { KeptFolder } from "../engine/folder-view.ts";
import { join, membersOf } from "../record/document.ts";
import type { Value } from "../record/entry.ts";
import type { Record as JobRecord } from "../record/record.ts";
import { FIRM } from "../words/firm.ts";

/** Where a job says with which folder it was judged. */
export const JUDGED_WITH = "topics";

/** How the folder of this device stands to that with which a job was judged. */
export type Standing =
  /** The same; or nothing is judged yet, so that the next change of an observation may say it. */
  { readonly is: "same" | "fresh" } | { readonly is: "other"; readonly before: string; readonly now: string };

/** Compares the folder on this device with what a job says, by the hashes of their texts. */
export function standingOf(record: JobRecord, kept: KeptFolder | undefined): Standing {
  const said = record.standing(JUDGED_WITH);
  const hashes = new Set(said.map(({ value }) => labelIn(value)?.hash));
  if (hashes.size > 1) return { is: "other", before: FIRM.several, now: called(kept?.label) };
  const before = labelIn(said[0]?.value);
  if (before?.hash === kept?.label.hash) return { is: "same" };
  if (before === undefined && !isJudged(record)) return { is: "fresh" };
  return { is: "other", before: called(before), now: called(kept?.label) };
}

/** The changes by which a job says with which folder it is judged; none where it says so, or says something else. */
export function judgedWith(record: JobRecord, kept: KeptFolder | undefined): readonly (readonly [string, Value])[] {
  return standingOf(record, kept).is === "fresh" ? [judgedNow(kept)] : [];
}

/** The change by which a job says that it is judged with the folder of this device from now on. */
export function judgedNow(kept: KeptFolder | undefined): readonly [string, Value] {
  if (kept === undefined) return [JUDGED_WITH, null];
  const { name, answersFor, hash } = kept.label;
  return [JUDGED_WITH, { name, answersFor, hash }];
}

export function called(label: FolderLabel | undefined): string {
  return label === undefined ? FIRM.own : FIRM.called(label.name, label.hash);
}

/** Whether anything of a job was judged by topics: an observation has a subject, or somebody chose its class. */
function isJudged(record: JobRecord): boolean {
  return membersOf(record, "observations").some((name) =>
    ["topic", "choice"].some((member) => {
      const value = record.value(join(`observations/${name}`, member));
      return value !== undefined && value !== null;
    }),
  );
}

function labelIn(value: Value | undefined): FolderLabel | undefined {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return undefined;
  const { name, answersFor, hash } = value as { readonly [name: string]: Value };
  if (typeof hash !== "string") return undefined;
  return { name: String(name ?? ""), answersFor: String(answersFor ?? ""), hash };
}
