import { strFromU8, strToU8, unzip, zip } from "fflate";
import { keepPhotograph, photograph } from "../photographs/files.ts";
import { membersOf } from "../record/document.ts";
import type { Entry } from "../record/entry.ts";
import type { Record as JobRecord } from "../record/record.ts";

/** The marker of a copy of a job, so that another kind of file is recognised as such. */
const FORMAT = "good-grounds-job";
const VERSION = 1;

/** More than any job's copy; a file beyond it is refused before it is opened. */
export const LARGEST = 512 * 1024 * 1024;

/** A copy of a whole job: every entry, and every photograph this device has. */
export interface Copy {
  readonly job: string;
  readonly entries: readonly Entry[];
  readonly photographs: ReadonlyMap<string, Uint8Array>;
}

/** A whole job as the bytes of one file. */
export async function copyOf(job: string, record: JobRecord): Promise<Uint8Array> {
  const files: Record<string, Uint8Array> = {
    "job.json": strToU8(JSON.stringify({ format: FORMAT, version: VERSION, job, entries: record.entries() })),
  };
  for (const name of membersOf(record, "photographs")) {
    const sha256 = record.value(`photographs/${name}/sha256`);
    const bytes = typeof sha256 === "string" ? await photograph(sha256) : undefined;
    if (bytes !== undefined) files[`photographs/${String(sha256)}.jpg`] = new Uint8Array(await bytes.arrayBuffer());
  }
  return new Promise((done, failed) =>
    // Photographs are compressed already.
    zip(files, { level: 1 }, (error, bytes) => (error === null ? done(bytes) : failed(error))),
  );
}

/** Reads a copy; undefined where the file is none or is damaged. */
export async function readCopy(bytes: Uint8Array): Promise<Copy | undefined> {
  if (bytes.length > LARGEST) return undefined;
  const files = await new Promise<Record<string, Uint8Array> | undefined>((done) =>
    unzip(bytes, { filter: ({ originalSize }) => originalSize <= LARGEST }, (error, found) =>
      done(error === null ? found : undefined),
    ),
  );
  const text = files?.["job.json"];
  if (files === undefined || text === undefined) return undefined;
  const job = jobIn(strFromU8(text));
  if (job === undefined) return undefined;
  const photographs = new Map<string, Uint8Array>();
  for (const [name, file] of Object.entries(files)) {
    const sha256 = /^photographs\/([0-9a-f]{64})\.jpg$/.exec(name)?.[1];
    if (sha256 !== undefined && (await hashOf(file)) === sha256) photographs.set(sha256, file);
  }
  return { ...job, photographs };
}

/** Keeps the photographs of a copy on this device. */
export async function keepPhotographs({ photographs }: Copy): Promise<void> {
  for (const [sha256, bytes] of photographs)
    await keepPhotograph(sha256, new Blob([bytes as BlobPart], { type: "image/jpeg" }));
}

function jobIn(text: string): { readonly job: string; readonly entries: readonly Entry[] } | undefined {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return undefined;
  }
  if (typeof data !== "object" || data === null) return undefined;
  const { format, version, job, entries } = data as { readonly [name: string]: unknown };
  if (format !== FORMAT || version !== VERSION || typeof job !== "string" || !Array.isArray(entries)) return undefined;
  // One entry that cannot be read would leave a hole in what its author knew: the whole copy is refused.
  return entries.every(isEntry) ? { job, entries } : undefined;
}

function isEntry(one: unknown): one is Entry {
  if (typeof one !== "object" || one === null) return false;
  const { id, author, number, seen, at, by, path, value } = one as { readonly [name: string]: unknown };
  return (
    typeof author === "string" &&
    Number.isInteger(number) &&
    (number as number) > 0 &&
    id === `${author}:${String(number)}` &&
    typeof seen === "object" &&
    seen !== null &&
    Object.values(seen).every((count) => Number.isInteger(count)) &&
    typeof at === "string" &&
    typeof by === "string" &&
    typeof path === "string" &&
    path.length < 400 &&
    value !== undefined
  );
}

/** The SHA-256 of bytes in hexadecimal. */
export async function hashOf(bytes: Uint8Array): Promise<string> {
  const hash = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes as BufferSource));
  return [...hash].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}
