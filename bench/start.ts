/** Whole processes: the command on one installation over bare Node, and a report from cold. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { median, type Row } from "./measure.ts";

const ROUNDS = 15;
const path = (name: string) => fileURLToPath(new URL(`../${name}`, import.meta.url));

function took(args: readonly string[]): number {
  const start = performance.now();
  execFileSync(process.execPath, args, { stdio: "ignore" });
  return performance.now() - start;
}

export function benchStart(): readonly Row[] {
  const folder = mkdtempSync(join(tmpdir(), "good-grounds-bench-"));
  try {
    const command = path("apps/cli/bin/goodgrounds.mjs");
    const bare: number[] = [];
    const weigh: number[] = [];
    const report: number[] = [];
    for (let round = 0; round <= ROUNDS; round++) {
      const times = [
        took(["-e", "0"]),
        took([command, "weigh", path("examples/terraced-house.json")]),
        took([command, "report", path("examples/terraced-house.json"), "--out", join(folder, "r.pdf")]),
      ] as const;
      if (round === 0) continue;
      bare.push(times[0]);
      weigh.push(times[1]);
      report.push(times[2]);
    }
    return [
      { what: "bare Node", value: median(bare), unit: "ms" },
      { what: "weigh one installation, over bare Node", value: median(weigh) - median(bare), unit: "ms", target: 300 },
      { what: "report of 13 pages from cold", value: median(report), unit: "ms", target: 1000 },
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
