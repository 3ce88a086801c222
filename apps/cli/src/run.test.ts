import { once } from "node:events";
import {
  existsSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PassThrough, Readable } from "node:stream";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Host } from "./host.ts";
import { run } from "./run.ts";

const EXAMPLES = new URL("../../../examples/", import.meta.url);
const house = readFileSync(new URL("terraced-house.json", EXAMPLES), "utf8");
const line = JSON.stringify(JSON.parse(house));

interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

async function goodgrounds(args: readonly string[], stdin = ""): Promise<Ran> {
  const collect = (stream: PassThrough) => {
    const chunks: Buffer[] = [];
    stream.on("data", (chunk: Buffer) => chunks.push(chunk));
    return () => Buffer.concat(chunks).toString("utf8");
  };
  const stdout = new PassThrough();
  const stderr = new PassThrough();
  const out = collect(stdout);
  const err = collect(stderr);
  const host: Host = { stdin: Readable.from([Buffer.from(stdin)]), stdout, stderr, columns: 80, interactive: false };
  const code = await run(args, host);
  await new Promise((done) => setImmediate(done));
  return { code, out: out(), err: err() };
}

let folder = "";
const at = (name: string) => join(folder, name);
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "good-grounds-cli-"));
  writeFileSync(at("house.json"), house);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("weigh", () => {
  test("shows a file within 80 columns, worst first, and exits 0", async () => {
    const { code, out, err } = await goodgrounds(["weigh", at("house.json")]);
    expect(code).toBe(0);
    expect(err).toBe("");
    for (const text of out.split("\n")) expect([...text].length).toBeLessThanOrEqual(80);
    expect(out).toContain("Invented example");
    expect(out.indexOf("NOT MET")).toBeLessThan(out.indexOf("  too near   "));
    expect(out.indexOf("Circuit 6")).toBeLessThan(out.indexOf("Circuit 3 cooker"));
  });

  test("shows the argument of one check with tagged leaves", async () => {
    const { out } = await goodgrounds(["weigh", at("house.json"), "--grounds-of", "maximum-zs"]);
    for (const tag of ["[seen]", "[measured]", "[published]", "[computed]"]) expect(out).toContain(tag);
    for (const text of out.split("\n")) expect([...text].length).toBeLessThanOrEqual(80);
  });

  test("gives JSON in which every open finding names what is missing", async () => {
    const { code, out } = await goodgrounds(["weigh", at("house.json"), "--json", "--grounds"]);
    expect(code).toBe(0);
    const weighing = JSON.parse(out);
    expect(weighing).toMatchObject({
      format: "good-grounds-weighing",
      version: 2,
      file: "GG-2026-0417",
      outcome: { outcome: "unsatisfactory" },
    });
    const findings = [
      ...weighing.supply,
      ...weighing.circuits.flatMap((circuit: { findings: object[] }) => circuit.findings),
    ];
    const open = findings.filter(({ verdict }) => verdict === "not-known");
    expect(open.length).toBeGreaterThan(0);
    for (const finding of open) expect(finding.missing.length).toBeGreaterThan(0);
    for (const { grounds } of findings) {
      expect(grounds[0].verdict).toBeDefined();
      for (const node of grounds) for (const part of node.from ?? []) expect(grounds[part]).toBeDefined();
    }
  });

  test("reports every problem of a wrong file with its place and exits 2", async () => {
    const wrong = JSON.parse(house);
    wrong.supply.nominalVoltage = "230 A";
    wrong.boards[0].circuits[0].device.rated = "thirty-two";
    wrong.colour = "red";
    writeFileSync(at("wrong.json"), JSON.stringify(wrong));
    const { code, out, err } = await goodgrounds(["weigh", at("wrong.json")]);
    expect(code).toBe(2);
    expect(out).toBe("");
    for (const words of [
      "3 problems",
      "/supply/nominalVoltage",
      "/boards/0/circuits/0/device/rated",
      "/colour",
      'found "230 A"',
    ]) {
      expect(err).toContain(words);
    }
  });

  test("a file that is not there exits 3, one that is not text exits 2", async () => {
    expect(await goodgrounds(["weigh", at("nothing.json")])).toMatchObject({
      code: 3,
      err: expect.stringContaining("cannot be read"),
    });
    writeFileSync(at("binary.json"), Buffer.from([0xff, 0xfe, 0x00, 0x80]));
    expect(await goodgrounds(["weigh", at("binary.json")])).toMatchObject({
      code: 2,
      err: expect.stringContaining("UTF-8"),
    });
  });

  test("reads one document from standard input", async () => {
    const { code, out } = await goodgrounds(["weigh", "-"], house);
    expect(code).toBe(0);
    expect(out).toContain("12 Example Terrace");
  });

  test("weighs a stream in order, keeps going past wrong lines, and exits 2 for them", async () => {
    const many = Array.from({ length: 150 }, (_, i) =>
      i === 70 ? '{"format":"x"}' : line.replace("GG-2026-0417", `N${i}`),
    );
    writeFileSync(at("many.jsonl"), `${many.join("\n")}\n`);
    const { code, out, err } = await goodgrounds(["weigh", at("many.jsonl")]);
    expect(code).toBe(2);
    const ids = out
      .trim()
      .split("\n")
      .map((text) => text.split("\t")[0]);
    expect(ids).toEqual(many.flatMap((_, i) => (i === 70 ? [] : [`N${i}`])));
    expect(err).toContain("many.jsonl:71: 1 problem");
  });

  test("weighs a stream from standard input and a folder, a JSON line each", async () => {
    const stream = await goodgrounds(["weigh", "-", "--json"], `${line}\n${line}\n`);
    expect(stream.code).toBe(0);
    expect(
      stream.out
        .trim()
        .split("\n")
        .map((text) => JSON.parse(text).file),
    ).toEqual(["GG-2026-0417", "GG-2026-0417"]);
    const folderRun = await goodgrounds(["weigh", new URL(".", EXAMPLES).pathname]);
    expect(folderRun.code).toBe(0);
    expect(folderRun.out.trim().split("\n")).toHaveLength(3);
  });

  test("the verdicts of a stream are those of the single file", async () => {
    const single = await goodgrounds(["weigh", at("house.json")]);
    const counts = /Checks: (\d+) not met, (\d+) too near to call, (\d+) not known, (\d+) met/.exec(single.out);
    const { out } = await goodgrounds(["weigh", "-"], `${line}\n${line}\n`);
    expect(out.split("\n")[0]).toContain(
      `${counts?.[1]} not met\t${counts?.[2]} too near to call\t${counts?.[3]} not known\t${counts?.[4]} met`,
    );
  });
});

