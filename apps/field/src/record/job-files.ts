import { frame } from "./framing.ts";
import type { Added, Answers, Asked, Told } from "./job-files-protocol.ts";
import { type JobLog, type Line, writtenOut } from "./job-log.ts";
import { within } from "./within.ts";

/** The browser has no files that a page can add to; nothing can be done about it. */
export class FilesAbsent extends Error {
  override name = "FilesAbsent";
}

/** The worker that has the files does not start or does not answer: nothing is known of the disk. */
export class FilesSilent extends Error {
  override name = "FilesSilent";
}

interface Waiting {
  readonly resolve: (told: Told) => void;
  readonly reject: (reason: Error) => void;
}

const waiting = new Map<number, Waiting>();
let worker: Worker | undefined;
let count = 0;

function started(): Worker {
  if (typeof Worker === "undefined") throw new FilesAbsent("no workers");
  if (worker !== undefined) return worker;
  const fresh = new Worker(new URL("job-files.js", document.baseURI), { type: "module" });
  fresh.onmessage = ({ data }: MessageEvent<Told>) => {
    waiting.get(data.number)?.resolve(data);
    waiting.delete(data.number);
  };
  fresh.onerror = (event) => drop(fresh, event.message ?? "it does not start");
  worker = fresh;
  return fresh;
}

/** A worker that broke down answers nothing more; the next request starts another. */
function drop(broken: Worker, why: string): void {
  if (worker !== broken) return;
  worker = undefined;
  broken.terminate();
  for (const { reject } of waiting.values()) reject(new FilesSilent(why));
  waiting.clear();
}

async function ask<K extends Asked["ask"]>(asked: Extract<Asked, { readonly ask: K }>): Promise<Answers[K]> {
  const own = started();
  const number = ++count;
  const answered = new Promise<Told>((resolve, reject) => {
    waiting.set(number, { resolve, reject });
  });
  own.postMessage({ number, asked });
  let told: Told;
  try {
    told = await within(answered, () => new FilesSilent("it does not answer"));
  } catch (error) {
    drop(own, String(error));
    throw error;
  }
  if ("absent" in told) throw new FilesAbsent(told.absent);
  if ("trouble" in told) throw new Error(told.trouble);
  return told.answer as Answers[K];
}

/** The jobs that have a file. */
export function jobsWithFile(): Promise<readonly string[]> {
  return ask({ ask: "names" });
}

/** What the file of a job says; nothing where there is none. */
export function readJobFile(job: string): Promise<JobLog> {
  return ask({ ask: "read", job });
}

/**
 * Adds lines to the file of a job and writes it through to the disk. A file that is not there is made where `leastSize`
 * is 0; one that is shorter than `leastSize` bytes is left as it is, and the answer says so.
 */
export function addToJobFile(job: string, lines: readonly Line[], leastSize: number): Promise<Added> {
  return ask({ ask: "add", job, bytes: writtenOut(lines), leastSize });
}

export async function removeJobFile(job: string): Promise<void> {
  await ask({ ask: "remove", job });
}

/** What the device keeps besides jobs under a name; null where there is none, or where it was damaged. */
export function readKeptFile(name: string): Promise<string | null> {
  return ask({ ask: "kept", name });
}

/** Writes it in place of what was there, through to the disk. */
export async function writeKeptFile(name: string, text: string): Promise<void> {
  await ask({ ask: "keep", name, bytes: frame(text) });
}
