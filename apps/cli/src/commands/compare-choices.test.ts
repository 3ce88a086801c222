import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PassThrough, Readable } from "node:stream";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { run } from "../run.ts";

interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

async function compareChoices(args: readonly string[], stdin = "", columns = 80): Promise<Ran> {
  const collect = (stream: PassThrough) => {
    const chunks: Buffer[] = [];
    stream.on("data", (chunk: Buffer) => chunks.push(chunk));
    return () => Buffer.concat(chunks).toString("utf8");
  };
  const stdout = new PassThrough();
  const stderr = new PassThrough();
  const [out, err] = [collect(stdout), collect(stderr)];
  const host = { stdin: Readable.from([Buffer.from(stdin)]), stdout, stderr, columns, interactive: false };
  const code = await run(["compare-choices", ...args], host);
  await new Promise((done) => setImmediate(done));
  return { code, out: out(), err: err() };
}

interface Seen {
  readonly classification: string;
  readonly facts: object;
  readonly reason: string;
}

/** An invented inspection file as JSON text. */
function file(id: string, name: string, seen: readonly Seen[], more: object = {}): string {
  return JSON.stringify({
    format: "good-grounds-inspection",
    version: 2,
    id,
    invented: true,
    edition: "2018+A4",
    inspectedOn: "2026-10-20",
    brief: {
      client: { name: "Client (invented)" },
      premises: { address: ["1 Example Lane"] },
      use: "dwelling",
      tenure: "owner-occupied",
      nation: "england",
      purpose: "test",
      records: [],
    },
    visits: [{ date: "2026-10-20" }],
    people: [{ id: "p", name }],
    instruments: [],
    extent: { covered: "all", sampling: [] },
    limitations: [],
    supply: { bonding: [] },
    boards: [{ id: "b", name: "Board", fedFrom: "supply", circuits: [] }],
    inspected: [],
    observations: seen.map(({ classification, facts, reason }, i) => ({
      id: `o${i + 1}`,
      place: "hall",
      what: "A cable runs in the plaster.",
      topic: "cable-in-wall",
      facts,
      choice: { classification, reason, by: "p" },
    })),
    photographs: [],
    signatures: [],
    ...more,
  });
}

const ANN = file("EX-1", "Ann Example (invented)", [
  { classification: "C1", facts: { covering: false, depth: "17.5 mm" }, reason: "A nail would reach it." },
  { classification: "C3", facts: { covering: true, depth: "2 mm" }, reason: "Behind steel." },
]);
const BEN = file("EX-2", "Ben Sample (invented)", [
  {
    classification: "C2",
    facts: { depth: "0.0175 m", covering: "No" },
    reason: "Nobody hangs pictures in this corner.",
  },
]);

