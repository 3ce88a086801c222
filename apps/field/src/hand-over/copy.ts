import type { Entry } from "../record/entry.ts";
import { isHash } from "./hash.ts";

/** What an archive of a job holds: its record, and every photograph the device had. */
export const RECORD = "record.json";
export const PHOTOGRAPH = /^photographs\/([0-9a-f]{64})\.jpg$/;

export function photographName(sha256: string): string {
  return `photographs/${sha256}.jpg`;
}

/** A copy of a whole job as it was read. Nothing of it is on the device yet. */
export interface Copy {
  readonly job: string;
  readonly entries: readonly Entry[];
  /** Photographs by the hash of their bytes, which was checked. */
  readonly photographs: ReadonlyMap<string, Blob>;
  /** Photographs whose bytes are not what their hash says, or that are not there; they are left out. */
  readonly damaged: number;
  /** Whether a hash over entries and photographs proved that they are what was written. */
  readonly proved: boolean;
}

/** A copy that was made and, read back from where it was written, was found to be what it should be. */
export interface Made {
  readonly file: Blob;
  readonly entries: number;
  readonly photographs: number;
  /** Photographs that the job names and this device does not have. */
  readonly missing: number;
}

/** A photograph of a job with its bytes as this device has them. */
export interface Picture {
  readonly sha256: string;
  readonly bytes: Blob;
}

/** Says how many bytes of how many are done; throws where the work was called off meanwhile. */
export type Moved = (done: number, of: number) => void;

/** Hashes of all photographs that any entry ever named, those taken out since among them. */
export function photographsIn(entries: readonly Entry[]): ReadonlySet<string> {
  return new Set(
    entries.flatMap(({ path, value }) => (/^photographs\/[^/]+\/sha256$/.test(path) && isHash(value) ? [value] : [])),
  );
}
