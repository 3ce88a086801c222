import { readFileSync } from "node:fs";
import { PassThrough, Readable } from "node:stream";
import { describe, expect, test } from "vitest";
import type { Host } from "../host.ts";
import { run } from "../run.ts";

async function goodgrounds(args: readonly string[], typed?: string, columns = 80) {
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
  const host: Host = { stdin, stdout, stderr, columns, interactive: typed !== undefined };
  const code = await run(["reason", ...args], host);
  await new Promise((done) => setImmediate(done));
  return { code, ...text };
}

const BLANK = "board-blank-missing";

test("what is danger by itself stands in the argument and in JSON, whatever else is answered", async () => {
  const store = ["battery-place", "place=outside", "as-maker-asks=yes", "detection=yes", "heat=none"];
  const { out } = await goodgrounds([...store, "condition=damaged"]);
  const flat = out.replaceAll(/\s+/g, " ");
  expect(flat).toContain("Follows from the facts: C2");
  expect(flat).toContain("danger whatever else is so → C2 at the least");
  expect(flat).toContain("wherever it stands: no other answer takes that away");
  const open = (await goodgrounds(store)).out.replaceAll(/\s+/g, " ");
  expect(open).toContain("Perhaps danger by itself: the store is damaged");
  const sound = await goodgrounds([...store, "condition=sound"]);
  expect(sound.out).not.toContain("danger whatever else");
  const { dangers } = JSON.parse((await goodgrounds([...store, "condition=damaged", "--json"])).out);
  expect(dangers).toContainEqual({
    id: "damaged",
    least: "C2",
    words: "the store is damaged, swollen or leaking, wherever it stands",
    regulations: ["134.1.1", "421.1.1"],
    holds: "true",
    because: ["fact condition"],
  });
});

