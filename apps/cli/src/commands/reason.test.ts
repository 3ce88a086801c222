import { PassThrough, Readable } from "node:stream";
import { describe, expect, test } from "vitest";
import type { Host } from "../host.ts";
import { run } from "../run.ts";

async function goodgrounds(args: readonly string[], typed?: string) {
  const stdout = new PassThrough();
  const stderr = new PassThrough();
  const text = { out: "", err: "" };
  stdout.on("data", (chunk: Buffer) => {
    text.out += chunk.toString("utf8");
  });
  stderr.on("data", (chunk: Buffer) => {
    text.err += chunk.toString("utf8");
  });
  const stdin = Object.assign(Readable.from([Buffer.from(typed ?? "")]), { isTTY: typed !== undefined });
  const host: Host = { stdin, stdout, stderr, columns: 80, interactive: typed !== undefined };
  const code = await run(["reason", ...args], host);
  await new Promise((done) => setImmediate(done));
  return { code, ...text };
}

const BLANK = "board-blank-missing";

describe("facts given", () => {
  test("the argument says what follows, why, and what would change it, within 80 columns", async () => {
    const { code, out, err } = await goodgrounds([BLANK, "finger-reaches-live=yes", "gap=in-line", "access=anyone"]);
    expect([code, err]).toEqual([0, ""]);
    for (const part of [
      "Follows from the facts: C1",
      "[seen] a finger put through the gap reaches live metal",
      "Why not C2",
      "What would change it",
      "What would put it right",
    ])
      expect(out).toContain(part);
    for (const line of out.split("\n")) expect([...line].length).toBeLessThanOrEqual(80);
  });

  test("JSON holds the possible set, the next question with what each answer leaves, and the deciding facts", async () => {
    const { code, out } = await goodgrounds([BLANK, "gap=in-line", "access=skilled-only", "--json"]);
    expect(code).toBe(0);
    const answer = JSON.parse(out);
    expect(answer).toMatchObject({
      format: "good-grounds-reasoning",
      version: 1,
      topic: BLANK,
      possible: ["C3", "C2"],
      classification: null,
    });
    expect(answer.next.fact).toBe("finger-reaches-live");
    expect(answer.next.answers).toEqual([
      { value: "no", possible: ["C3"] },
      { value: "yes", possible: ["C2"] },
    ]);
    expect(answer.contested[0].positions).toHaveLength(2);
    expect(answer.deciding.up.length).toBeGreaterThan(0);
  });

  test("what cannot be settled within the extent gives FI where danger is possible", async () => {
    const { out } = await goodgrounds([
      "lighting-no-cpc",
      "cpc-present=no",
      "fittings=?",
      "notice=yes",
      "users-change-fittings=no",
      "--json",
    ]);
    expect(JSON.parse(out)).toMatchObject({ classification: "FI", unsettled: ["fittings"] });
  });

  test("a position is taken by name", async () => {
    const { out } = await goodgrounds([
      BLANK,
      "finger-reaches-live=yes",
      "access=skilled-only",
      "locked-board=does-not-count",
      "--json",
    ]);
    expect(JSON.parse(out).possible).toEqual(["C1"]);
  });
});

describe("wrong input exits 2 and names everything", () => {
  test.each([
    [["no-such-topic"], /no topic/],
    [["board"], /Did you mean/],
    [[], /no topic given/],
    [[BLANK, "gap"], /no pair/],
    [[BLANK, "--edition", "1970"], /editions are/],
  ] as const)("%j", async (args, message) => {
    const { code, err } = await goodgrounds(args);
    expect(code).toBe(2);
    expect(err).toMatch(message);
  });

  test("two wrong facts are two problems, in text and in JSON", async () => {
    const { code, err, out } = await goodgrounds([BLANK, "gap=huge", "colour=white", "--json"]);
    expect(code).toBe(2);
    expect(err).toContain("2 problems");
    expect(JSON.parse(out).issues.map(({ code: one }: { code: string }) => one)).toEqual([
      "not-a-value",
      "unknown-fact",
    ]);
  });
});

describe("asked in a terminal", () => {
  test("questions are asked until nothing is left to settle, then the argument stands on standard output", async () => {
    const { code, out, err } = await goodgrounds(
      ["lighting-no-cpc", "cpc-present=no"],
      "2\nnonsense\nno\nyes\n1\n1\n1\n",
    );
    expect(code).toBe(0);
    expect(err).toContain("?");
    expect(out).toMatch(/Follows from the facts: C[123]/);
  });

  test("an empty line ends the questions, and what is open stays open", async () => {
    const { code, out } = await goodgrounds(["lighting-no-cpc"], "\n");
    expect(code).toBe(0);
    expect(out).toContain("Still possible");
  });

  test("end of input is no fault, and ? leaves a fact unsettled", async () => {
    const { code, out } = await goodgrounds(["lighting-no-cpc", "cpc-present=no", "notice=yes"], "?\n");
    expect(code).toBe(0);
    expect(out).toContain("FI");
  });
});

test("every topic is listed and describes itself with an example that works", async () => {
  const { out } = await goodgrounds(["--list", "--json"]);
  const topics = JSON.parse(out) as { id: string }[];
  expect(topics.length).toBeGreaterThanOrEqual(70);
  for (const { id } of topics) {
    const { code, out: help } = await goodgrounds([id, "--help"]);
    expect(code).toBe(0);
    expect(help).toContain("Facts:");
  }
});
