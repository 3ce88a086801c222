import { strToU8, unzipSync, type Zippable, zipSync } from "fflate";
import { describe, expect, test } from "vitest";
import type { Entry } from "../record/entry.ts";
import { Record as JobRecord } from "../record/record.ts";
import type { Copy, Picture } from "./copy.ts";
import { hashOf } from "./hash.ts";
import { LARGEST } from "./limits.ts";
import { readCopy } from "./read-copy.ts";
import { textOf } from "./record-text.ts";
import { Refused } from "./refused.ts";
import { memorySink } from "./sink.ts";
import { writeCopy } from "./write-copy.ts";

const AT = "2026-11-01T10:00:00Z";
const JOB = "3f0c6a52-0000-4000-8000-000000000001";

function record(...values: readonly string[]): JobRecord {
  const made = new JobRecord();
  for (const [i, value] of (values.length === 0 ? ["House", "0.35 Ω"] : values).entries())
    made.add(made.next("a", "", AT, `title${i}`, value));
  return made;
}

const [first, second] = record().entries() as readonly [Entry, Entry];
/** A copy as the app made them before there was a hash over them. */
const olderText = (entries: readonly unknown[], more: object = {}) =>
  JSON.stringify({ format: "good-grounds-job", version: 1, job: JOB, entries, ...more });
const older = (text: string, more: Zippable = {}) => blob(zipSync({ "job.json": strToU8(text), ...more }));
const blob = (...parts: readonly (Uint8Array | string)[]) => new Blob(parts as BlobPart[]);
const bytesOf = async (file: Blob) => new Uint8Array(await file.arrayBuffer());
const picture = async (...bytes: readonly number[]): Promise<Picture> => {
  const all = new Uint8Array([0xff, 0xd8, ...bytes]);
  return { sha256: await hashOf(all), bytes: blob(all) };
};
const written = (entries: readonly Entry[], pictures: readonly Picture[] = []) =>
  writeCopy({ job: JOB, entries, pictures }, memorySink(), () => undefined);

async function refusal(file: Blob): Promise<string> {
  const found: Copy | Refused = await readCopy(file).catch((error: unknown) => {
    if (error instanceof Refused) return error;
    throw error;
  });
  return found instanceof Refused ? found.reason : "taken";
}

describe("a copy of a job", () => {
  test("comes back with every entry and photograph, proved", async () => {
    const one = await picture(1, 2, 3);
    const { file, entries, photographs } = await written(record().entries(), [one]);
    expect({ entries, photographs }).toEqual({ entries: 2, photographs: 1 });
    const copy = await readCopy(file);
    expect(copy).toMatchObject({ job: JOB, entries: record().entries(), damaged: 0, proved: true });
    expect([...copy.photographs.keys()]).toEqual([one.sha256]);
    expect(await bytesOf(copy.photographs.get(one.sha256) as Blob)).toEqual(await bytesOf(one.bytes));
  });

  test("is the same to the byte where its content is, and can be opened by any program for archives", async () => {
    const one = await picture(1, 2, 3);
    const bytes = await bytesOf((await written(record().entries(), [one])).file);
    expect(await bytesOf((await written(record().entries(), [one])).file)).toEqual(bytes);
    expect(Object.keys(unzipSync(bytes)).sort()).toEqual([`photographs/${one.sha256}.jpg`, "record.json"]);
  });

  test("comes back from the record alone that is handed out in need", async () => {
    const copy = await readCopy(blob(await textOf({ job: JOB, entries: record().entries(), photographs: [] })));
    expect(copy).toMatchObject({ job: JOB, entries: record().entries(), damaged: 0, proved: true });
  });

  test("says of photographs that the job names and the device does not have, or no longer as they were", async () => {
    const one = await picture(1);
    const altered: Picture = { sha256: (await picture(2)).sha256, bytes: (await picture(3)).bytes };
    const job = new JobRecord();
    for (const [i, sha256] of [one.sha256, altered.sha256, "0".repeat(64)].entries())
      job.add(job.next("a", "", AT, `photographs/p${i}/sha256`, sha256));
    const made = await written(job.entries(), [one, altered]);
    expect(made).toMatchObject({ photographs: 1, missing: 2 });
  });

  test("with an entry of ten megabytes comes back", async () => {
    const copy = await readCopy((await written(record("x".repeat(10_000_000)).entries())).file);
    expect(String(copy.entries[0]?.value)).toHaveLength(10_000_000);
  });

  test("is not called made where what is read back is something else", async () => {
    const sink = memorySink();
    const faulty = {
      ...sink,
      write: (piece: Uint8Array) => {
        const as = piece.slice();
        if (as.length > 200) as[100] = (as[100] ?? 0) ^ 1;
        sink.write(as);
      },
    };
    const making = writeCopy(
      { job: JOB, entries: record("x".repeat(100_000)).entries(), pictures: [] },
      faulty,
      () => undefined,
    );
    await expect(making).rejects.toThrow(Refused);
  });

  test("of which one photograph was damaged comes in without it, and says so", async () => {
    const [one, other] = [await picture(1, 2, 3), await picture(4, 5, 6)];
    const bytes = await bytesOf((await written(record().entries(), [one, other])).file);
    const at = bytes.findIndex((_, i) => bytes[i] === 0xff && bytes[i + 1] === 0xd8 && bytes[i + 2] === 4);
    bytes[at + 3] = 0;
    const copy = await readCopy(blob(bytes));
    expect([...copy.photographs.keys()]).toEqual([one.sha256]);
    expect(copy).toMatchObject({ damaged: 1, proved: true });
  });
});

