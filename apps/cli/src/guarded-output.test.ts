import { linkSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import { PassThrough, Readable } from "node:stream";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { run } from "./run.ts";

const HOUSE = readFileSync(new URL("../../../examples/terraced-house.json", import.meta.url), "utf8");
const OLDER = JSON.stringify({ ...JSON.parse(HOUSE), id: "older", inspectedOn: "2020-01-15" });

let folder = "";
const at = (name: string) => join(folder, name);
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "good-grounds-output-"));
  writeFileSync(at("house.json"), HOUSE);
  writeFileSync(at("older.json"), OLDER);
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** Exit code and messages of a report written to `out`, held against the earlier file `earlier`. */
async function report(out: string, earlier = "older.json") {
  const stderr = new PassThrough();
  const host = { stdin: Readable.from([]), stdout: new PassThrough(), stderr, columns: 80, interactive: false };
  const code = await run(["report", at("house.json"), "--earlier", at(earlier), "--out", out], host);
  return { code, err: String(stderr.read() ?? "") };
}

/** All that stood there before stands there still. */
function expectNothingLost() {
  expect(readFileSync(at("house.json"), "utf8")).toBe(HOUSE);
  expect(readFileSync(at("older.json"), "utf8")).toBe(OLDER);
}

describe("a report never takes the place of what the command reads", () => {
  test.each(["house.json", "older.json"])("%s by its own name", async (name) => {
    const { code, err } = await report(at(name));
    expect(code).toBe(2);
    expect(err).toContain(at(name));
    expect(err).toContain("Name another file for the report.");
    expectNothingLost();
  });

  test.each(["house.json", "older.json"])("%s by a relative spelling", async (name) => {
    const { code, err } = await report(relative(process.cwd(), join(folder, "no-such", "..", name)));
    expect(code).toBe(2);
    expect(err).toContain("Name another file for the report.");
    expectNothingLost();
  });

  test.each(["house.json", "older.json"])("%s by a link", async (name) => {
    symlinkSync(at(name), at("link.pdf"));
    const { code, err } = await report(at("link.pdf"));
    expect(code).toBe(2);
    expect(err).toContain("Name another file for the report.");
    expectNothingLost();
  });

  test.each(["house.json", "older.json"])("%s by a link to its folder", async (name) => {
    symlinkSync(folder, at("here"));
    const { code, err } = await report(join(folder, "here", name));
    expect(code).toBe(2);
    expect(err).toContain("Name another file for the report.");
    expectNothingLost();
  });

  test.each(["house.json", "older.json"])("%s by another name of the same file", async (name) => {
    linkSync(at(name), at("second-name.pdf"));
    const { code, err } = await report(at("second-name.pdf"));
    expect(code).toBe(2);
    expect(err).toContain(`this command reads that file as ${at(name)}`);
    expect(readFileSync(at("second-name.pdf"), "utf8")).toBe(name === "house.json" ? HOUSE : OLDER);
    expectNothingLost();
  });

  test("an earlier file that is given by a link", async () => {
    symlinkSync(at("older.json"), at("last-time.json"));
    const { code } = await report(at("older.json"), "last-time.json");
    expect(code).toBe(2);
    expectNothingLost();
  });
});

describe("a report takes the place of nothing but a report", () => {
  test.each([
    ["an inspection file that is not named", HOUSE],
    ["a text", "Notes of the visit.\n"],
    ["a file that only speaks of PDF", "see %PDF-1.7\n"],
    ["an empty file", ""],
    ["the beginning of the beginning of a PDF", "%PD"],
  ])("not of %s", async (_, text) => {
    writeFileSync(at("other"), text);
    const { code, err } = await report(at("other"));
    expect(code).toBe(2);
    expect(err).toContain(`${at("other")}: a file that is no PDF stands there`);
    expect(readFileSync(at("other"), "utf8")).toBe(text);
  });

  test("not of a folder, a device, or what a broken link leads to", async () => {
    mkdirSync(at("folder"));
    symlinkSync(at("nowhere.pdf"), at("broken.pdf"));
    expect(await report(at("folder"))).toMatchObject({ code: 2, err: expect.stringContaining("is a folder") });
    expect(await report("/dev/null")).toMatchObject({ code: 2, err: expect.stringContaining("is a device") });
    expect(await report(at("broken.pdf"))).toMatchObject({ code: 2, err: expect.stringContaining("leads to no file") });
  });

  test("but of an earlier report", async () => {
    writeFileSync(at("report.pdf"), "%PDF-1.7\nold\n");
    expect((await report(at("report.pdf"))).code).toBe(0);
    expect(readFileSync(at("report.pdf"), "latin1")).not.toContain("\nold\n");
    expectNothingLost();
  });
});
