import { PassThrough } from "node:stream";
import { describe, expect, test } from "vitest";
import { run } from "../../apps/cli/src/run.ts";

// One question, one verdict: the check of a ring and the explanation of its readings, on the same figures.

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

/** Parts of the ring at which the points stand, and the joint. */
const POINTS = [1 / 6, 1 / 3, 1 / 2, 2 / 3, 5 / 6];
const AT = 0.4;

/** r2 and the readings line to cpc of 60 m of 2.5/1.5 mm² with a joint of so many ohms. */
function figures(ohms: number) {
  const [line, cpc] = [0.435, 0.71];
  const round = line + cpc + ohms;
  const across = POINTS.map((x) => {
    const way = x * line + (1 - x) * cpc + (x < AT ? ohms : 0);
    return ((way * (round - way)) / round).toFixed(2);
  });
  return { r1: "0.43 Ω", rn: "0.44 Ω", r2: `${(cpc + ohms).toFixed(2)} Ω`, lineNeutral: "0.22 Ω", across };
}

const CABLE = ["line=2.5 mm²", "cpc=1.5 mm²", "material=copper"];

async function verdictOf(ohms: number): Promise<string> {
  const { r1, rn, r2, lineNeutral, across } = figures(ohms);
  const points = across.flatMap((one) => [`crossLineNeutral=${lineNeutral}`, `crossLineCpc=${one} Ω`]);
  return (await json("compute", "ring-continuity", `r1=${r1}`, `rn=${rn}`, `r2=${r2}`, ...CABLE, ...points)).verdict;
}

async function saidOf(ohms: number): Promise<readonly string[]> {
  const { r1, rn, r2, lineNeutral, across } = figures(ohms);
  const points = across.map((one, i) => `point=socket ${i + 1}; ${lineNeutral}; ${one} Ω`);
  const { explanations, tied } = await json("ring", `r1=${r1}`, `rn=${rn}`, `r2=${r2}`, ...CABLE, ...points);
  return explanations.slice(0, tied).map(({ id }: { readonly id: string }) => id);
}

describe("a joint in the protective conductor of a ring, by the check and by the explanation", () => {
  test.each(Array.from({ length: 16 }, (_, i) => i * 0.02))(
    "of %d Ω: neither convicts what the other clears",
    async (ohms) => {
      const [verdict, said] = [await verdictOf(ohms), await saidOf(ohms)];
      if (verdict === "not-met") expect(said[0]).not.toBe("sound-ring");
      if (verdict === "met") expect(said).toContain("sound-ring");
      if (said.length === 1 && said[0] === "sound-ring") expect(verdict).toBe("met");
      if (!said.includes("sound-ring")) expect(verdict).not.toBe("met");
    },
    120_000,
  );
});
