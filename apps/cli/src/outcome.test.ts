import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PassThrough, Readable } from "node:stream";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { nearlyNothing } from "../../../outside/reports/example.ts";
import { run } from "./run.ts";

const HOUSE = readFileSync(new URL("../../../examples/terraced-house.json", import.meta.url), "utf8");

interface Editable {
  signatures: { content?: string }[];
  boards: { circuits: { readings: Record<string, unknown> }[] }[];
  observations: Record<string, unknown>[];
  [name: string]: unknown;
}

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "good-grounds-outcome-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** What `weigh` writes of the terraced house with something changed; words are joined again where a line ended. */
async function weighed(edit: (file: Editable) => void, ...options: readonly string[]): Promise<string> {
  const data = JSON.parse(HOUSE);
  edit(data);
  const path = join(folder, "house.json");
  writeFileSync(path, JSON.stringify(data));
  const stdout = new PassThrough();
  const chunks: Buffer[] = [];
  stdout.on("data", (chunk: Buffer) => chunks.push(chunk));
  const stderr = new PassThrough();
  const code = await run(["weigh", path, ...options], {
    stdin: Readable.from([]),
    stdout,
    stderr,
    columns: 80,
    interactive: false,
  });
  await new Promise((done) => setImmediate(done));
  expect(String(stderr.read() ?? "")).toBe("");
  expect(code).toBe(0);
  return Buffer.concat(chunks).toString("utf8").replaceAll(/\s+/g, " ");
}

describe("signatures in the terminal and in JSON", () => {
  const zeros = ({ signatures }: Editable) => {
    for (const one of signatures) one.content = "0".repeat(64);
  };
  const reading = ({ boards }: Editable) => {
    Object.assign(boards[0]?.circuits[0]?.readings as object, { zs: { shown: "0.02 Ω" } });
  };
  const without = ({ signatures }: Editable) => {
    for (const one of signatures) delete one.content;
  };

  test("of the file as it was signed", async () => {
    const out = await weighed(() => undefined);
    expect(out).toContain("Inspected and tested: signed by J. Sample (invented), 6 October 2026, 18:40.");
    expect(JSON.parse(await weighed(() => undefined, "--json")).signatures).toMatchObject([
      { person: "inspector", standing: "signed" },
      { person: "supervisor", standing: "signed" },
    ]);
  });

  test.each([
    ["a hash of nothing but zeros", zeros, "changed", "The content was changed after J. Sample (invented) signed"],
    ["a reading changed since", reading, "changed", "The content was changed after J. Sample (invented) signed"],
    ["no hash", without, "unbound", "it cannot be checked what was signed"],
  ] as const)("with %s never count as signed", async (_, edit, standing, said) => {
    const out = await weighed(edit);
    expect(out).not.toContain("signed by");
    expect(out).toContain(said);
    expect(out).toContain("it does not count as signed for this content");
    const { signatures } = JSON.parse(await weighed(edit, "--json"));
    expect(signatures).toMatchObject([{ standing }, { standing }]);
  });
});

describe("the outcome in the terminal, in JSON and in the line of many", () => {
  test("of an inspection of which nothing is known", async () => {
    const nothing = (file: Editable) => {
      nearlyNothing(file as never);
      file.conclusion = { outcome: "satisfactory" };
    };
    const out = await weighed(nothing);
    expect(out).toContain("Outcome: not determined yet");
    expect(out).toContain("The inspector states “satisfactory”.");
    expect(out).toContain("2 points stand open, worst first: ? No test of any circuit is recorded.");
    const { outcome } = JSON.parse(await weighed(nothing, "--json"));
    expect(outcome).toMatchObject({
      outcome: "not-determined",
      points: [
        { kind: "nothing-tested", places: ["/boards/0", "/boards/1"], words: "No test of any circuit is recorded." },
        { kind: "nothing-inspected", places: ["/inspected"] },
      ],
    });
    const other = join(folder, "other.json");
    writeFileSync(other, HOUSE);
    const lines = await weighed(nothing, other);
    expect(lines).toMatch(
      /GG-2026-0417 not determined yet 2 open points: No test of any circuit is recorded\. law: \S+ Next inspection 0 not met/,
    );
    expect(lines).toContain("GG-2026-0417 unsatisfactory 1 open point: 1 item of the inspection not verified.");
  });

  test("where C3 was chosen and C1 follows, with the reason or that there is none", async () => {
    const chosen = (reason: string) => (file: Editable) => {
      const o6 = file.observations.find(({ id }) => id === "o6") as { choice: object };
      o6.choice = { ...o6.choice, classification: "C3", reason };
    };
    const out = await weighed(chosen("The room is locked and the key is with the landlord."));
    expect(out).toContain("By the facts stated C1 follows; classified C3: reason: The room is locked");
    expect(await weighed(chosen("–"))).toContain(
      "By the facts stated C1 follows; classified C3: no reason is written.",
    );
    const { outcome } = JSON.parse(await weighed(chosen("–"), "--json"));
    expect(outcome.below).toMatchObject([{ observation: "o6", follows: "C1", chosen: "C3", reason: null }]);
    expect(outcome.points[0]).toMatchObject({ kind: "below-the-facts" });
  });
});

describe("a statement that a finding contradicts", () => {
  // Circuit 5 has no RCD, which the check of additional protection finds.
  const stated = (file: Editable) => {
    file.observations = [
      {
        id: "x",
        place: "landing",
        what: "lights",
        board: "cu",
        circuit: "c5",
        topic: "lighting-no-rcd",
        facts: { "rcd-30ma": true, premises: "home", "asked-when-made": false },
        choice: { classification: "none", reason: "–", by: "inspector" },
      },
    ];
    file.inspected = [];
  };

  test("is told first, and stands open", async () => {
    const out = await weighed(stated);
    expect(out).toContain("The check for an RCD of 30 mA that works says that");
    expect(out).toMatch(/The observation says that .* Settle which is so\./);
    expect(out).toContain("What is stated contradicts what the file records or a finding shows");
    expect(out).toContain("Still possible: no classification or C3");
  });

  test("in JSON with what was stated, what is known and of what it speaks", async () => {
    const { observations, outcome } = JSON.parse(await weighed(stated, "--json"));
    expect(observations[0]).toMatchObject({
      possible: ["none", "C3"],
      classification: null,
      worked: [],
      against: [
        {
          fact: "rcd-30ma",
          by: "additional-protection",
          value: "no",
          stated: "yes",
          of: ["/boards/0/circuits/4"],
          words: expect.stringContaining("Settle which is so."),
        },
      ],
    });
    expect(outcome.points).toContainEqual(
      expect.objectContaining({ kind: "contradiction", places: ["/observations/0"] }),
    );
  });
});
