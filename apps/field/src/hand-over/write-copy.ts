import { Zip, ZipDeflate, ZipPassThrough } from "fflate";
import type { Entry } from "../record/entry.ts";
import { type Made, type Moved, type Picture, photographName, photographsIn, RECORD } from "./copy.ts";
import { hashOf } from "./hash.ts";
import { LARGEST, LARGEST_PHOTOGRAPH, LARGEST_RECORD } from "./limits.ts";
import { readCopy } from "./read-copy.ts";
import { type Listed, textOf } from "./record-text.ts";
import { Refused } from "./refused.ts";
import type { Sink } from "./sink.ts";

/** A job of which a copy is made. */
export interface Job {
  readonly job: string;
  readonly entries: readonly Entry[];
  /** Photographs of the job that this device has. */
  readonly pictures: readonly Picture[];
}

/** So much of the record is packed at once, in bytes. */
const STEP = 256 * 1024;

/** One moment for every copy: the same content gives the same bytes, and no clock that is wrong can stop it. */
const MOMENT = new Date(2026, 0, 1);

/**
 * Writes a job as one file, one photograph in memory at a time, and reads it back from where it lies: what is returned
 * was found to hold every entry and photograph as they were.
 */
export async function writeCopy({ job, entries, pictures }: Job, sink: Sink, moved: Moved): Promise<Made> {
  const size = pictures.reduce((sum, { bytes }) => sum + bytes.size, 0);
  if (size > LARGEST) throw new Refused("too-large");
  try {
    const archive = new Zip((error, piece) => {
      if (error !== null) throw error;
      sink.write(piece);
    });
    const photographs: Listed[] = [];
    let read = 0;
    for (const { sha256, bytes } of pictures) {
      const picture = await soundBytes(bytes, sha256);
      if (picture !== undefined) {
        // Photographs are compressed already.
        const member = new ZipPassThrough(photographName(sha256));
        member.mtime = MOMENT;
        archive.add(member);
        member.push(picture, true);
        photographs.push({ sha256, bytes: picture.length });
      }
      read += bytes.size;
      moved(read, 2 * size);
    }
    const text = new TextEncoder().encode(await textOf({ job, photographs, entries }));
    if (text.length > LARGEST_RECORD) throw new Refused("too-large");
    const all = 2 * (size + text.length);
    const record = new ZipDeflate(RECORD, { level: 1 });
    record.mtime = MOMENT;
    archive.add(record);
    for (let at = 0; at < text.length; at += STEP) {
      record.push(text.subarray(at, at + STEP), at + STEP >= text.length);
      moved(size + at, all);
      await breath();
    }
    archive.end();
    const file = await sink.finish();
    const copy = await readCopy(file, (done) => moved(all / 2 + Math.min(done, all / 2), all));
    const isSame =
      copy.proved &&
      copy.job === job &&
      copy.damaged === 0 &&
      copy.entries.length === entries.length &&
      copy.photographs.size === photographs.length;
    if (!isSame) throw new Refused("damaged");
    return {
      file,
      entries: entries.length,
      photographs: photographs.length,
      missing: photographsIn(entries).size - photographs.length,
    };
  } catch (error) {
    await sink.giveUp().catch(() => undefined);
    throw error;
  }
}

/** The bytes of a photograph; undefined where they cannot be read, or are no longer what was taken. */
async function soundBytes(picture: Blob, sha256: string): Promise<Uint8Array | undefined> {
  if (picture.size > LARGEST_PHOTOGRAPH) return undefined;
  const bytes = await picture.arrayBuffer().catch(() => undefined);
  if (bytes === undefined || (await hashOf(bytes)) !== sha256) return undefined;
  return new Uint8Array(bytes);
}

/** Lets whatever else waits have its turn. */
function breath(): Promise<void> {
  return new Promise((done) => setTimeout(done));
}