describe("weigh, with what cannot be read among what can", () => {
  test("a name that is not there does not stop the files beside it, and is named once", async () => {
    writeFileSync(at("other.json"), house);
    const { code, out, err } = await goodgrounds(["weigh", at("house.json"), at("gone.json"), at("other.json")]);
    expect(code).toBe(3);
    expect(out.trim().split("\n")).toHaveLength(2);
    expect(err.split(at("gone.json"))).toHaveLength(2);
  });

  test("wrong input decides the exit code before what cannot be read", async () => {
    writeFileSync(at("bad.json"), "{");
    expect((await goodgrounds(["weigh", at("gone.json"), at("bad.json")])).code).toBe(2);
  });

  test("a line that unfolds to more than a worker can hold stops nothing", async () => {
    const members = Array.from({ length: 230_000 }, (_, i) => `"k${i}":1`).join(",");
    const wide = `{"format":"good-grounds-inspection","version":2,${members}}`;
    const { code, out, err } = await goodgrounds(["weigh", "-"], `${line}\n${wide}\n${line}\n`);
    expect(code).toBe(2);
    expect(out.trim().split("\n")).toHaveLength(2);
    expect(err).toContain("standard input:2: 501 problems");
  });

  test("one document of very many short lines is refused by its size", async () => {
    const { code, err } = await goodgrounds(["weigh", "-"], "[\n".repeat(20_000_000));
    expect(code).toBe(2);
    expect(err).toContain("40000000 characters");
  });

  test("a stream or a folder that holds nothing is no success", async () => {
    writeFileSync(at("nothing.jsonl"), "\n\n");
    mkdirSync(at("empty"), { recursive: true });
    for (const name of ["nothing.jsonl", "empty"]) {
      const { code, err } = await goodgrounds(["weigh", at(name)]);
      expect(code).toBe(2);
      expect(err).toContain("nothing to weigh");
    }
  });

  test.runIf(existsSync("/dev/zero"))("a device that never ends is refused and not read on", async () => {
    const { code, err } = await goodgrounds(["weigh", "/dev/zero"]);
    expect(code).toBe(2);
    expect(err).toContain("more than");
  });

  test("signs that would steer the terminal are not printed with a problem", async () => {
    const { err } = await goodgrounds(["weigh", "-"], JSON.stringify({ format: "\u202e\u009b31m" }));
    expect(err).toContain("/format");
    expect(err).not.toMatch(/[\u202e\u009b]/);
  });

  test("grounds of a check that is not there are refused, with the names there are", async () => {
    const { code, err } = await goodgrounds(["weigh", at("house.json"), "--grounds-of", "max-zs"]);
    expect(code).toBe(2);
    expect(err).toContain("maximum-zs");
  });
});

