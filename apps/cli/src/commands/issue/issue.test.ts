import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PassThrough, Readable } from "node:stream";
import { paperOf, rootFromPaper, writeRegister } from "@good-grounds/issue";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { PASSPHRASE, testKey } from "../../../../../outside/issue/small-document.ts";
import { run } from "../../run.ts";

const EXAMPLE = new URL("../../../../../examples/terraced-house.json", import.meta.url);
const REASON = "not-inspected /inspected/3=The cupboard was locked; the tenant has the key.";
const PAPER = paperOf(Uint8Array.from({ length: 32 }, (_, i) => i));

async function goodgrounds(args: readonly string[], stdin = `${PASSPHRASE}\n`) {
  const collect = (stream: PassThrough) => {
    const chunks: Buffer[] = [];
    stream.on("data", (chunk: Buffer) => chunks.push(chunk));
    return () => Buffer.concat(chunks).toString("utf8");
  };
  const [stdout, stderr] = [new PassThrough(), new PassThrough()];
  const [out, err] = [collect(stdout), collect(stderr)];
  const host = { stdin: Readable.from([Buffer.from(stdin)]), stdout, stderr, columns: 80, interactive: false };
  const code = await run(args, host);
  await new Promise((done) => setImmediate(done));
  return { code, out: out(), err: err() };
}

let folder = "";
const at = (name: string) => join(folder, name);
const issue = (...more: string[]) =>
  goodgrounds(["issue", at("house.json"), "--out", at("out"), "--key", at("key.json"), ...more]);

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "good-grounds-issue-"));
  mkdirSync(at("out"));
  writeFileSync(at("house.json"), readFileSync(EXAMPLE));
  const { text, open } = await testKey();
  writeFileSync(at("key.json"), text);
  const entry = { key: open.key, person: "A. Sample", device: "phone", added: "2026-01-01T00:00:00Z" };
  writeFileSync(at("register.json"), writeRegister([entry], rootFromPaper(PAPER)));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("issue and verify", () => {
  test("a report is refused, then issued, replaced and verified", async () => {
    const refused = await issue();
    expect(refused).toMatchObject({ code: 5, out: "", err: expect.stringContaining("not-inspected /inspected/3\n") });
    expect(await issue("--reason", "not-inspected /inspected/3=n/a")).toMatchObject({ code: 5 });
    expect(await issue("--reason", "other=because the tenant asked")).toMatchObject({
      code: 2,
      err: expect.stringContaining("not-inspected /inspected/3"),
    });
    expect(readdirSync(at("out"))).toEqual([]);

    const first = await issue("--reason", REASON, "--register", at("register.json"));
    expect(first).toMatchObject({ code: 0, err: expect.stringContaining("conclusions rest on figures from memory") });
    const one = at("out/GG-2026-0417-issue-1.pdf");
    const verified = await goodgrounds(["verify", one, "--register", at("register.json")]);
    expect(verified).toMatchObject({ code: 0, err: "" });
    for (const words of [
      "no byte of the document differs",
      "A. Sample",
      "No time authority was asked",
      "came out the same to the",
      "tenant has the key",
      "What none of this shows",
    ])
      expect(verified.out).toContain(words);
    for (const text of verified.out.split("\n").filter((line) => line.startsWith("  ")))
      expect(text.length).toBeLessThanOrEqual(80);
    expect(verified.out).not.toMatch(/\b(in)?valid|\btrusted/i);

    expect(await issue("--reason", REASON)).toMatchObject({
      code: 2,
      err: expect.stringContaining("never written over"),
    });
    const second = await issue("--reason", REASON, "--replaces", one);
    expect(second).toMatchObject({ code: 0, out: expect.stringContaining("issue-2.pdf") });
    const both = await goodgrounds(["verify", one, at("out/GG-2026-0417-issue-2.json"), "--json"]);
    expect(both.code).toBe(4);
    const [old, newer] = JSON.parse(both.out).documents;
    expect(old.answers[3]).toMatchObject({ question: "latest", standing: "against" });
    expect(newer.statement).toMatchObject({ number: 2, replaces: old.hash, previous: old.hash });

    const bytes = readFileSync(one);
    bytes[5000] = (bytes[5000] ?? 0) ^ 1;
    writeFileSync(at("changed.pdf"), bytes);
    expect(await goodgrounds(["verify", at("changed.pdf")])).toMatchObject({
      code: 4,
      out: expect.stringContaining("The pages were changed"),
    });
    writeFileSync(at("photograph.jpg"), "another");
    expect(await goodgrounds(["verify", one, at("photograph.jpg")])).toMatchObject({
      code: 4,
      out: expect.stringContaining("photograph.jpg: not one of the photographs"),
    });
  });

  test("nothing is issued over a signature that was given for something else", async () => {
    const file = JSON.parse(readFileSync(EXAMPLE, "utf8"));
    for (const signature of file.signatures) signature.content = "0".repeat(64);
    writeFileSync(at("zeros.json"), JSON.stringify(file));
    const args = ["issue", at("zeros.json"), "--out", at("out"), "--key", at("key.json"), "--reason", REASON];
    expect(await goodgrounds(args)).toMatchObject({ code: 5, out: "", err: expect.stringContaining("do not stand") });
  });

  test("another passphrase and a key that has ended sign nothing", async () => {
    const args = ["issue", at("house.json"), "--out", at("out"), "--key", at("key.json"), "--reason", REASON];
    expect(await goodgrounds(args, "four words that do not\n")).toMatchObject({
      code: 2,
      err: expect.stringContaining("does not open"),
    });
    const digits = JSON.parse(readFileSync(at("key.json"), "utf8")).key;
    const end = [
      "keys",
      "end",
      digits.slice(0, 12),
      "--as",
      "lost",
      "--since",
      "2026-05-01T00:00:00Z",
      "--register",
      at("register.json"),
    ];
    expect(await goodgrounds(end, "0000\n")).toMatchObject({ code: 2, err: expect.stringContaining("paper root") });
    expect(await goodgrounds(end, `${PAPER}\n`)).toMatchObject({ code: 0 });
    expect(await goodgrounds([...args, "--register", at("register.json")])).toMatchObject({
      code: 2,
      err: expect.stringContaining("has ended"),
    });
  });

  test("a document without a statement is told, and what is none is refused", async () => {
    writeFileSync(at("plain.pdf"), "%PDF-1.7\nnothing");
    expect(await goodgrounds(["verify", at("plain.pdf")])).toMatchObject({ code: 4 });
    expect(await goodgrounds(["verify", at("house.json")])).toMatchObject({ code: 2 });
  });
});