describe("a copy of before", () => {
  test("still comes in, and says that nothing proves it", async () => {
    expect(await readCopy(older(olderText(record().entries())))).toMatchObject({
      job: JOB,
      entries: record().entries(),
      proved: false,
    });
    const bare = blob(JSON.stringify({ job: JOB, entries: record().entries() }));
    expect(await readCopy(bare)).toMatchObject({ entries: record().entries(), proved: false });
  });

  test("brings photographs whose hash is right, and counts the others", async () => {
    const one = await picture(1, 2, 3);
    const bytes = await bytesOf(one.bytes);
    const copy = await readCopy(
      older(olderText(record().entries()), {
        [`photographs/${one.sha256}.jpg`]: bytes,
        [`photographs/${"0".repeat(64)}.jpg`]: bytes,
        [`photographs/../${one.sha256}.jpg`]: bytes,
        "__proto__/x.jpg": bytes,
      }),
    );
    expect([...copy.photographs.keys()]).toEqual([one.sha256]);
    expect(copy.damaged).toBe(1);
  });

  test("is not what a copy with a hash becomes by another name or number", async () => {
    const text = await textOf({ job: JOB, entries: record().entries(), photographs: [] });
    expect(await refusal(older(text))).toBe("damaged");
    expect(await refusal(blob(zipSync({ "record.json": strToU8(olderText(record().entries())) })))).toBe("damaged");
    expect(await refusal(blob(text.replace('"version":2', '"version":0')))).toBe("damaged");
    expect(await refusal(blob(text.replace('"sha256"', '"qha256"')))).toBe("damaged");
    expect(await refusal(blob(text.replace('"good-grounds-copy"', '"good-grounds-job"')))).toBe("damaged");
  });
});

describe("refused whole is", () => {
  test.each<readonly [string, string, Blob]>([
    ["a file that is no archive", "no-copy", blob("PK no archive at all")],
    ["an empty file", "no-copy", blob()],
    ["an archive of something else", "no-copy", blob(zipSync({ "a.txt": strToU8("a") }))],
    ["text that is no JSON", "no-copy", older("{")],
    ["JSON nested until reading it fails", "no-copy", older(`${"[".repeat(200_000)}`)],
    ["another format", "no-copy", older(olderText([first], { format: "another" }))],
    ["a member that no copy has", "no-copy", older(olderText([first], { more: 1 }))],
    ["a job without a name", "no-copy", older(olderText([first], { job: "" }))],
    ["a job named like a path", "no-copy", older(olderText([first], { job: "../x" }))],
    ["a job without entries", "not-whole", older(olderText([]))],
    ["a copy with a hole in what was known", "not-whole", older(olderText([second]))],
    ["a copy with one entry that cannot be read", "not-whole", older(olderText([first, { ...second, at: 3 }]))],
  ])("%s", async (_, reason, file) => {
    expect(await refusal(file)).toBe(reason);
  });

  test("a copy that breaks off, wherever", async () => {
    const bytes = await bytesOf((await written(record().entries(), [await picture(1)])).file);
    for (let length = 0; length < bytes.length; length++)
      expect(await refusal(blob(bytes.slice(0, length))), `${length}`).not.toBe("taken");
  });

  test("a copy of a newer version, and says so", async () => {
    const text = await textOf({ job: JOB, entries: [first], photographs: [] });
    expect(await refusal(blob(text.replace('"version":2', '"version":3')))).toBe("newer");
  });

  test("a copy of before whose record is not what the archive's checksum says", async () => {
    const bytes = zipSync({ "job.json": [strToU8(olderText(record().entries())), { level: 0 }] });
    const at = new TextDecoder("latin1").decode(bytes).indexOf("0.35");
    bytes[at + 2] = "8".charCodeAt(0);
    expect(await refusal(blob(bytes))).toBe("damaged");
  });

  test("a small file that claims to hold more than there is room for", async () => {
    const bytes = zipSync({
      "job.json": strToU8(olderText([first])),
      [`photographs/${"0".repeat(64)}.jpg`]: new Uint8Array(20),
    });
    expect(await refusal(blob(withSize(bytes, "photographs/", LARGEST)))).toBe("too-large");
    expect(await refusal(blob(withSize(bytes, "job.json", 200_000_000)))).toBe("damaged");
  });

  test("a file that holds more than it claims: never more than that is unpacked", async () => {
    const bytes = zipSync({ "job.json": strToU8(olderText([first], { more: "x".repeat(5_000_000) })) });
    expect(await refusal(blob(withSize(bytes, "job.json", 100)))).toBe("damaged");
  });

  test("an archive with two members of one name", async () => {
    const bytes = zipSync({ "job.json": strToU8(olderText([first])), "jop.json": strToU8(olderText([first])) });
    for (const at of indicesOf(bytes, "jop.json")) bytes[at + 2] = "b".charCodeAt(0);
    expect(await refusal(blob(bytes))).toBe("damaged");
  });
});

/** The archive with another unpacked size in the directory entry of a file. */
function withSize(bytes: Uint8Array, name: string, size: number): Uint8Array {
  const changed = bytes.slice();
  const view = new DataView(changed.buffer);
  for (let at = 0; at < changed.length - 46; at++)
    if (view.getUint32(at, true) === 0x02014b50 && new TextDecoder().decode(changed.slice(at + 46)).startsWith(name))
      view.setUint32(at + 24, size, true);
  return changed;
}

function indicesOf(bytes: Uint8Array, word: string): readonly number[] {
  const text = new TextDecoder("latin1").decode(bytes);
  return [...text.matchAll(new RegExp(word, "g"))].map(({ index }) => index);
}
