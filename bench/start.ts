/** Whole processes in processor time: the command on one installation over bare Node, and a report from cold. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { processorTimeOf, type Row } from "./measure.ts";

const ROUNDS = 12;
const path = (name: string) => fileURLToPath(new URL(`../${name}`, import.meta.url));

export async function benchStart(): Promise<readonly Row[]> {
  const folder = mkdtempSync(join(tmpdir(), "good-grounds-bench-"));
  try {
    const command = path("apps/cli/bin/goodgrounds.mjs");
    const house = path("examples/terraced-house.json");
    const works: Readonly<Record<string, readonly string[]>> = {
      bare: ["-e", "0"],
      usage: [command, "--version"],
      weigh: [command, "weigh", house],
      report: [command, "report", house, "--out", join(folder, "r.pdf")],
    };
    const best: Record<string, number> = {};
    for (let round = 0; round < ROUNDS; round++)
      for (const [name, args] of Object.entries(works))
        best[name] = Math.min(best[name] ?? Number.POSITIVE_INFINITY, (await processorTimeOf(args)).milliseconds);
    const { bare = Number.NaN, usage = Number.NaN, weigh = Number.NaN, report = Number.NaN } = best;
    return [
      { what: "bare Node", value: bare, unit: "ms" },
      { what: "the command by itself, over bare Node", value: usage - bare, unit: "ms", ratio: usage / bare },
      { what: "weigh one installation, over bare Node", value: weigh - bare, unit: "ms", ratio: weigh / bare },
      { what: "report of 13 pages from cold", value: report, unit: "ms", ratio: report / bare },
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
