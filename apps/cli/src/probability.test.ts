import { readFileSync } from "node:fs";
import { PassThrough, Readable } from "node:stream";
import { fileURLToPath } from "node:url";
import { assemble } from "@good-grounds/assembly";
import { parseInspection } from "@good-grounds/inspection";
import { describe, expect, test } from "vitest";
import { run } from "./run.ts";

const WORKSHOP = fileURLToPath(new URL("../../../examples/workshop.json", import.meta.url));

async function weigh(args: readonly string[], stdin = ""): Promise<string> {
  const stdout = new PassThrough();
  const chunks: Buffer[] = [];
  stdout.on("data", (chunk: Buffer) => chunks.push(chunk));
  const host = {
    stdin: Readable.from([Buffer.from(stdin)]),
    stdout,
    stderr: new PassThrough(),
    columns: 80,
    interactive: false,
  };
  expect(await run(["weigh", ...args], host)).toBe(0);
  await new Promise((done) => setImmediate(done));
  return Buffer.concat(chunks).toString("utf8");
}

interface Found {
  readonly check: string;
  readonly verdict: string;
  readonly conformity?: {
    readonly probability: number | null;
    readonly lowest: number;
    readonly highest: number;
    readonly rule: string;
    readonly decision: Readonly<Record<string, string>>;
    readonly deciding: { readonly budget: readonly { readonly share: number }[] } | null;
  };
}

function findings(json: string): readonly Found[] {
  const { supply, boards, circuits } = JSON.parse(json);
  return [...supply, ...[...boards, ...circuits].flatMap((one: { findings: Found[] }) => one.findings)];
}

describe("weigh --probability", () => {
  test("gives every finding its probability as JSON, and none without the option", async () => {
    const all = findings(await weigh([WORKSHOP, "--json", "--probability"]));
    for (const { conformity, check } of all) {
      expect(conformity, check).toBeDefined();
      const { probability, lowest, highest, deciding } = conformity as NonNullable<Found["conformity"]>;
      expect(lowest).toBeLessThanOrEqual(highest);
      if (probability !== null)
        expect(probability >= lowest - 1e-12 && probability <= highest + 1e-12, check).toBe(true);
      const shares = deciding?.budget.reduce((sum, { share }) => sum + share, 0);
      if (shares !== undefined && shares > 0) expect(shares).toBeCloseTo(1, 9);
    }
    const welding = all.find(({ check, verdict }) => check === "maximum-zs" && verdict === "too-near");
    expect(welding?.conformity).toMatchObject({ rule: "simple", decision: { simple: "not-met", guarded: "too-near" } });
    for (const one of findings(await weigh([WORKSHOP, "--json"]))) expect(one).not.toHaveProperty("conformity");
  });

  test("says it in words within 80 columns, with the rule of the file", async () => {
    const file = { ...JSON.parse(readFileSync(WORKSHOP, "utf8")), decisionRule: "guarded" };
    const out = await weigh(["-", "--probability"], JSON.stringify(file));
    for (const line of out.split("\n")) expect([...line].length).toBeLessThanOrEqual(80);
    const flowing = out.replaceAll(/\s+/g, " ");
    expect(flowing).toContain("Probability that it is met: 48 % (U = 0.0589 Ω, k = 2).");
    expect(flowing).toContain("Simple acceptance: not met; guarded acceptance (chosen): too near to call.");
    expect(await weigh([WORKSHOP])).not.toContain("Probability");
  });

  test("gives it in a stream too", async () => {
    const line = JSON.stringify(JSON.parse(readFileSync(WORKSHOP, "utf8")));
    const out = await weigh(["-", "--json", "--probability"], `${line}\n${line}\n`);
    const [first, second] = out.trim().split("\n");
    expect(first).toBe(second);
    expect(findings(first as string).every(({ conformity }) => conformity !== undefined)).toBe(true);
  });

  test("where no accuracy is stated, a usual one is taken and said, and what it leaves open is too near", async () => {
    const file = JSON.parse(readFileSync(WORKSHOP, "utf8"));
    for (const instrument of file.instruments) delete instrument.accuracy;
    const parsed = parseInspection(JSON.stringify(file));
    if (!parsed.ok) throw new Error("does not parse");
    const { conformity } = assemble(parsed.file, true);
    const limits = [...(conformity ?? [])].filter(
      ([, { kind, probability }]) => kind === "limit" && probability !== null,
    );
    const doubtful = limits.filter(([, { probability }]) => probability !== null && probability < 0.95);
    expect(limits.length).toBeGreaterThan(doubtful.length);
    for (const [{ judgement }] of doubtful) expect(judgement.verdict).not.toBe("met");
    const out = await weigh(["-", "--probability"], JSON.stringify(file));
    expect(out.replaceAll(/\s+/g, " ")).toContain("what usual instruments are out by is taken");
  });
});
