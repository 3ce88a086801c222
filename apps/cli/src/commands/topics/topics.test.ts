import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PassThrough, Readable } from "node:stream";
import { fileURLToPath } from "node:url";
import { hashOf, ownTexts } from "@good-grounds/topics/texts";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { run } from "../../run.ts";

const FIRM = fileURLToPath(new URL("../../../../../outside/topics/a-firm", import.meta.url));
const HOUSE = fileURLToPath(new URL("../../../../../examples/terraced-house.json", import.meta.url));
const STOVE = "topics/socket-behind-stove.topic";
const HASH = /"hash": "[0-9a-f]{64}"/;

const HERE = hashOf(ownTexts()).slice(0, 12);

let work = "";
/** The firm's folder as it is written against the topics of today. */
let current = "";
beforeAll(() => {
  work = mkdtempSync(join(tmpdir(), "topics-"));
  current = join(work, "current");
  cpSync(FIRM, current, { recursive: true });
  const head = join(current, "folder.topics");
  writeFileSync(head, readFileSync(head, "utf8").replace("000000000000", HERE));
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

/** A copy of the firm's folder with one text changed. */
function folder(name: string, file: string, change: (text: string) => string): string {
  const path = join(work, name);
  cpSync(current, path, { recursive: true });
  writeFileSync(join(path, file), change(readFileSync(join(path, file), "utf8")));
  return path;
}

describe("topics check", () => {
  test("says one line where all is well", async () => {
    const { code, out, err } = await goodgrounds("topics", "check", current);
    expect([code, err]).toEqual([0, ""]);
    expect(out).toMatch(
      /^Example Electrical \(an invented firm\) [0-9a-f]{12}: well \(1 topic, 1 changed, 2 views, 9 laws\)\n$/,
    );
  });

  test("written against another release is no fault: a second line says so and what to do; exit code 0", async () => {
    const { code, out, err } = await goodgrounds("topics", "check", FIRM);
    expect([code, err]).toEqual([0, ""]);
    const [well = "", release = "", ...more] = out.trimEnd().split("\n");
    expect(more).toEqual([]);
    expect(well).toMatch(/: well \(1 topic, 1 changed, 2 views, 9 laws\)$/);
    expect(release).toContain("000000000000");
    expect(release).toContain(`topics changed`);
    expect(release).toContain(`write "release ${HERE}" in folder.topics`);
    const json = JSON.parse((await goodgrounds("topics", "check", FIRM, "--json")).out);
    expect(json).toMatchObject({ well: true, faults: [], release: { written: "000000000000", here: HERE } });
  });

  test.each([
    [
      "a topic in a file of another name",
      STOVE,
      (text: string) => text.replace("topic socket-behind-stove:", "topic socket-behind-hob:"),
      ':1:7  "socket-behind-hob" in a file called "socket-behind-stove.topic"',
      'call the file "socket-behind-hob.topic"',
    ],
    [
      "a class that can follow and has no sentence",
      STOVE,
      (text: string) => text.replace(/ {2}said C3: .*\n/, ""),
      ":1:1  nothing is said under C3, which can follow",
      'a line "said C3:"',
    ],
    [
      "a number that is none of a regulation",
      STOVE,
      (text: string) => text.replace("[421.1.1]", "[42.1]"),
      ':5  "42.1" in brackets',
      "the number of a regulation",
    ],
    [
      "two values that nothing tells apart",
      STOVE,
      (text: string) => text.replace("    harmed: ", "    hotter: it gets hotter than that\n    harmed: "),
      '  nothing tells hotter and warm of "reached" apart',
      'a line "alike hotter and warm: why both are offered"',
    ],
  ])("%s is told at its line and column, with what to do; exit code 2", async (name, file, change, place, advice) => {
    const path = folder(name.replaceAll(" ", "-"), file, change);
    const { code, err } = await goodgrounds("topics", "check", path);
    expect(code).toBe(2);
    expect(err).toContain(`${join(path, file)}:`);
    expect(err).toContain(place);
    expect(err).toContain(advice);
  });

  test("tells a misspelt name at its line, and a law with an example and what decided; exit code 2", async () => {
    const misspelt = await goodgrounds(
      "topics",
      "check",
      folder("a", STOVE, (text) => text.replace("when not pulled", "when not puled")),
    );
    expect(misspelt.code).toBe(2);
    expect(misspelt.err).toContain(`${join("a", STOVE)}:26:14  nothing here is called "puled"`);
    expect(misspelt.err).toContain('is it "pulled"?');
    const falls = await goodgrounds(
      "topics",
      "check",
      folder("b", STOVE, (text) => text.replaceAll("gone when reached is harmed", "gone when reached is warm")),
    );
    expect(falls.code).toBe(2);
    expect(falls.err).toContain("law monotone: no worsening of a fact lowers the class");
    expect(falls.err).toContain("an example that shows it, to be pasted:\n    example reached is harmed\n");
    expect(falls.err).toContain(`what decided:\n    ${STOVE}:17  route burns: `);
  });

  test("--json says the same", async () => {
    const well = JSON.parse((await goodgrounds("topics", "check", current, "--json")).out);
    expect(well).toMatchObject({ format: "good-grounds-topics-check", version: 1, well: true, faults: [], broken: [] });
    const bad = await goodgrounds(
      "topics",
      "check",
      folder("c", STOVE, (text) => text.replace("-> C1 (", "-> C2 (")),
      "--json",
    );
    expect(bad.code).toBe(2);
    expect(JSON.parse(bad.out)).toMatchObject({
      well: false,
      broken: [{ law: "examples", topic: "socket-behind-stove" }],
    });
  });

  test("a check that is not there is told", async () => {
    const path = folder("d", STOVE, (text) =>
      text.replace(
        "found by glance\n    plain if the plug",
        "found by glance\n    answered by plug-pulls: yes when met\n    plain if the plug",
      ),
    );
    const { code, err } = await goodgrounds("topics", "check", path);
    expect(code).toBe(2);
    expect(err).toContain('no check is called "plug-pulls"');
  });

  test("a folder that is not there, or is a file: exit code 3", async () => {
    expect((await goodgrounds("topics", "check", join(work, "nowhere"))).code).toBe(3);
    expect((await goodgrounds("topics", "check", HOUSE)).code).toBe(3);
  });
});

test("topics format writes the one spelling, --check only says so", async () => {
  const path = folder("e", STOVE, (text) => text.replace("when not pulled", "when all of\n      not pulled\n\n"));
  const told = await goodgrounds("topics", "format", path, "--check");
  expect([told.code, told.out]).toEqual([2, ""]);
  expect(told.err).toContain("not in its one spelling");
  expect((await goodgrounds("topics", "format", path)).code).toBe(0);
  expect(readFileSync(join(path, STOVE), "utf8")).toContain("    when all of\n      not pulled\n  departure");
  expect((await goodgrounds("topics", "format", path, "--check")).code).toBe(0);
});

test("topics show prints the text of a topic, and what the folder adds to it", async () => {
  const { code, out } = await goodgrounds("topics", "show", "board-blank-missing", "--topics", FIRM);
  expect(code).toBe(0);
  expect(out).toMatch(/topic board-blank-missing: [\s\S]*\nmore board-blank-missing\n/);
  const none = await goodgrounds("topics", "show", "board-blank");
  expect(none.code).toBe(2);
  expect(none.err).toContain("Did you mean board-blank-missing");
});

test("topics changed lists what a folder changes", async () => {
  const { out } = await goodgrounds("topics", "changed", FIRM);
  expect(out).toContain("socket-behind-stove  Socket-outlet behind a stove (new)");
  expect(out).toContain("C2 becomes C1:");
});

describe("--topics", () => {
  test("reason asks a topic of the folder and takes its views; terminal and JSON name it", async () => {
    const stove = await goodgrounds("reason", "socket-behind-stove", "reached=harmed", "pulled=no", "--topics", FIRM);
    expect(stove.out).toContain("Follows from the facts: C1");
    expect(stove.out.replaceAll(/\s+/g, " ")).toContain("Topics and standing views of Example Electrical");
    const blank = [
      "reason",
      "board-blank-missing",
      "gets-in=finger",
      "cover-fixing=hole",
      "who-comes=skilled-only",
      "--json",
    ];
    expect(JSON.parse((await goodgrounds(...blank)).out).classification).toBe("C2");
    const held = await goodgrounds(...blank, "--topics", FIRM);
    expect(JSON.parse(held.out).classification).toBe("C1");
    expect(held.out).toMatch(HASH);
    const stated = await goodgrounds(...blank, "locked-board=counts", "--topics", FIRM);
    expect(JSON.parse(stated.out).classification).toBe("C2");
  });

  test("weigh and compare-choices read files that name topics of the folder, and name it", async () => {
    const house = JSON.parse(readFileSync(HOUSE, "utf8"));
    Object.assign(house.observations[0], { topic: "socket-behind-stove", facts: { reached: "harmed" }, positions: {} });
    const file = join(work, "house.json");
    writeFileSync(file, JSON.stringify(house));
    expect((await goodgrounds("weigh", file)).code).toBe(2);
    const one = await goodgrounds("weigh", file, "--topics", FIRM);
    expect(one.code).toBe(0);
    expect(one.out.replaceAll(/\s+/g, " ")).toContain("Topics and standing views of Example Electrical");
    expect((await goodgrounds("weigh", file, "--topics", FIRM, "--json")).out).toMatch(HASH);
    const compared = await goodgrounds("compare-choices", file, "--topics", FIRM, "--json");
    expect(compared.code).toBe(0);
    expect(compared.out).toMatch(HASH);
    const many = await goodgrounds("weigh", file, file, "--topics", FIRM);
    expect([many.code, many.err]).toEqual([0, ""]);
  });

  test("a folder with a fault is not used at all", async () => {
    const path = folder("f", "views.topics", (text) => text.replace("many-keys", "many-kyes"));
    const { code, out, err } = await goodgrounds(
      "reason",
      "board-blank-missing",
      "cover-fixing=whole",
      "--topics",
      path,
    );
    expect([code, out]).toEqual([2, ""]);
    expect(err).toContain('is it "many-keys"?');
    expect(err).toContain("nothing of it was used");
  });
});
