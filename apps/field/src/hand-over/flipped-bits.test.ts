import { readFileSync } from "node:fs";
import { strToU8, zipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { casesOfRun } from "../../../../outside/seed.ts";
import { placesOf } from "../record/document.ts";
import type { Entry, Value } from "../record/entry.ts";
import { Record as JobRecord } from "../record/record.ts";
import type { Copy, Picture } from "./copy.ts";
import { hashOf } from "./hash.ts";
import { readCopy } from "./read-copy.ts";
import { textOf } from "./record-text.ts";
import { Refused } from "./refused.ts";
import { memorySink } from "./sink.ts";
import { writeCopy } from "./write-copy.ts";

const JOB = "3f0c6a52-0000-4000-8000-000000000001";
const SEED = 20261130;
/** So many in a copy as it is made now; fewer in the two simpler kinds, which rest on the same hash or on a checksum. */
const FLIPS = casesOfRun(600);
const FEWER = casesOfRun(200);

const random = randomFrom(SEED);
const pictures = await Promise.all([300, 500, 700].map(picture));
const entries = demonstration();

describe("of a copy in which one bit was flipped", () => {
  test("nothing comes in as changed, wherever the bit is", async () => {
    const { file } = await writeCopy({ job: JOB, entries, pictures }, memorySink(), () => undefined);
    const bytes = new Uint8Array(await file.arrayBuffer());
    expect(bytes.length).toBeGreaterThan(20_000);
    const found = await flipped(bytes, spread(bytes, FLIPS));
    expect(found.changed).toEqual([]);
    expect(found.refused).toBeGreaterThan(FLIPS / 2);
  });

  test("nothing comes in as changed from the record alone", async () => {
    const bytes = strToU8(await textOf({ job: JOB, entries, photographs: [] }));
    const found = await flipped(bytes, spread(bytes, FEWER));
    expect(found.changed).toEqual([]);
    expect(found.refused).toBeGreaterThan(0.9 * FEWER);
  });

  test("nothing comes in as changed from an archive of before, by its checksum", async () => {
    const bytes = zipSync(
      { "job.json": strToU8(JSON.stringify({ format: "good-grounds-job", version: 1, job: JOB, entries })) },
      { level: 1 },
    );
    const found = await flipped(bytes, spread(bytes, FEWER));
    expect(found.changed).toEqual([]);
    expect(found.refused).toBeGreaterThan(0.9 * FEWER);
  });
});

/** What becomes of the bytes with one bit flipped, for every bit named. */
async function flipped(bytes: Uint8Array, bits: readonly number[]) {
  const right = JSON.stringify(entries);
  const changed: number[] = [];
  let refused = 0;
  for (const bit of bits) {
    const altered = bytes.slice();
    altered[bit >> 3] = (altered[bit >> 3] as number) ^ (1 << (bit & 7));
    const copy: Copy | undefined = await readCopy(new Blob([altered])).catch((error: unknown) => {
      // A fault of the program would be no refusal.
      if (error instanceof Refused) return undefined;
      throw error;
    });
    if (copy === undefined) refused += 1;
    else if (copy.job !== JOB || JSON.stringify(copy.entries) !== right || !(await areSound(copy))) changed.push(bit);
  }
  return { changed, refused };
}

/** Whether every photograph is what it was; one that is left out is said to be damaged. */
async function areSound({ photographs, damaged, proved }: Copy): Promise<boolean> {
  if (!proved) return photographs.size === 0;
  for (const [sha256, file] of photographs) if ((await hashOf(await file.arrayBuffer())) !== sha256) return false;
  return photographs.size + damaged === pictures.length || photographs.size + damaged === 0;
}

/** So many bits anywhere, and some more at both ends, where the headers and the directory are. */
function spread(bytes: Uint8Array, count: number): readonly number[] {
  const all = bytes.length * 8;
  const within = (from: number, to: number) => from + Math.floor(random() * (to - from));
  return [
    ...Array.from({ length: count }, () => within(0, all)),
    ...Array.from({ length: 100 }, () => within(0, 1000)),
    ...Array.from({ length: 300 }, () => within(all - 5000, all)),
  ];
}

async function picture(size: number): Promise<Picture> {
  const bytes = Uint8Array.from({ length: size }, () => Math.floor(random() * 256));
  return { sha256: await hashOf(bytes), bytes: new Blob([bytes]) };
}

/** The demonstration as the app keeps it, with photographs. */
function demonstration(): readonly Entry[] {
  const text = readFileSync(new URL("../../../../examples/terraced-house.json", import.meta.url), "utf8");
  const record = new JobRecord();
  const add = (path: string, value: Value) => record.add(record.next("a", "", "2026-11-01T10:00:00Z", path, value));
  for (const [path, value] of placesOf(JSON.parse(text))) add(path, value);
  for (const [i, { sha256 }] of pictures.entries()) add(`photographs/more${i}/sha256`, sha256);
  return record.entries();
}

function randomFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
