import { labelOf } from "../shell/job-label.ts";
import { attempt, whyNotKept } from "./attempt.ts";
import { deleteRows, keepSetting, readLabels, timesMade, writeLabel, writeRows } from "./database.ts";
import type { Entry } from "./entry.ts";
import { formerStore } from "./former-store.ts";
import { FILLED, putInStep, settled, tidyUp } from "./in-step.ts";
import { addToJobFile, FilesAbsent, jobsWithFile } from "./job-files.ts";
import type { JobLabel } from "./label.ts";
import { locked } from "./locked.ts";
import { Record as JobRecord } from "./record.ts";
import { recallShort, stores } from "./stores.ts";

export { dropSetting, keepSetting, setting } from "./database.ts";
export type { JobLabel } from "./label.ts";

/**
 * Two stores of different kinds hold every job: the browser's database, and a file a job that is only ever added to. A
 * browser can take its database for damaged after a write that was cut short, and begin an empty one without a word; a
 * file loses what was cut and nothing else. At every opening of a job both are read, what stands is the union, and what
 * one lacks it gets from the other. The database is written first: a change is whole there or not at all.
 *
 * A job is thrown away in this order: the decision, by its id, is added to the file; the database deletes its part and
 * notes the decision at one stroke; the file is removed; the note is dropped. Stopped in between, the next opening finds
 * the decision in one store and carries it out in the other, on what that store held until then. It never reaches what
 * was written after it was carried out, so that the same job taken in again from a copy is not hidden.
 */

/** What an earlier version kept in a store of its own is taken over once, before anything else is looked at. */
let takenOver: Promise<void> | undefined;

function ready(): Promise<void> {
  takenOver ??= takeOver().catch(() => undefined);
  return takenOver;
}

async function takeOver(): Promise<void> {
  const former = await formerStore();
  if (former === undefined) return;
  let whole = true;
  for (const [job, entries] of former.entries) {
    const { notKept } = await locked(job, "exclusive", () => putInStep(job, entries));
    whole &&= notKept === undefined && stores().database === "works";
  }
  if (whole) await former.retire();
}

/**
 * Keeps entries; resolves once they are on the disk, not before. `all` gives everything this tab knows of the job, for a
 * store that was emptied under it.
 */
export async function keep(job: string, entries: readonly Entry[], all: () => readonly Entry[]): Promise<void> {
  await ready();
  const before = settled.get(job);
  if (before !== undefined && before.timesMade === timesMade()) {
    const { database, files } = await locked(job, "shared", async () => ({
      database: await attempt("database", "write", () => writeRows(job, entries)),
      files: await attempt("files", "write", () =>
        addToJobFile(
          job,
          entries.map((entry) => ({ entry })),
          before.fileSize,
        ),
      ),
    }));
    const inStep = before.timesMade === timesMade() && (!files.ok || !files.value.short);
    if (!database.ok || (!files.ok && !(files.error instanceof FilesAbsent))) settled.delete(job);
    else if (inStep && files.ok) settled.set(job, { ...before, fileSize: files.value.size });
    if (inStep) {
      const failed = whyNotKept(database, files);
      if (failed !== undefined) throw failed.error;
      return;
    }
  }
  const { notKept } = await locked(job, "exclusive", () => putInStep(job, all()));
  if (notKept !== undefined) throw notKept.error;
}

/** Every entry of a job that either store holds. */
export async function entriesOf(job: string): Promise<readonly Entry[]> {
  await ready();
  return (await locked(job, "exclusive", () => putInStep(job))).entries;
}

/** The jobs of this device, the one that was changed last first. */
export async function jobs(): Promise<readonly JobLabel[]> {
  await ready();
  const { labels, ids } = await listed();
  const found = [...labels];
  const labelled = new Set(labels.map(({ id }) => id));
  for (const id of ids) {
    if (labelled.has(id)) continue;
    // Its label was lost, or the browser was stopped before it got one.
    const entries = await entriesOf(id);
    if (entries.length === 0) continue;
    const changed =
      entries
        .map(({ at }) => at)
        .sort()
        .at(-1) ?? "";
    const label = labelOf(id, new JobRecord(entries), changed);
    await attempt("database", "write", () => writeLabel(label));
    found.push(label);
  }
  return found.sort((a, b) => (a.changed < b.changed ? 1 : -1));
}

async function listed(): Promise<{ readonly labels: readonly JobLabel[]; readonly ids: ReadonlySet<string> }> {
  const [database, files] = await Promise.all([
    attempt("database", "read", readLabels),
    attempt("files", "read", jobsWithFile),
  ]);
  if (!database.ok && !files.ok) throw database.error;
  return {
    labels: database.ok ? database.value.labels : [],
    ids: new Set([...(database.ok ? database.value.ids : []), ...(files.ok ? files.value : [])]),
  };
}

let checked: Promise<void> | undefined;

/**
 * Puts both stores in step for every job, and recalls what was found before and nobody has read; once a tab. Resolves
 * when that is done, also where a store is in trouble, which is told by itself.
 */
export function storesChecked(): Promise<void> {
  checked ??= checkStores().catch(() => undefined);
  return checked;
}

async function checkStores(): Promise<void> {
  await ready();
  await recallShort();
  for (const id of (await listed()).ids) if (!settled.has(id)) await locked(id, "exclusive", () => putInStep(id));
  const { database, files } = stores();
  if (database === "works" && files === "works") await keepSetting(FILLED, true, "strict").catch(() => undefined);
}

export async function keepJob(label: JobLabel): Promise<void> {
  const written = await attempt("database", "write", () => writeLabel(label));
  // Without a database the label is made from the entries when it is next asked for.
  if (!written.ok && stores().files !== "works") throw written.error;
}

/** Throws a job away with everything in it. */
export async function discardJob(job: string): Promise<void> {
  await ready();
  await locked(job, "exclusive", async () => {
    const decision = crypto.randomUUID();
    settled.delete(job);
    // 1 byte at least: where there is no file, none is made.
    const noted = await attempt("files", "write", () => addToJobFile(job, [{ thrownAway: decision }], 1));
    const noFile = noted.ok ? noted.value.short : noted.error instanceof FilesAbsent;
    const deleted = await attempt("database", "write", () => deleteRows(job, noFile ? [] : [decision]));
    if (deleted.ok && !noFile) await tidyUp(job);
    // The decision stands in the file, and reaches the database when that can be written again.
    if (!deleted.ok && (noFile || !noted.ok)) throw deleted.error;
  });
}
