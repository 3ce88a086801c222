import fc from "fast-check";
import { beforeAll, describe, expect, test } from "vitest";
import { issued, testKey } from "../../../../outside/issue/small-document.ts";
import { hashOf } from "../statement/statement.ts";
import { readIssued } from "./issued.ts";
import { sealPdf } from "./seal.ts";

const RELEASE = "0.1.0";
let key: Awaited<ReturnType<typeof testKey>>;
let whole: Awaited<ReturnType<typeof issued>>;
beforeAll(async () => {
  key = await testKey();
  whole = await issued(key);
});

/** What is told of a document, on one line. */
const told = async (file: Uint8Array) => (await readIssued(file, RELEASE)).faults.join(" ");
const joined = (...parts: readonly (Uint8Array | string)[]) =>
  new Uint8Array(Buffer.concat(parts.map((part) => (typeof part === "string" ? Buffer.from(part) : part))));

describe("an issued document", () => {
  test("is as signed, to the last byte", async () => {
    const { file, pages, record } = whole;
    expect(await readIssued(file, RELEASE)).toMatchObject({
      faults: [],
      record: { signed: true, hash: record.hash },
      pages,
    });
  });

  test("tells every flipped bit that is tried", async () => {
    const { file } = whole;
    const missed: number[] = [];
    await fc.assert(
      fc.asyncProperty(fc.nat({ max: file.length - 1 }), fc.nat({ max: 7 }), async (at, bit) => {
        const changed = file.slice();
        changed[at] = (changed[at] ?? 0) ^ (1 << bit);
        if ((await readIssued(changed, RELEASE)).faults.length === 0) missed.push(at);
        expect(missed).toEqual([]);
      }),
      { numRuns: 2000, endOnFailure: true },
    );
  });

  test("tells every flipped bit of how the signature on it is spelt", async () => {
    const { file } = whole;
    // The signature value: a sequence of two numbers, inside an octet string, as hexadecimal digits.
    const text = Buffer.from(file).toString("latin1");
    const [spelt] = [...text.matchAll(/04[0-9A-F]{2}(30[0-9A-F]{2}0220|30[0-9A-F]{2}0221)/g)].toReversed();
    const start = spelt?.index ?? -1;
    expect(start).toBeGreaterThan(whole.pages.length);
    const missed: string[] = [];
    for (let at = start; at < start + 160; at++)
      for (let bit = 0; bit < 8; bit++) {
        const changed = file.slice();
        changed[at] = (changed[at] ?? 0) ^ (1 << bit);
        if ((await readIssued(changed, RELEASE)).faults.length === 0) missed.push(`${at}:${bit}`);
      }
    expect(missed).toEqual([]);
  });

  test("comes to an end where a text begins and never ends, in any of its dictionaries", async () => {
    const { file } = whole;
    const text = Buffer.from(file).toString("latin1");
    const starts = [...text.matchAll(/<<\s/g)].map(({ index }) => index + 2);
    expect(starts.length).toBeGreaterThan(10);
    for (const at of starts) {
      const changed = file.slice();
      changed[at] = 0x28;
      expect((await readIssued(changed, RELEASE)).faults, `"(" at byte ${at}`).not.toEqual([]);
    }
  });

  test("tells of what was added after it, a revision or one byte", async () => {
    const { file } = whole;
    expect(await told(joined(file, "\n"))).toContain(
      "Something was added after the last byte that was signed: 1 bytes.",
    );
    const again = await sealPdf(
      file,
      whole.bytes,
      new Date("2026-10-09T10:00:00Z"),
      (await testKey("B. Sample")).signer,
    ).catch(() => undefined);
    expect(again).toBeUndefined();
    const revision =
      "\n3 0 obj\n<< /Type /Page /Parent 2 0 R /MediaBox [0 0 10 10] >>\nendobj\nxref\n3 1\n0000000001 00000 n \ntrailer\n<< /Size 7 /Root 1 0 R >>\nstartxref\n1\n%%EOF\n";
    expect(await told(joined(file, revision))).not.toBe("");
  });

  test("tells where its end is missing, and a stripped signature", async () => {
    const { file, pages } = whole;
    expect(await told(file.slice(0, -4))).not.toBe("");
    expect(await told(pages)).toContain("no statement of issue");
    expect(await told(file.slice(0, 40))).not.toBe("");
    expect(await told(new Uint8Array())).not.toBe("");
  });

  test("tells of another attachment under the same statement", async () => {
    const other = await issued(key, {}, '{"reading":"0.95 ohm"}');
    expect(
      await told(await sealPdf(other.pages, whole.bytes, new Date(whole.record.statement.at), key.signer)),
    ).toContain("The pages were changed");
    const swapped = await issued(key, { evidence: hashOf("another") });
    expect(await told(swapped.file)).toContain("another than the statement names");
  });

  test("tells of a signature of another certificate over the same pages and statement", async () => {
    const thief = await testKey("A. Sample");
    const resealed = await sealPdf(whole.pages, whole.bytes, new Date(whole.record.statement.at), thief.signer);
    expect(await told(resealed)).toContain("another certificate than the statement names");
  });

  test("tells where a time authority's answer is missing", async () => {
    const { file } = await issued(key, { timeAuthority: true });
    expect(await told(file)).toContain("What the time authority said is missing");
  });
});