let folder = "";
const at = (name: string) => join(folder, name);
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "good-grounds-choices-"));
  mkdirSync(at("past"));
  writeFileSync(at("past/ann.json"), ANN);
  writeFileSync(at("past/ben.json"), BEN);
  writeFileSync(at("past.jsonl"), `${ANN}\n${BEN}\n`);
  writeFileSync(at("wrong.json"), file("EX-3", "Cem", [], { colour: "red", edition: "1066" }));
  const unknownFact = { classification: "C2", facts: { colour: "red" }, reason: "x" };
  writeFileSync(at("unknown-fact.json"), file("EX-4", "Cem", [unknownFact]));
  writeFileSync(at("binary.json"), Buffer.from([0xff, 0xfe, 0x00, 0x80]));
  mkdirSync(at("empty"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function within(text: string, width: number) {
  for (const line of text.split("\n")) expect([...line].length).toBeLessThanOrEqual(width);
}

describe("compare-choices", () => {
  test("shows the same facts with different choices side by side, and never speaks of an error", async () => {
    const { code, out, err } = await compareChoices([at("past")]);
    expect([code, err]).toEqual([0, ""]);
    within(out, 80);
    expect(out).toContain("The same facts, different choices (1 of 1 sets judged more than once)");
    expect(out).toMatch(/C1 1 choice +C2 1 choice/);
    expect(out).toMatch(/A nail would reach it\. +Nobody hangs pictures in this\n? *corner\./);
    for (const words of [
      "EX-1, its",
      "EX-2, its",
      "2026-10-20",
      "Ann Example (invented)",
      "made up",
      "no pairs",
      "Caution:",
    ])
      expect(out).toContain(words);
    expect(out).not.toMatch(/\b(error|wrong|incorrect|fault)\b/i);
  });

  test("fits any width", async () => {
    for (const columns of [30, 60, 100]) within((await compareChoices([at("past")], "", columns)).out, columns);
  });

  test("gives the same from a folder, files in another order, a stream and standard input", async () => {
    const json = async (args: readonly string[], stdin = "") => {
      const { code, out } = await compareChoices([...args, "--json"], stdin);
      expect(code).toBe(0);
      return JSON.parse(out.replaceAll(/"source": "[^"]*"/g, '"source": ""'));
    };
    const expected = await json([at("past")]);
    expect(expected.count).toMatchObject({ inspections: 2, observations: 3, compared: 3, factSets: 2, judgedAgain: 1 });
    expect(await json([at("past/ben.json"), at("past/ann.json")])).toEqual(expected);
    expect(await json([at("past.jsonl")])).toEqual(expected);
    expect(await json(["-"], `${BEN}\n${ANN}\n`)).toEqual(expected);
    const copies = await json([at("past"), at("past.jsonl")]);
    expect(copies.count.copies).toBe(3);
    expect(copies.sets).toEqual(expected.sets);
    const pretty = await json(["-"], JSON.stringify(JSON.parse(ANN), null, 2));
    expect(pretty.count).toMatchObject({ inspections: 1, compared: 2 });
  });

  test("gives JSON of a stated form", async () => {
    const { out } = await compareChoices([at("past"), "--json", "--by", "file"]);
    const document = JSON.parse(out);
    expect(Object.keys(document)).toEqual([
      "format",
      "version",
      "count",
      "unused",
      "sets",
      "differences",
      "near",
      "agreement",
    ]);
    expect(document).toMatchObject({
      format: "good-grounds-choices",
      version: 1,
      unused: [],
      differences: [0],
      sets: [
        {
          topic: "cable-in-wall",
          facts: [
            { name: "covering", says: "value", value: false },
            { name: "depth", says: "value", value: "17.5 mm" },
          ],
          positions: [],
          choices: [
            { classification: "C1", person: "ann example (invented)", file: "EX-1", source: at("past/ann.json") },
            { classification: "C2" },
          ],
        },
      ],
      agreement: {
        by: "file",
        pairs: { all: { pairs: 1, agreed: 0 } },
        fleiss: { judges: 2, items: 1, because: null },
        cohen: [],
      },
    });
  });

  test("tells a fact that was not recorded from one that is not known", async () => {
    const unknown = { notKnown: "limited", reason: "locked" };
    const lines = [
      file("N1", "Ann", [{ classification: "C1", facts: { covering: true }, reason: "x" }]),
      file("N2", "Ben", [{ classification: "FI", facts: { covering: true, depth: unknown }, reason: "y" }]),
    ];
    const { out } = await compareChoices(["-", "--json"], lines.join("\n"));
    const { near } = JSON.parse(out);
    expect(near).toHaveLength(1);
    expect(near[0].differs).toEqual({ kind: "fact", name: "depth" });
    expect(near[0].members.map(({ says, value }: { says: string; value: unknown }) => [says, value]).sort()).toEqual([
      ["not-known", null],
      ["not-recorded", null],
    ]);
  });

  test("names every problem with its place, goes on with the rest and exits 2", async () => {
    const { code, out, err } = await compareChoices([
      at("past"),
      at("wrong.json"),
      at("unknown-fact.json"),
      at("binary.json"),
      at("nothing.json"),
    ]);
    expect(code).toBe(2);
    for (const words of [
      "wrong.json: 2 problems",
      "/observations/0/facts/colour",
      "/colour",
      "/edition",
      "binary.json",
      "UTF-8",
      "nothing.json",
    ])
      expect(err).toContain(words);
    expect(out).toContain("4 files could not be used and are not in it.");
    expect(out).toMatch(/EX-2, its\s+observation o1/);
    const json = await compareChoices([at("past"), at("wrong.json"), at("nothing.json"), "--json"]);
    expect(JSON.parse(json.out).unused).toMatchObject([
      { issues: [{ path: expect.anything() }, {}], problem: null },
      { issues: [], problem: expect.stringContaining("cannot be read") },
    ]);
  });

  test.each([
    [[], 2, "no file given"],
    [["nothing.json"], 3, "cannot be read"],
    [["empty"], 2, "nothing to compare"],
    [["past", "--by", "firm"], 2, "--by person or --by file"],
    [["past", "--all"], 2, "no option --all"],
  ] as const)("%j exits %i and says why", async ([path, ...args], code, words) => {
    const ran = await compareChoices(path === undefined ? [] : [at(path), ...args]);
    expect(ran).toMatchObject({ code, out: "", err: expect.stringContaining(words) });
  });

  test("one document of very many short lines is refused and not split", async () => {
    const { code, err } = await compareChoices(["-"], "[\n".repeat(20_000_000));
    expect(code).toBe(2);
    expect(err).toContain("40000000 characters");
  });

  test("nothing a file holds reaches the terminal as a control sign", async () => {
    const hostile = `\u202egnirts\u200b and 灯具 and ${"x".repeat(200)}`;
    const facts = { covering: true, depth: { notKnown: "limited", reason: hostile } };
    writeFileSync(
      at("hostile.jsonl"),
      [
        file("H1", hostile, [{ classification: "C1", facts, reason: `a\nb\t${hostile}` }]),
        file("H2", hostile, [{ classification: "FI", facts, reason: hostile }]),
        "[]",
        file("H3", hostile, [{ classification: "FI", facts: { covering: hostile }, reason: hostile }]),
        `{"format":"good-grounds-inspection","version":2,"observations":${"[".repeat(5000)}${"]".repeat(5000)}}`,
        '{"__proto__":{"facts":{}}}',
      ].join("\n"),
    );
    const { code, out, err } = await compareChoices([at("hostile.jsonl")]);
    expect(code).toBe(2);
    expect(err).toContain("hostile.jsonl:3");
    expect(out).toContain("灯具");
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what must not be there.
    for (const text of [out, err]) expect(text).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u200b\u202e]/);
  });
});