describe("facts given", () => {
  test("the argument says what follows, why, and what would change it, within 80 columns", async () => {
    const { code, out, err } = await goodgrounds([BLANK, "gets-in=finger", "cover-fixing=hole", "who-comes=anyone"]);
    expect([code, err]).toEqual([0, ""]);
    for (const part of [
      "Follows from the facts: C1",
      "[seen] a finger (12 mm, jointed) reaches the live part",
      "Why not C2",
      "What would change it",
      "What would put it right",
    ])
      expect(out).toContain(part);
    for (const line of out.split("\n")) expect([...line].length).toBeLessThanOrEqual(80);
  });

  test("JSON holds the possible set, the next question with what each answer leaves, and the deciding facts", async () => {
    const { code, out } = await goodgrounds([BLANK, "cover-fixing=slight", "who-comes=skilled-only", "--json"]);
    expect(code).toBe(0);
    const answer = JSON.parse(out);
    expect(answer).toMatchObject({
      format: "good-grounds-reasoning",
      version: 2,
      topic: BLANK,
      possible: ["C3", "C2"],
      classification: null,
    });
    expect(answer.next.fact).toBe("gets-in");
    expect(answer.next.answers).toEqual([
      { value: "nothing", possible: ["C3"] },
      { value: "finger-short", possible: ["C3"] },
      { value: "wire-on-top", possible: ["C3"] },
      { value: "finger", possible: ["C2"] },
      { value: "hand", possible: ["C2"] },
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
      "gets-in=finger",
      "who-comes=skilled-only",
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
    [[BLANK, "gets-in"], /no pair/],
  ] as const)("%j", async (args, message) => {
    const { code, err } = await goodgrounds(args);
    expect(code).toBe(2);
    expect(err).toMatch(message);
  });

  test.each([
    ["a fact", [BLANK, "gets-in=finger", "gets-in=hand"]],
    ["a figure", ["rcd-does-not-trip", "at-rated=20 ms", "at-rated=900 ms"]],
    ["a position", [BLANK, "locked-board=counts", "locked-board=does-not-count"]],
  ] as const)("%s given twice, which would leave one unread", async (_, args) => {
    const { code, out, err } = await goodgrounds(args);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toMatch(/given twice/);
  });

  test("a length below nothing", async () => {
    const { code, err } = await goodgrounds(["cable-in-wall", "depth=-5 mm"]);
    expect(code).toBe(2);
    expect(err).toContain("/depth");
  });

  test("what is wrong with a figure is said once, though two facts rest on it", async () => {
    const { err } = await goodgrounds(["rcd-slow-at-five-times", "at-rated=22"]);
    expect(err).toContain("1 problem");
  });

  test.each([[`${"x".repeat(50_000)}=yes`], [`gets-in=${"x".repeat(50_000)}`], [`locked-board=${"x".repeat(50_000)}`]])(
    "a message shows no more of a huge word than helps",
    async (pair) => {
      const { code, err } = await goodgrounds([BLANK, pair]);
      expect(code).toBe(2);
      expect(err.length).toBeLessThan(1000);
    },
  );

  test("a position is one of its words and never several", async () => {
    const { err } = await goodgrounds([BLANK, "locked-board=counts | does-not-count"]);
    expect(err).toContain("expected one of counts, does-not-count\n");
  });

  test.each(["__proto__", "constructor", "toString"])("%s is neither topic nor fact", async (name) => {
    expect((await goodgrounds([name])).code).toBe(2);
    expect((await goodgrounds([BLANK, `${name}=yes`])).code).toBe(2);
  });

  test("two wrong facts are two problems, in text and in JSON", async () => {
    const { code, err, out } = await goodgrounds([BLANK, "gets-in=huge", "colour=white", "--json"]);
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

test.each([0, 10, 500])("a terminal that reports %i columns still gets lines that can be read", async (columns) => {
  const { out } = await goodgrounds([BLANK, "gets-in=finger", "who-comes=anyone"], undefined, columns);
  const longest = Math.max(...out.split("\n").map((line) => [...line].length));
  expect(longest).toBeGreaterThanOrEqual(20);
  expect(longest).toBeLessThanOrEqual(100);
});

test("garbage and the end of input leave what was understood", async () => {
  const { code, out, err } = await goodgrounds([BLANK], "garbage\n99\n0\n-1\n\u0000\u001b[A\nfinger\n");
  expect(code).toBe(0);
  expect(err.match(/none of the answers/g)).toHaveLength(5);
  expect(out).toContain("Still possible: C2 or C1");
});

test("ranges of a quantity bear no number that could be taken for an answer", async () => {
  const { err } = await goodgrounds(["cable-in-wall"], "1\n");
  expect(err).not.toMatch(/^ {2}1 /m);
  expect(err).toContain("a quantity in m");
});

test("JSON has the members that docs/cli.md states, and no others", async () => {
  const docs = readFileSync(new URL("../../../../docs/cli.md", import.meta.url), "utf8");
  const section = docs.split("### `good-grounds-reasoning`")[1]?.split("###")[0] ?? "";
  const rows = [...section.matchAll(/^\| (`.+?) \| (.+) \|$/gm)].map(
    ([, names = "", holds = ""]) =>
      [[...names.matchAll(/`([a-zA-Z]+)(?:\[\])?`/g)].map(([, name]) => name), holds] as const,
  );
  const { out } = await goodgrounds([BLANK, "cover-fixing=slight", "who-comes=skilled-only", "--json"]);
  const answer = JSON.parse(out);
  const stated = ["format", "version", ...rows.flatMap(([names]) => names)];
  expect(Object.keys(answer).sort()).toEqual(stated.sort());
  for (const list of ["paths", "departures", "dangers", "contested", "remedies"]) {
    const holds = rows.find(([names]) => names.includes(list))?.[1] ?? "";
    const [first] = answer[list];
    for (const member of Object.keys(first)) expect(holds, `${list}: ${member}`).toContain(`\`${member}`);
  }
});

describe("finding a topic", () => {
  test.each([
    ["spd", "surge-protection-absent"],
    ["afdd", "arc-detection-absent"],
    ["pv isolator", "pv-isolation"],
    ["ev charger", "ev-open-pen"],
    ["consumer unit blank", "board-blank-missing"],
    ["gas bonding", "main-bonding-absent"],
    ["borrowed neutral", "borrowed-neutral"],
    ["broken socket", "accessory-broken"],
    ["rcbo", "rcd-does-not-trip"],
    ["zs", "zs-over-limit"],
    ["ir", "insulation-low"],
    ["solar", "pv-isolation"],
    ["emergency light", "emergency-lighting"],
  ])("%s lists %s", async (words, id) => {
    const { code, out } = await goodgrounds(["--list", ...words.split(" ")]);
    expect(code).toBe(0);
    expect(out).toContain(`  ${id} `);
  });

  test("words that mean nothing here, or nothing but a name of the language, exit 2", async () => {
    for (const words of ["qqqq", "__proto__", "constructor", "toString"])
      expect((await goodgrounds(["--list", words])).code).toBe(2);
  });

  test("a topic that is not there names those that are meant", async () => {
    expect((await goodgrounds(["spd"])).err).toContain("surge-protection-absent");
  });
});

describe("figures that do not suffice for the computation they were given for", () => {
  const unfinished = async (args: readonly string[]) =>
    JSON.parse((await goodgrounds([...args, "--json"])).out).unfinished;
  const spur = ["spur-overloaded", "shape=radial", "line=2.5 mm²", "rated=32 A", "standard=BS EN 60898", "methods=C"];
  const cable = ["kind=flat-twin-and-cpc", "insulation=70C-thermoplastic", "material=copper"];

  test("a spur without its number of phases: the figure is named", async () => {
    expect(await unfinished([...spur, ...cable])).toEqual([
      { fact: "cable-carries", by: "cable-capacity", lacks: expect.arrayContaining(["phases"]) },
    ]);
    const { out } = await goodgrounds([...spur, ...cable]);
    expect(out).toContain("Figures that do not suffice");
    expect(out.replaceAll(/\s+/g, " ")).toContain("there is still missing: phases");
  });

  test("flexible cord by size and device alone: every further figure is named, and what no table has", async () => {
    const [first] = await unfinished(["flexible-cord-as-fixed-wiring", "line=1.5 mm²", "rated=32 A", "kind=flexible"]);
    expect(first).toMatchObject({ fact: "within-cable", by: "cable-capacity" });
    expect(first.lacks.length).toBeGreaterThan(0);
  });

  test("all of them: nothing is named", async () => {
    expect(await unfinished([...spur, ...cable, "phases=1"])).toBeUndefined();
  });
});
