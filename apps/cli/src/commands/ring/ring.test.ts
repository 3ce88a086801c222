import { PassThrough } from "node:stream";
import { describe, expect, test } from "vitest";
import { run } from "../../run.ts";

async function ring(...args: readonly string[]) {
  const text = { out: "", err: "" };
  const stdout = new PassThrough();
  stdout.on("data", (chunk: Buffer) => {
    text.out += chunk.toString("utf8");
  });
  const stderr = new PassThrough();
  stderr.on("data", (chunk: Buffer) => {
    text.err += chunk.toString("utf8");
  });
  const stdin = new PassThrough();
  const code = await run(["ring", ...args], { stdin, stdout, stderr, columns: 80, interactive: false });
  return { code, ...text, words: text.out.replaceAll(/\s+/g, " ") };
}

const CABLE = ["material=copper", "line=2.5 mm²", "cpc=1.5 mm²", "accuracy=±(2 % + 2 digits)"];
const ENDS = ["r1=0.44 Ω", "rn=0.44 Ω", "r2=0.73 Ω"];

/** mΩ of line and cpc (or line and neutral) of a 60 m ring at a part x of its length: two ways in parallel. */
function cross(a: number, b: number, x: number): string {
  const out = x * a + (1 - x) * b;
  const back = (1 - x) * a + x * b;
  return ((out * back) / (out + back)).toFixed(2);
}
const sound = (name: string, x: number) => `point=${name}; ${cross(0.44, 0.44, x)} Ω; ${cross(0.44, 0.73, x)} Ω`;

describe("goodgrounds ring", () => {
  test("calls a sound ring sound, and shows every reading beside what is expected", async () => {
    const { code, words } = await ring(...ENDS, ...CABLE, sound("hall", 0.2), sound("window", 0.5), sound("door", 0.8));
    expect(code).toBe(0);
    expect(words).toMatch(/Most likely \(\d+ %\): a sound ring/);
    expect(words).toContain("hall");
    expect(words).toContain("None of this is a classification");
  });

  test("finds a spur by its point and length", async () => {
    // 6 m of 2.5/1.5 mm² spur: twice 7.41 mΩ/m adds 0.09 Ω to L–N, 7.41 + 12.1 mΩ/m adds 0.12 Ω to L–cpc.
    const spur = `point=window; ${(0.22 + 0.0889).toFixed(2)} Ω; ${(0.2925 + 0.1171).toFixed(2)} Ω`;
    const { words } = await ring(...ENDS, ...CABLE, sound("hall", 0.25), spur, sound("door", 0.75));
    expect(words).toMatch(/Most likely \(\d+ %\): window hangs on a spur of about (5\.[5-9]|6\.\d) m/);
    expect(words).toContain("no fault of the installation");
  });

  test("finds an open protective conductor from the display's end of range", async () => {
    // Open half way: from the socket by the cpc to the nearer end, and from there, cross-connected, by the line's other way.
    const at = (x: number) => {
      const near = Math.min(x, 1 - x);
      return (0.73 * near + 0.44 * (1 - near)).toFixed(2);
    };
    const { words, code } = await ring(
      "r1=0.44 Ω",
      "rn=0.44 Ω",
      "r2=>20 Ω",
      ...CABLE,
      ...[0.1, 0.3, 0.7, 0.9].map((x, i) => `point=socket ${i + 1}; ${cross(0.44, 0.44, x)} Ω; ${at(x)} Ω`),
    );
    expect(code).toBe(0);
    expect(words).toMatch(/Most likely \(\d+ %\): the cpc is open/);
  });

  test("says what is missing instead of guessing", async () => {
    const { code, words } = await ring("r1=0.44 Ω", "r2=0.73 Ω");
    expect(code).toBe(0);
    expect(words).toContain("end-to-end readings r1, rn and r2 are needed");
    const { out } = await ring("r1=0.44 Ω", "r2=0.73 Ω", "--json");
    expect(JSON.parse(out)).toMatchObject({ format: "good-grounds-ring", missing: [{ what: "ring-rn" }] });
  });

  test("names every problem by what was typed", async () => {
    const { code, err } = await ring(
      "r1=0.44",
      "rn=0.44 Ω",
      "r2=x Ω",
      "length=far",
      "point=hall; 1 V; 0.2 Ω",
      "cpc=1.5",
    );
    expect(code).toBe(2);
    for (const place of ["/r1", "/r2", "/length", "/point/hall", "/cpc"]) expect(err).toContain(`  ${place}\n`);
    expect(err).not.toContain("/boards");
  });

  test.each([
    ["a name it does not know", ["rx=1 Ω"], '"rx=1 Ω" is nothing it knows'],
    ["a word without a value", ["r1"], '"r1" is nothing it knows'],
    ["a name given twice", ["r1=1 Ω", "r1=2 Ω"], "r1 is given twice"],
    ["a point without readings", ["point=hall"], "is not a point with its readings"],
    ["a point with too many", ["point=hall; 1 Ω; 2 Ω; 3 Ω"], "is not a point with its readings"],
  ])("refuses %s", async (_, args, words) => {
    const { code, err } = await ring(...args);
    expect(code).toBe(2);
    expect(err).toContain(words);
  });

  test("gives its JSON a name, points and explanations", async () => {
    const { out } = await ring(...ENDS, ...CABLE, sound("hall", 0.25), "point=shed; -; 0.29 Ω", "--json");
    const said = JSON.parse(out);
    expect(said).toMatchObject({
      format: "good-grounds-ring",
      version: 1,
      kind: "ring",
      accounts: true,
      points: [
        { name: "hall", lineCpc: { shown: Number(cross(0.44, 0.73, 0.25)) } },
        { name: "shed", lineNeutral: { shown: null }, lineCpc: { shown: 0.29 } },
      ],
    });
    expect(said.title).toContain("a sound ring explains the readings");
    expect(said.explanations[0]).toMatchObject({ id: "sound-ring", innocent: true });
  });

  test("shows what it takes with --help, and refuses to say nothing about nothing", async () => {
    const help = await ring("--help");
    expect(help.code).toBe(0);
    expect(help.out).toContain("point=");
    expect(help.out.split("\n").every((line) => [...line].length <= 80)).toBe(true);
    expect((await ring()).code).toBe(2);
  });
});