describe("compute", () => {
  test("gives its problems as JSON too, in the names the command line has", async () => {
    const { code, out } = await goodgrounds(["compute", "adiabatic-size", "fault-current=-5 A", "x=1", "--json"]);
    expect(code).toBe(2);
    const { format, issues } = JSON.parse(out);
    expect(format).toBe("good-grounds-problems");
    expect(issues).toMatchObject([
      { code: "unknown-need", expected: "one of fault-current, time, k" },
      { code: "negative", path: ["fault-current"] },
    ]);
  });

  test("runs a check with figures given by hand", async () => {
    const { code, out } = await goodgrounds([
      "compute",
      "maximum-zs",
      "system=TN-S",
      "nominal-voltage=230 V",
      "under-table411=yes",
      "standard=BS EN 60898",
      "type=B",
      "rated=32 A",
      "rcd=no",
      "zs=1.20 +/- 0.03 ohm",
      "r1r2=0.40 ± 0.02 Ω",
      "temperature=20 °C",
      "insulation=70C-thermoplastic",
      "cpc-arrangement=in-cable",
    ]);
    expect(code).toBe(0);
    expect(out).toContain("met");
    expect(out).toContain("1.28 Ω");
    expect(out).toContain("1.37 Ω");
  });

  test("says what is missing rather than guessing", async () => {
    const { code, out } = await goodgrounds(["compute", "insulation-resistance", "live-earth=200 MΩ", "--json"]);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({
      id: "insulation-resistance",
      verdict: "not-known",
      missing: [{ what: "insulation-resistance" }],
    });
  });

  test("refuses a unit of another kind, a wrong word and an unknown need, all at once", async () => {
    const { code, err } = await goodgrounds(["compute", "maximum-zs", "zs=32 A", "system=TNS", "colour=red"]);
    expect(code).toBe(2);
    for (const words of ["3 problems", "/zs", "/system", "/colour"]) expect(err).toContain(words);
  });

  test("lists everything, and helps with each", async () => {
    const { out } = await goodgrounds(["compute", "--list"]);
    for (const id of ["maximum-zs", "adiabatic-size", "ring-reading", "fault-current"]) expect(out).toContain(id);
    const help = await goodgrounds(["compute", "adiabatic-size", "--help"]);
    expect(help.out).toContain("fault-current");
    expect(help.out).toContain("Example");
  });

  test("offers names that are near to an unknown one", async () => {
    const { code, err } = await goodgrounds(["compute", "adiabatic"]);
    expect(code).toBe(2);
    expect(err).toContain("adiabatic-size");
  });
});

describe("report, schema and the rest", () => {
  test("writes a report whole and says where", async () => {
    const { code, out } = await goodgrounds(["report", at("house.json"), "--out", at("report.pdf")]);
    expect(code).toBe(0);
    expect(out.trim()).toBe(at("report.pdf"));
    expect(readFileSync(at("report.pdf")).subarray(0, 5).toString()).toBe("%PDF-");
  });

  test("refuses to write over a folder or into one that is not there", async () => {
    expect((await goodgrounds(["report", at("house.json"), "--out", folder])).code).toBe(2);
    expect((await goodgrounds(["report", at("house.json"), "--out", at("no/where.pdf")])).code).toBe(3);
  });

  test("never writes over the inspection itself, not by another name either", async () => {
    writeFileSync(at("only.json"), house);
    symlinkSync(at("only.json"), at("link.json"));
    for (const [source, out] of [
      ["only.json", "only.json"],
      ["only.json", "link.json"],
      ["link.json", "only.json"],
    ] as const) {
      const { code, err } = await goodgrounds(["report", at(source), "--out", at(out)]);
      expect(code).toBe(2);
      expect(err).toContain("this command reads that file");
    }
    expect(readFileSync(at("only.json"), "utf8")).toBe(house);
  });

  test("follows a link to the file it stands for, and leaves the link", async () => {
    writeFileSync(at("before.pdf"), "%PDF-1.7 old");
    symlinkSync(at("before.pdf"), at("latest.pdf"));
    expect((await goodgrounds(["report", at("house.json"), "--out", at("latest.pdf")])).code).toBe(0);
    expect(lstatSync(at("latest.pdf")).isSymbolicLink()).toBe(true);
    expect(readFileSync(at("before.pdf"), "latin1")).not.toMatch(/^%PDF-1.7 old/);
  });

  test("refuses to put a file in the place of something that is no file", async () => {
    const server = createServer().listen(at("socket"));
    await once(server, "listening");
    const { code, err } = await goodgrounds(["report", at("house.json"), "--out", at("socket")]);
    expect(code).toBe(2);
    expect(err).toContain("no file");
    expect(lstatSync(at("socket")).isSocket()).toBe(true);
    server.close();
  });

  test("prints a JSON Schema of the file", async () => {
    const { out } = await goodgrounds(["schema"]);
    const schema = JSON.parse(out);
    expect(schema.$schema).toContain("2020-12");
    expect(schema.required).toContain("boards");
    expect(schema.additionalProperties).toBe(false);
  });

  test.each([
    [["--version"], 0],
    [["--help"], 0],
    [[], 2],
    [["fly"], 2],
    [["weigh"], 2],
    [["weigh", "x", "--colour"], 2],
    [["weigh", "--out", "y", new URL("terraced-house.json", EXAMPLES).pathname], 2],
    [["report", "x", "--out", "y", "--json"], 2],
    [["compute", "adiabatic-size", "--all"], 2],
    [["schema", "inspection"], 2],
    [["report", "x"], 2],
  ] as const)("%j exits %i", async (args, code) => {
    expect((await goodgrounds(args)).code).toBe(code);
  });
});
