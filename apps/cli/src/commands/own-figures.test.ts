import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PassThrough, Readable } from "node:stream";
import { fileURLToPath } from "node:url";
import { OWN_FIGURES_LOOKS } from "@good-grounds/readings";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { run } from "../run.ts";

const EXAMPLE = fileURLToPath(new URL("../../../../examples/terraced-house.json", import.meta.url));

async function ownFigures(...args: readonly string[]) {
  const collect = (stream: PassThrough) => {
    const chunks: Buffer[] = [];
    stream.on("data", (chunk: Buffer) => chunks.push(chunk));
    return () => Buffer.concat(chunks).toString("utf8");
  };
  const [stdout, stderr] = [new PassThrough(), new PassThrough()];
  const [out, err] = [collect(stdout), collect(stderr)];
  const code = await run(["own-figures", ...args], {
    stdin: Readable.from([]),
    stdout,
    stderr,
    columns: 80,
    interactive: false,
  });
  await new Promise((done) => setImmediate(done));
  return { code, out: out(), err: err() };
}

interface Editable {
  id: string;
  ownFigures?: { check: string; note: string }[];
  instruments: { checked?: string }[];
  boards: { circuits: { readings: unknown }[] }[];
  observations: { what: string; place: string }[];
  visits: { left: string }[];
}

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "good-grounds-own-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The example with something changed, as a file. */
function changed(name: string, edit: (file: Editable) => void): string {
  const file = JSON.parse(readFileSync(EXAMPLE, "utf8")) as Editable;
  file.id = name;
  edit(file);
  const path = join(folder, `${name}.json`);
  writeFileSync(path, JSON.stringify(file));
  return path;
}

/** Rows changed over, an old instrument, a visit that ended early, two observations in one wording. */
function withFour(file: Editable): void {
  const [circuits] = file.boards.map((board) => board.circuits);
  const [a, b] = [circuits?.[2], circuits?.[8]];
  if (a !== undefined && b !== undefined) [a.readings, b.readings] = [b.readings, a.readings];
  for (const instrument of file.instruments) instrument.checked = "2024-01-01";
  for (const visit of file.visits) visit.left = "2026-10-06T11:00:00+01:00";
  const [first, second] = file.observations;
  if (first !== undefined && second !== undefined) second.what = first.what;
  file.ownFigures = [{ check: "swapped-rows", note: "Renumbered by the owner." }];
}

describe("goodgrounds own-figures", () => {
  test("a sound file has nothing to confirm, and says how many checks had something to look at", async () => {
    const { code, out } = await ownFigures(EXAMPLE);
    expect(code).toBe(0);
    expect(out).toContain("Nothing stands out.");
    expect(out).toMatch(/\d+ of \d+ checks had something to look at/);
  });

  test("shows the three heaviest within 80 columns, each with test, numbers, causes and note, and exits 0", async () => {
    const path = changed("four", withFour);
    const { code, out } = await ownFigures(path);
    expect(code).toBe(0);
    expect(out).toContain("The 3 heaviest of 4 to confirm");
    expect(out).toContain("Renumbered by the owner.");
    for (const heading of ["Test:", "Numbers:", "Innocent causes:", "Your note:"])
      expect(out.split(heading).length - 1, heading).toBe(3);
    for (const line of out.split("\n")) expect([...line].length).toBeLessThanOrEqual(80);
    const all = await ownFigures(path, "--all");
    expect(all.out).toContain("4 to confirm, heaviest first");
    expect(all.out).toContain("Not looked at:");
  });

  test("names what it looks at in words; the id stands only where it is to be typed", async () => {
    const path = changed("words", (file) => {
      withFour(file);
      file.ownFigures = [{ check: "even-steps", note: "Lamps in a row." }];
    });
    const { out } = await ownFigures(path, "--all");
    const printed = out.replaceAll(/\{"check":\s*"[^"]*"/g, "");
    for (const { id } of OWN_FIGURES_LOOKS.filter((look) => look.id.includes("-")))
      expect(printed, id).not.toContain(id);
    expect(out).toContain("Readings go by even steps: Lamps in a row.");
  });

  test("gives JSON, heaviest first, with the place of every reading", async () => {
    const { code, out } = await ownFigures(changed("json", withFour), "--json");
    expect(code).toBe(0);
    const found = JSON.parse(out);
    expect(found).toMatchObject({ format: "good-grounds-own-figures", version: 1, file: "json", earlier: null });
    expect(found.toConfirm.map(({ check }: { check: string }) => check).sort()).toEqual([
      "instruments",
      "outside-visit",
      "same-words",
      "swapped-rows",
    ]);
    const swapped = found.toConfirm.find(({ check }: { check: string }) => check === "swapped-rows");
    expect(swapped.readings).toContainEqual({ place: "/boards/0/circuits/2/readings/r1r2", text: expect.any(String) });
    expect(swapped.notes).toEqual(["Renumbered by the owner."]);
  });

  test("holds against an earlier file, and refuses the same inspection as one", async () => {
    const later = changed("later", () => undefined);
    const { code, out } = await ownFigures(later, "--earlier", EXAMPLE);
    expect(code).toBe(0);
    expect(out).toContain("Held against the earlier file GG-2026-0417.");
    expect(out).toContain("The readings are those of an earlier file\n");
    const same = await ownFigures(EXAMPLE, "--earlier", EXAMPLE);
    expect(same.code).toBe(2);
    expect(same.err).toContain("same inspection");
  });

  test.each([
    [[], 2, "name one inspection file"],
    [[EXAMPLE, EXAMPLE], 2, "name one inspection file"],
    [[EXAMPLE, "--earlier", EXAMPLE, "--earlier", EXAMPLE], 2, "one earlier file"],
    [[EXAMPLE, "--out", "x.pdf"], 2, "has no option --out"],
    [["not-there.json"], 3, "cannot be read"],
  ] as const)("%j exits %i", async (args, code, words) => {
    const ran = await ownFigures(...args);
    expect(ran.code).toBe(code);
    expect(ran.err).toContain(words);
  });

  test("a wrong file is told with its place, as JSON too", async () => {
    const path = join(folder, "wrong.json");
    writeFileSync(path, JSON.stringify({ format: "good-grounds-inspection", version: 2 }));
    const { code, out, err } = await ownFigures(EXAMPLE, "--earlier", path, "--json");
    expect(code).toBe(2);
    expect(err).toContain("problems");
    expect(JSON.parse(out)).toMatchObject({ format: "good-grounds-problems" });
  });

  test("signs that would steer the terminal are not printed with a note", async () => {
    const path = changed("signs", (file) => {
      file.ownFigures = [{ check: "zs-sum", note: "turned \u202e round" }];
    });
    const { out } = await ownFigures(path);
    expect(out).toContain("turned");
    expect(out).not.toContain("\u202e");
  });
});
