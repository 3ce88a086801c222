import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PassThrough } from "node:stream";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { run } from "../../apps/cli/src/run.ts";
import { smallestFile } from "../files/arbitrary-file.ts";

// The same figures through the three doors a figure can come in by: `compute`, `weigh` and `ring`.

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "same-figures-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function json(...args: readonly string[]) {
  let out = "";
  const stdout = new PassThrough();
  stdout.on("data", (chunk: Buffer) => {
    out += chunk.toString("utf8");
  });
  const host = { stdin: new PassThrough(), stdout, stderr: new PassThrough(), columns: 80, interactive: false };
  expect(await run([...args, "--json"], host)).toBe(0);
  await new Promise((done) => setImmediate(done));
  return JSON.parse(out);
}

type Figures = Readonly<Record<string, string | readonly string[]>>;

const CHECKS = ["zs-agreement", "r1r2-length", "ring-continuity"] as const;
const NEEDS: Readonly<Record<(typeof CHECKS)[number], readonly string[]>> = {
  "zs-agreement": ["zs", "zdb", "r1r2"],
  "r1r2-length": ["r1r2", "line", "cpc", "material", "length"],
  "ring-continuity": [..."r1 rn r2 crossLineNeutral crossLineCpc r1r2 line cpc material length".split(" ")],
};

async function computed(check: (typeof CHECKS)[number], figures: Figures): Promise<string> {
  const pairs = NEEDS[check].flatMap((need) => [figures[need] ?? []].flat().map((value) => `${need}=${value}`));
  return (await json("compute", check, ...pairs)).verdict;
}

async function weighed(shape: "ring" | "radial", figures: Figures) {
  const shown = (need: string) =>
    typeof figures[need] === "string" ? { [need]: { shown: figures[need], with: "m" } } : {};
  const listed = (need: string) =>
    [figures[need] ?? []]
      .flat()
      .map((value, i) => ({ point: `socket ${i + 1}`, reading: { shown: value, with: "m" } }));
  const cable = Object.fromEntries(
    ["line", "cpc", "material", "length"].flatMap((need) =>
      figures[need] === undefined ? [] : [[need, figures[need]]],
    ),
  );
  const readings = {
    ...Object.assign({}, ...["zs", "r1r2", "r1", "rn", "r2"].map(shown)),
    crossLineNeutral: listed("crossLineNeutral"),
    crossLineCpc: listed("crossLineCpc"),
  };
  const circuit = { id: "c", designation: "1", description: "circuit", shape, cable, readings };
  const file = {
    ...smallestFile(),
    instruments: [{ id: "m", kind: "tester", serial: "1" }],
    boards: [
      {
        id: "b",
        name: "Board",
        fedFrom: "supply",
        ...(figures.zdb === undefined ? {} : { readings: { zdb: { shown: figures.zdb, with: "m" } } }),
        circuits: [circuit],
      },
    ],
  };
  const path = join(folder, "one.json");
  writeFileSync(path, JSON.stringify(file));
  const { circuits } = await json("weigh", path, "--all");
  const findings: readonly { check: string; verdict: string }[] = circuits[0].findings;
  return (check: string) => findings.find((one) => one.check === check)?.verdict;
}

describe("a radial circuit", () => {
  const cable = { line: "2.5 mm²", cpc: "1.5 mm²", material: "copper", length: "20 m" };
  test.each([
    ["that comes out to the digit", { zs: "0.74 Ω", zdb: "0.35 Ω", r1r2: "0.39 Ω" }, "met", "met"],
    ["a digit off either way", { zs: "0.75 Ω", zdb: "0.35 Ω", r1r2: "0.39 Ω" }, "met", "met"],
    ["with a joint of 0.30 Ω on load alone", { zs: "1.04 Ω", zdb: "0.35 Ω", r1r2: "0.39 Ω" }, "not-met", "met"],
    ["with a joint of 0.30 Ω", { zs: "1.04 Ω", zdb: "0.35 Ω", r1r2: "0.69 Ω" }, "met", "not-met"],
    ["with a decimal slipped", { zs: "0.74 Ω", zdb: "0.35 Ω", r1r2: "3.9 Ω" }, "not-met", "not-met"],
    ["with Zs of another circuit", { zs: "2.11 Ω", zdb: "0.35 Ω", r1r2: "0.39 Ω" }, "not-met", "met"],
  ])("%s", async (_, readings, agreement, length) => {
    const figures = { ...cable, ...readings };
    const verdictOf = await weighed("radial", figures);
    expect(await computed("zs-agreement", figures)).toBe(agreement);
    expect(verdictOf("zs-agreement")).toBe(agreement);
    expect(await computed("r1r2-length", figures)).toBe(length);
    expect(verdictOf("r1r2-length")).toBe(length);
  });
});

describe("a ring", () => {
  const points = (lineNeutral: string, lineCpc: string) => ({
    crossLineNeutral: lineNeutral.split(" ").map((ohms) => `${ohms} Ω`),
    crossLineCpc: lineCpc.split(" ").map((ohms) => `${ohms} Ω`),
  });
  const cable = { line: "2.5 mm²", cpc: "1.5 mm²", material: "copper", length: "60 m" };
  const sound = points("0.22 0.22 0.23 0.22 0.22", "0.27 0.29 0.29 0.29 0.28");
  // A joint of 0.36 Ω a third of the way round: two ways in parallel at sixths, 0.44 and 0.73 Ω round.
  const joint = points("0.22 0.22 0.22 0.22 0.22", "0.36 0.37 0.35 0.33 0.30");
  test.each([
    ["that is sound", { r1: "0.44 Ω", rn: "0.44 Ω", r2: "0.73 Ω", ...sound }, "met", ["sound-ring"]],
    [
      "that is sound, each end a digit off",
      { r1: "0.45 Ω", rn: "0.43 Ω", r2: "0.72 Ω", ...sound },
      "met",
      ["sound-ring"],
    ],
    [
      "with a joint in the protective conductor, as much as a smaller one would have",
      { r1: "0.44 Ω", rn: "0.44 Ω", r2: "1.09 Ω", ...joint },
      "not-met",
      ["joint-in-cpc", "cpc-of-1-mm2"],
    ],
    [
      "that is open",
      { r1: ">99.9 Ω", rn: "0.44 Ω", r2: "0.73 Ω", ...points("0.44 0.44 0.44 0.44 0.44", "0.68 0.63 0.58 0.53 0.49") },
      "not-met",
      ["line-open"],
    ],
  ])("%s", async (_, readings, verdict, stories) => {
    const figures: Figures = { ...cable, ...readings };
    expect(await computed("ring-continuity", figures)).toBe(verdict);
    expect((await weighed("ring", figures))("ring-continuity")).toBe(verdict);
    const at = readings.crossLineNeutral.map(
      (ohms, i) => `point=socket ${i + 1}; ${ohms}; ${readings.crossLineCpc[i]}`,
    );
    const { r1, rn, r2 } = readings;
    const pairs = Object.entries({ ...cable, r1, rn, r2 }).map(([need, value]) => `${need}=${value}`);
    const { explanations } = await json("ring", ...pairs, ...at);
    expect(stories).toContain(explanations[0].id);
    expect(explanations.map(({ id }: { id: string }) => id)).toEqual(expect.arrayContaining(stories));
  });
});
