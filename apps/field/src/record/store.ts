import { labelOf } from "../shell/job-label.ts";
import {
  deleteRows,
  forgetDecisions,
  keepSetting,
  readLabels,
  readRows,
  setting,
  timesMade,
  writeLabel,
  writeRows,
} from "./database.ts";
import type { Entry } from "./entry.ts";
import { formerStore } from "./former-store.ts";
import { addToJobFile, FilesAbsent, FilesSilent, jobsWithFile, readJobFile, removeJobFile } from "./job-files.ts";
import type { Line } from "./job-log.ts";
import type { JobLabel } from "./label.ts";
import { locked } from "./locked.ts";
import { Record as JobRecord } from "./record.ts";
import { type FoundShort, note, noteShort, recallShort, stores } from "./stores.ts";
import { areLastWords, missingAmong, unite } from "./union.ts";
import { within } from "./within.ts";

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

/** What an attempt with one of the stores came to. */
type Outcome<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: unknown };

/** A job whose two stores this tab has put in step, and what it knows of them. */
interface Settled {
  readonly timesMade: number;
  readonly fileSize: number;
}

const settled = new Map<string, Settled>();

/** Remembered once every job had its file for the first time: from then on a file that is missing was lost. */
const FILLED = "files filled";

/** Tries something with a store. Only what was written shows that a store in trouble works again. */
async function attempt<T>(
  store: "database" | "files",
  kind: "read" | "write",
  work: () => Promise<T>,
): Promise<Outcome<T>> {
  try {
    // The files have a limit of time of their own.
    const value = await (store === "database" ? within(work(), () => new Error("it does not answer")) : work());
    if (kind === "write") note({ [store]: "works" });
    return { ok: true, value };
  } catch (error) {
    note({ [store]: error instanceof FilesAbsent ? "absent" : { trouble: wordsOf(error) } });
    return { ok: false, error };
  }
}

function wordsOf(error: unknown): string {
  return error instanceof Error ? `${error.name}: ${error.message}` : String(error);
}

/**
 * Why something does not count as kept; undefined where it does. In the files it was written through to the disk. A
 * database alone is believed where there are no files to have, or where they are not heard of. Where the disk refused the
 * file it is not: on a full disk the database says that it has what it loses at a later start.
 */
function whyNotKept(database: Outcome<unknown>, files: Outcome<unknown>): { readonly error: unknown } | undefined {
  if (files.ok) return undefined;
  if (!database.ok) return database;
  return files.error instanceof FilesAbsent || files.error instanceof FilesSilent ? undefined : files;
}

interface InStep {
  readonly entries: readonly Entry[];
  readonly notKept: { readonly error: unknown } | undefined;
}

/** Reads a job from both stores, puts them in step, and adds what only this tab has. The lock of the job is held. */
async function putInStep(job: string, own: readonly Entry[] = []): Promise<InStep> {
  const [database, file] = await Promise.all([
    attempt("database", "read", () => readRows(job)),
    attempt("files", "read", () => readJobFile(job)),
  ]);
  if (!database.ok && !file.ok) throw database.error;
  const made = timesMade();
  let rows = database.ok ? database.value.entries : [];
  let logged = file.ok ? file.value.entries : new Map<string, Entry>();
  let size = file.ok ? file.value.size : 0;
  if (database.ok && file.ok) {
    const open = openDecisions(database.value.thrownAway, file.value.thrownAway);
    if (open.forDatabase.length > 0) {
      const done = await attempt("database", "write", () => deleteRows(job, open.forDatabase));
      if (!done.ok) return { entries: [...logged.values()], notKept: done };
      rows = [];
    }
    if (open.forFile.length > 0 && size > 0) {
      const lines = open.forFile.map((thrownAway) => ({ thrownAway }));
      const done = await attempt("files", "write", () => addToJobFile(job, lines, size));
      if (!done.ok) return { entries: rows, notKept: done };
      size = done.value.size;
      logged = new Map();
    }
    const noted = database.value.thrownAway.length > 0 || open.forDatabase.length > 0;
    if (rows.length + logged.size + own.length === 0 && (size > 0 || noted)) {
      await tidyUp(job);
      return { entries: [], notKept: undefined };
    }
    // The file is gone, and with it all that the note was for.
    if (noted && size === 0) await attempt("database", "write", () => forgetDecisions(job));
  }
  const { entries, databaseLacks, fileLacks, onlyOwn } = unite(rows, logged, own);
  const forDatabase = [...databaseLacks, ...onlyOwn];
  const written =
    !database.ok || forDatabase.length === 0
      ? database
      : await attempt("database", "write", () => writeRows(job, forDatabase));
  const untold = file.ok && file.value.damagedBytes > file.value.toldBytes ? file.value.damagedBytes : 0;
  const lines: readonly Line[] = [
    ...[...fileLacks, ...onlyOwn].map((entry) => ({ entry })),
    ...(untold > 0 ? [{ toldBytes: untold }] : []),
  ];
  const added =
    !file.ok || lines.length === 0 ? file : await attempt("files", "write", () => addToJobFile(job, lines, size));
  if (added.ok) size = added.value.size;
  const works = written.ok && (added.ok || added.error instanceof FilesAbsent);
  if (works) settled.set(job, { timesMade: made, fileSize: size });
  else settled.delete(job);
  if (database.ok && file.ok) {
    const lastWords = areLastWords(fileLacks, file.value) || (file.value.size === 0 && !(await isFilled()));
    await tell(job, entries, {
      fromFiles: databaseLacks.length,
      fromDatabase: lastWords ? 0 : fileLacks.length,
      damagedBytes: untold === 0 ? 0 : untold - file.value.toldBytes,
    });
  }
  return { entries, notKept: whyNotKept(written, added) };
}

/** Decisions that one of the stores has carried out and the other has not. */
function openDecisions(database: readonly string[], file: readonly string[]) {
  return {
    forDatabase: file.filter((id) => !database.includes(id)),
    forFile: database.filter((id) => !file.includes(id)),
  };
}

async function tell(
  job: string,
  entries: readonly Entry[],
  found: Omit<FoundShort, "jobs" | "nowhere">,
): Promise<void> {
  if (found.fromFiles + found.fromDatabase + found.damagedBytes === 0) return;
  await noteShort({ ...found, nowhere: missingAmong(entries), jobs: [job] });
}

async function isFilled(): Promise<boolean> {
  return (await setting<boolean>(FILLED).catch(() => undefined)) === true;
}

/** Ends what throwing a job away began. */
async function tidyUp(job: string): Promise<void> {
  settled.delete(job);
  const removed = await attempt("files", "write", () => removeJobFile(job));
  if (removed.ok || removed.error instanceof FilesAbsent)
    await attempt("database", "write", () => forgetDecisions(job));
}

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
