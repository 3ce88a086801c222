import type { Entry } from "./entry.ts";
import { frame, unframe } from "./framing.ts";

/**
 * One line of the file of a job: an entry; that everything before it was thrown away, by the id of that decision; or that
 * so many damaged bytes were found and told.
 */
export type Line = { readonly entry: Entry } | { readonly thrownAway: string } | { readonly toldBytes: number };

/** What the file of a job says. */
export interface JobLog {
  /** Every entry that was not thrown away, by its id. */
  readonly entries: ReadonlyMap<string, Entry>;
  /** The ids of all decisions to throw the job away that this file has carried out. */
  readonly thrownAway: readonly string[];
  /** Bytes that could not be read, and how many of them a person was told of. */
  readonly damagedBytes: number;
  readonly toldBytes: number;
  /** The length of the file in bytes; 0 where there is none. */
  readonly size: number;
}

/** Lines as the bytes that are added to the file, each in a frame of its own so that it is lost alone. */
export function writtenOut(lines: readonly Line[]): Uint8Array {
  const frames = lines.map((line) => frame(JSON.stringify(line)));
  const bytes = new Uint8Array(frames.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const one of frames) {
    bytes.set(one, at);
    at += one.length;
  }
  return bytes;
}

/** Reads the file of a job as far as it can be read. */
export function readLog(bytes: Uint8Array): JobLog {
  const { texts, damagedBytes } = unframe(bytes);
  const entries = new Map<string, Entry>();
  const thrownAway: string[] = [];
  let toldBytes = 0;
  for (const text of texts) {
    // Its checksum held, so it is what this app wrote.
    const line = JSON.parse(text) as Line;
    if ("entry" in line) entries.set(line.entry.id, line.entry);
    else if ("thrownAway" in line) {
      thrownAway.push(line.thrownAway);
      entries.clear();
    } else if ("toldBytes" in line) toldBytes = Math.max(toldBytes, line.toldBytes);
  }
  return { entries, thrownAway, damagedBytes, toldBytes, size: bytes.length };
}
