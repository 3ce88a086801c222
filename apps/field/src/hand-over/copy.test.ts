import { strToU8, type Zippable, zipSync } from "fflate";
import { describe, expect, test } from "vitest";
import type { Entry } from "../record/entry.ts";
import { Record as JobRecord } from "../record/record.ts";
import { copyOf, hashOf, LARGEST, readCopy } from "./copy.ts";

const AT = "2026-11-01T10:00:00Z";
const JOB = "3f0c6a52-0000-4000-8000-000000000001";

function record(...values: readonly string[]): JobRecord {
  const made = new JobRecord();
  for (const [i, value] of (values.length === 0 ? ["House", "0.35 Ω"] : values).entries())
    made.add(made.next("a", "", AT, `title${i}`, value));
  return made;
}

const entriesOf = (entries: readonly unknown[], more: object = {}) =>
  JSON.stringify({ format: "good-grounds-job", version: 1, job: JOB, entries, ...more });
const zipped = (text: string, more: Zippable = {}) => zipSync({ "job.json": strToU8(text), ...more });

describe("a copy of a job", () => {
  test("comes back with every entry", async () => {
    const copy = await readCopy(await copyOf(JOB, record()));
    expect(copy?.job).toBe(JOB);
    expect(copy?.entries).toEqual(record().entries());
  });

  test("comes back from the bare entries that are handed out in need", async () => {
    const copy = await readCopy(strToU8(JSON.stringify({ job: JOB, entries: record().entries() })));
    expect(copy?.entries).toEqual(record().entries());
  });

  test("takes photographs whose hash is right, and counts the others", async () => {
    const bytes = new Uint8Array([0xff, 0xd8, 1, 2, 3]);
    const sha256 = await hashOf(bytes);
    const copy = await readCopy(
      zipped(entriesOf(record().entries()), {
        [`photographs/${sha256}.jpg`]: bytes,
        [`photographs/${"0".repeat(64)}.jpg`]: bytes,
        [`photographs/../${sha256}.jpg`]: bytes,
        "__proto__/x.jpg": bytes,
      }),
    );
    expect([...(copy?.photographs.keys() ?? [])]).toEqual([sha256]);
    expect(copy?.damaged).toBe(1);
  });

  test("with an entry of ten megabytes comes back", async () => {
    const copy = await readCopy(await copyOf(JOB, record("x".repeat(10_000_000))));
    expect(String(copy?.entries[0]?.value)).toHaveLength(10_000_000);
  });
});

describe("refused whole is", () => {
  const [first, second] = record().entries() as readonly [Entry, Entry];
  test.each<readonly [string, Uint8Array]>([
    ["a file that is no archive", strToU8("PK no archive at all")],
    ["an empty file", new Uint8Array()],
    ["an archive of something else", zipSync({ "a.txt": strToU8("a") })],
    ["text that is no JSON", zipped("{")],
    ["JSON nested until reading it fails", zipped(`${"[".repeat(200_000)}`)],
    ["another format", zipped(entriesOf([first], { format: "another" }))],
    ["a newer version", zipped(entriesOf([first], { version: 2 }))],
    ["a job without a name", zipped(entriesOf([first], { job: "" }))],
    ["a job named like a path", zipped(entriesOf([first], { job: "../x" }))],
    ["a job without entries", zipped(entriesOf([]))],
    ["a copy with a hole in what was known", zipped(entriesOf([second]))],
    ["a copy with one entry that cannot be read", zipped(entriesOf([first, { ...second, at: 3 }]))],
    ["a truncated copy", zipped(entriesOf([first, second])).slice(0, 120)],
  ])("%s", async (_, bytes) => {
    expect(await readCopy(bytes)).toBeUndefined();
  });

  test("a small file that claims to hold more than there is room for", async () => {
    const bytes = zipped(entriesOf([first]), { [`photographs/${"0".repeat(64)}.jpg`]: new Uint8Array(20) });
    const claimed = withSize(bytes, "photographs/", LARGEST);
    expect(await readCopy(claimed)).toBeUndefined();
  });

  test("a file that holds more than it claims: never more than that is unpacked", async () => {
    const bytes = zipped(entriesOf([first], { more: "x".repeat(5_000_000) }));
    expect(await readCopy(withSize(bytes, "job.json", 100))).toBeUndefined();
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
