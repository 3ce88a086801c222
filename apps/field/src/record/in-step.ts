import { attempt, whyNotKept } from "./attempt.ts";
import { deleteRows, forgetDecisions, readRows, setting, timesMade, writeRows } from "./database.ts";
import type { Entry } from "./entry.ts";
import { addToJobFile, FilesAbsent, readJobFile, removeJobFile } from "./job-files.ts";
import type { Line } from "./job-log.ts";
import { type FoundShort, noteShort } from "./stores.ts";
import { areLastWords, missingAmong, unite } from "./union.ts";

/** A job whose two stores this tab has put in step, and what it knows of them. */
interface Settled {
  readonly timesMade: number;
  readonly fileSize: number;
}

/** The jobs whose stores this tab has put in step. */
export const settled = new Map<string, Settled>();

/** Remembered once every job had its file for the first time: from then on a file that is missing was lost. */
export const FILLED = "files filled";

interface InStep {
  readonly entries: readonly Entry[];
  readonly notKept: { readonly error: unknown } | undefined;
}

/** Reads a job from both stores, puts them in step, and adds what only this tab has. The lock of the job is held. */
export async function putInStep(job: string, own: readonly Entry[] = []): Promise<InStep> {
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
export async function tidyUp(job: string): Promise<void> {
  settled.delete(job);
  const removed = await attempt("files", "write", () => removeJobFile(job));
  if (removed.ok || removed.error instanceof FilesAbsent)
    await attempt("database", "write", () => forgetDecisions(job));
}
