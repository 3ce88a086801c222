import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PassThrough, Readable } from "node:stream";
import { fileURLToPath } from "node:url";
import { hashOf } from "@good-grounds/topics/texts";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { run } from "./run.ts";
import { textsIn } from "./topics-in.ts";

const FIRM = fileURLToPath(new URL("../../../outside/topics/a-firm", import.meta.url));
const HOUSE = fileURLToPath(new URL("../../../examples/terraced-house.json", import.meta.url));
const NAME = { name: "A firm of the file", answersFor: "A. Example" };
const HERE = hashOf(textsIn(FIRM));
const OTHER = "0".repeat(63).concat("a");

let work = "";
beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), "judged-"));
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

async function goodgrounds(...args: readonly string[]) {
  const text = { out: "", err: "" };
  const [stdout, stderr] = [new PassThrough(), new PassThrough()];
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

/** The terraced house, as judged with a folder of this hash; with none where it is left out. */
function house(name: string, hash?: string): string {
  const path = join(work, `${name}.json`);
  if (hash === undefined) cpSync(HOUSE, path);
  else writeFileSync(path, JSON.stringify({ ...JSON.parse(readFileSync(HOUSE, "utf8")), topics: { ...NAME, hash } }));
  return path;
}

describe("the folder with which a file was judged", () => {
  test.each([
    ["none given here", []],
    ["another given here", ["--topics", FIRM]],
  ] as const)("%s: a note, and a member in JSON", async (_, more) => {
    const path = house("other", OTHER);
    const { code, out, err } = await goodgrounds("weigh", path, "--json", ...more);
    expect(code).toBe(0);
    expect(err).toMatch(/other\.json: judged with the topics of A firm of the file \(00000000000.\)/);
    expect(err).toMatch(more.length === 0 ? /Here .* own topics.*--topics/ : /Here .*Example Electrical/);
    const said = JSON.parse(out).judgedWith;
    expect(said.file).toEqual({ ...NAME, hash: OTHER });
    expect(said.here?.hash ?? null).toBe(more.length === 0 ? null : HERE);
  });

  test("the same: nothing is said", async () => {
    const { code, out, err } = await goodgrounds("weigh", house("same", HERE), "--json", "--topics", FIRM);
    expect([code, err]).toEqual([0, ""]);
    expect(JSON.parse(out)).not.toHaveProperty("judgedWith");
  });

  test("a file that names none says nothing", async () => {
    for (const more of [[], ["--topics", FIRM]]) {
      const { out, err } = await goodgrounds("weigh", house("none"), "--json", ...more);
      expect(err).toBe("");
      expect(JSON.parse(out)).not.toHaveProperty("judgedWith");
    }
  });

  test("of many files, each is told by its name; none of them is wrong for it", async () => {
    const { code, err, out } = await goodgrounds("weigh", house("one", OTHER), house("two"), house("three", OTHER));
    expect(code).toBe(0);
    expect(err.split("\n").filter((line) => line.includes("judged with"))).toHaveLength(2);
    expect(out.trim().split("\n")).toHaveLength(3);
    const json = await goodgrounds("weigh", house("one", OTHER), house("two"), "--json");
    const lines = json.out.trim().split("\n");
    expect(lines.map((line) => "judgedWith" in JSON.parse(line))).toEqual([true, false]);
  });

  test("a report tells it, and so does a comparison of choices", async () => {
    const path = house("other", OTHER);
    const report = await goodgrounds("report", path, "--out", join(work, "r.pdf"));
    expect(report.code).toBe(0);
    expect(report.err).toMatch(/judged with the topics of A firm/);
    const compared = await goodgrounds("compare-choices", path);
    expect(compared.code).toBe(0);
    expect(compared.err).toMatch(/judged with the topics of A firm/);
  });

  test("signs that move the cursor are shown as such", async () => {
    const path = join(work, "signs.json");
    const file = JSON.parse(readFileSync(HOUSE, "utf8"));
    writeFileSync(path, JSON.stringify({ ...file, topics: { ...NAME, name: "A\u202Efirm", hash: OTHER } }));
    const { err } = await goodgrounds("weigh", path);
    expect(err).toContain("judged with");
    expect(err).not.toContain("\u202E");
  });
});
