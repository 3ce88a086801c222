import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PassThrough, Readable } from "node:stream";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { run } from "./run.ts";

const house = readFileSync(new URL("../../../examples/terraced-house.json", import.meta.url), "utf8");
let folder = "";
const at = (name: string) => join(folder, name);

async function goodgrounds(...args: readonly string[]) {
  const [stdout, stderr] = [new PassThrough(), new PassThrough()];
  const text = { out: "", err: "" };
  stdout.on("data", (chunk: Buffer) => {
    text.out += chunk.toString("utf8");
  });
  stderr.on("data", (chunk: Buffer) => {
    text.err += chunk.toString("utf8");
  });
  const code = await run(args, { stdin: Readable.from([]), stdout, stderr, columns: 80, interactive: false });
  await new Promise((done) => setImmediate(done));
  return { code, ...text };
}

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "good-grounds-earlier-"));
  writeFileSync(at("now.json"), house);
  const old = JSON.parse(house.replaceAll("2026-10-06", "2021-09-30"));
  writeFileSync(at("old.json"), JSON.stringify({ ...old, id: "old", signatures: [] }));
  writeFileSync(at("wrong.json"), JSON.stringify({ ...old, boards: "none" }));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("--earlier", () => {
  test("adds then and now to text, JSON and report, and nothing without it", async () => {
    const { code, out } = await goodgrounds("weigh", at("now.json"), "--earlier", at("old.json"));
    expect(code).toBe(0);
    expect(out).toContain("Then and now");
    expect((await goodgrounds("weigh", at("now.json"))).out).not.toContain("Then and now");
    expect(JSON.parse((await goodgrounds("weigh", at("now.json"), "--json")).out).thenAndNow).toBeUndefined();
    const written = await goodgrounds("report", at("now.json"), "--earlier", at("old.json"), "--out", at("r.pdf"));
    expect(written.code).toBe(0);
  });

  test("gives JSON without numbers it cannot hold, with grounds where they are asked for", async () => {
    const { out } = await goodgrounds("weigh", at("now.json"), "--earlier", at("old.json"), "--json", "--grounds");
    const { thenAndNow } = JSON.parse(out);
    expect(thenAndNow.earlier[0]).toMatchObject({ file: "old", inspectedOn: "2021-09-30" });
    expect(thenAndNow.earlier[0].circuits).toHaveLength(9);
    for (const { readings } of thenAndNow.earlier[0].circuits) {
      for (const { grounds, past, why } of readings) {
        expect(grounds.length).toBeGreaterThan(1);
        if (why === null) expect(past.value).toBeGreaterThanOrEqual(0);
      }
    }
    const short = JSON.parse((await goodgrounds("weigh", at("now.json"), "--earlier", at("old.json"), "--json")).out);
    expect(short.thenAndNow.earlier[0].circuits[0].readings[0].grounds).toBeUndefined();
  });

  test.each([
    [
      "a file of the same day",
      ["weigh", "now.json", "--earlier", "now.json"],
      2,
      "a day before 2026-10-06 was expected",
    ],
    ["one given twice", ["weigh", "now.json", "--earlier", "old.json", "--earlier", "old.json"], 2, "given twice"],
    ["a wrong one", ["weigh", "now.json", "--earlier", "wrong.json"], 2, "/boards"],
    ["one that is not there", ["weigh", "now.json", "--earlier", "none.json"], 3, "cannot be read"],
    ["several inspections", ["weigh", "now.json", "old.json", "--earlier", "old.json"], 2, "one inspection"],
  ] as const)("refuses %s", async (_, args, expected, message) => {
    const named = args.map((arg) => (arg.endsWith(".json") ? at(arg) : arg));
    const { code, out, err } = await goodgrounds(...named);
    expect([code, out]).toEqual([expected, ""]);
    expect(err).toContain(message);
  });
});
