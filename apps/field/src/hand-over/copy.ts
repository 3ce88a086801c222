import { strFromU8, strToU8, unzip, type Zippable, zip } from "fflate";
import { keepPhotograph, photograph } from "../photographs/files.ts";
import type { Entry } from "../record/entry.ts";
import type { Record as JobRecord } from "../record/record.ts";
import { isEntry, isWhole } from "../record/sound.ts";

/** The marker of a copy of a job, so that another kind of file is recognised as such. */
const FORMAT = "good-grounds-job";
const VERSION = 1;

/** More than any job's copy, as a file and unpacked; beyond it nothing is unpacked. */
export const LARGEST = 512 * 1024 * 1024;
const LARGEST_PHOTOGRAPH = 30 * 1024 * 1024;

const ENTRIES = "job.json";
const PHOTOGRAPH = /^photographs\/([0-9a-f]{64})\.jpg$/;

/** A copy of a whole job: every entry, and every photograph this device has. */
export interface Copy {
  readonly job: string;
  readonly entries: readonly Entry[];
  readonly photographs: ReadonlyMap<string, Uint8Array>;
  /** Photographs whose bytes are not what their hash says; they are left out. */
  readonly damaged: number;
}

/** A whole job as the bytes of one file. */
export async function copyOf(job: string, record: JobRecord): Promise<Uint8Array> {
  const files: Zippable = {
    [ENTRIES]: strToU8(JSON.stringify({ format: FORMAT, version: VERSION, job, entries: record.entries() })),
  };
  for (const sha256 of photographsIn(record.entries())) {
    const bytes = await photograph(sha256);
    // Photographs are compressed already.
    if (bytes !== undefined)
      files[`photographs/${sha256}.jpg`] = [new Uint8Array(await bytes.arrayBuffer()), { level: 0 }];
  }
  return new Promise((done, failed) =>
    zip(files, { level: 1 }, (error, bytes) => (error === null ? done(bytes) : failed(error))),
  );
}

/** Hashes of all photographs that any entry ever named, those taken out since among them. */
function photographsIn(entries: readonly Entry[]): ReadonlySet<string> {
  return new Set(
    entries.flatMap(({ path, value }) =>
      /^photographs\/[^/]+\/sha256$/.test(path) && typeof value === "string" && /^[0-9a-f]{64}$/.test(value)
        ? [value]
        : [],
    ),
  );
}

/** Reads a copy; undefined where the file is none, is damaged, or holds less than the whole. */
export async function readCopy(bytes: Uint8Array): Promise<Copy | undefined> {
  if (bytes.length > LARGEST) return undefined;
  // The bare entries that the app hands out when nothing else works any more.
  if (bytes[0] === "{".charCodeAt(0)) {
    const bare = jobIn(strFromU8(bytes));
    return bare && { ...bare, photographs: new Map(), damaged: 0 };
  }
  const files = await unpacked(bytes);
  const text = files?.[ENTRIES];
  if (files === undefined || text === undefined) return undefined;
  const job = jobIn(strFromU8(text));
  if (job === undefined) return undefined;
  const photographs = new Map<string, Uint8Array>();
  let damaged = 0;
  for (const [name, file] of Object.entries(files)) {
    const sha256 = PHOTOGRAPH.exec(name)?.[1];
    if (sha256 === undefined) continue;
    if ((await hashOf(file)) === sha256) photographs.set(sha256, file);
    else damaged += 1;
  }
  return { ...job, photographs, damaged };
}

/** The files of a copy. What they say they unpack to is counted first: a small file can claim to hold gigabytes. */
async function unpacked(bytes: Uint8Array): Promise<Readonly<Record<string, Uint8Array>> | undefined> {
  let room = LARGEST;
  const wanted = ({ name, originalSize }: { readonly name: string; readonly originalSize: number }) => {
    if (name !== ENTRIES && !PHOTOGRAPH.test(name)) return false;
    room -= originalSize;
    return room >= 0 && (name === ENTRIES || originalSize <= LARGEST_PHOTOGRAPH);
  };
  const files = await new Promise<Record<string, Uint8Array> | undefined>((done) =>
    unzip(bytes, { filter: wanted }, (error, found) => done(error === null ? found : undefined)),
  );
  return room < 0 ? undefined : files;
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
  const { format = FORMAT, version = VERSION, job, entries } = data as { readonly [name: string]: unknown };
  if (format !== FORMAT || version !== VERSION || !isJob(job) || !Array.isArray(entries)) return undefined;
  // One entry that is missing or cannot be read would leave a hole in what its author knew: the whole copy is refused.
  return entries.length > 0 && entries.every(isEntry) && isWhole(entries) ? { job, entries } : undefined;
}

function isJob(job: unknown): job is string {
  return typeof job === "string" && /^[0-9A-Za-z-]{1,60}$/.test(job);
}

/** The SHA-256 of bytes in hexadecimal. */
export async function hashOf(bytes: Uint8Array): Promise<string> {
  const hash = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes as BufferSource));
  return [...hash].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}
