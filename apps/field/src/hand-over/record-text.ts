import type { Entry } from "../record/entry.ts";
import { isEntry, isWhole } from "../record/sound.ts";
import { hashOf, isHash } from "./hash.ts";
import { LARGEST_PHOTOGRAPH } from "./limits.ts";
import { Refused } from "./refused.ts";

/** What of a job stands in its copy beside the photographs' bytes. */
export interface Contents {
  readonly job: string;
  readonly entries: readonly Entry[];
  /** Photographs that are in the copy. */
  readonly photographs: readonly Listed[];
}

/** A photograph by the hash of its bytes, and how many they are. */
export interface Listed {
  readonly sha256: string;
  readonly bytes: number;
}

/** Contents as they were read, and whether a hash over all of them proved that they are what was written. */
export interface Proved extends Contents {
  readonly proved: boolean;
}

const FORMAT = "good-grounds-copy";
const VERSION = 2;

/** Copies of before had no hash. Nothing of theirs is named as it is now: one altered letter makes none of the other. */
const OLDER = { format: "good-grounds-job", version: 1 };
const OLDER_MEMBERS = ["format", "version", "job", "entries"];

/** The contents as text, with the hash of all of them in front. Alone it is a copy without photographs. */
export async function textOf({ job, photographs, entries }: Contents): Promise<string> {
  const body = JSON.stringify({ format: FORMAT, version: VERSION, of: job, photographs, record: entries });
  return `{"sha256":"${await hashOfText(body)}",${body.slice(1)}`;
}

/** Reads contents; refused where they are none, are not what was written, or hold less than the whole. */
export async function contentsIn(text: string): Promise<Proved> {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    // What begins as such a text does and breaks off, or is broken in the middle, was one.
    throw new Refused(/^\{"(sha256|format|job)":/.test(text) ? "damaged" : "no-copy");
  }
  if (typeof data !== "object" || data === null || Array.isArray(data)) throw new Refused("no-copy");
  const read = data as { readonly [name: string]: unknown };
  return "sha256" in read || read.format === FORMAT ? proved(read) : older(read);
}

async function proved({ sha256, ...body }: { readonly [name: string]: unknown }): Promise<Proved> {
  const { format, version, of, photographs, record } = body;
  if (format === FORMAT && typeof version === "number" && version > VERSION) throw new Refused("newer");
  if (sha256 !== (await hashOfText(JSON.stringify(body)))) throw new Refused("damaged");
  if (format !== FORMAT || version !== VERSION || !areListed(photographs)) throw new Refused("no-copy");
  return { ...whole(of, record), photographs, proved: true };
}

function older(data: { readonly [name: string]: unknown }): Proved {
  const { format = OLDER.format, version = OLDER.version, job, entries } = data;
  // Nothing else ever stood in one; a member of another name is one whose name was altered.
  if (format !== OLDER.format || version !== OLDER.version || Object.keys(data).some((one) => !isOlderMember(one)))
    throw new Refused("no-copy");
  return { ...whole(job, entries), photographs: [], proved: false };
}

/** One entry that is missing or cannot be read would leave a hole in what its author knew: the whole is refused. */
function whole(job: unknown, entries: unknown): { readonly job: string; readonly entries: readonly Entry[] } {
  if (typeof job !== "string" || !/^[0-9A-Za-z-]{1,60}$/.test(job) || !Array.isArray(entries))
    throw new Refused("no-copy");
  if (entries.length === 0 || !entries.every(isEntry) || !isWhole(entries)) throw new Refused("not-whole");
  return { job, entries };
}

function areListed(photographs: unknown): photographs is readonly Listed[] {
  return (
    Array.isArray(photographs) &&
    photographs.every(
      (one) =>
        typeof one === "object" &&
        one !== null &&
        isHash(one.sha256) &&
        Number.isSafeInteger(one.bytes) &&
        one.bytes > 0 &&
        one.bytes <= LARGEST_PHOTOGRAPH,
    )
  );
}

function isOlderMember(name: string): boolean {
  return OLDER_MEMBERS.includes(name);
}

function hashOfText(text: string): Promise<string> {
  return hashOf(new TextEncoder().encode(text));
}
