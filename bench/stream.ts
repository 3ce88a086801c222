/** 100,000 ten-circuit installations as JSON lines through the built command, on all cores, with the memory it takes. */
import { spawn } from "node:child_process";
import { once } from "node:events";
import { createWriteStream, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseInspection } from "@good-grounds/inspection";
import type { Row } from "./measure.ts";

const LINES = 100_000;
const CIRCUITS = 10;

/** The terraced house with exactly ten circuits, and no two lines alike. */
function lineMaker(): (n: number) => string {
  const parsed = parseInspection(readFileSync(new URL("../examples/terraced-house.json", import.meta.url), "utf8"));
  if (!parsed.ok) throw new Error("example does not parse");
  const file = structuredClone(parsed.file);
  const [board] = file.boards;
  const [first] = board?.circuits ?? [];
  if (board === undefined || first === undefined) throw new Error("example has no circuit");
  while (board.circuits.length < CIRCUITS)
    board.circuits.push({ ...structuredClone(first), id: `x${board.circuits.length}` });
  file.photographs = [];
  file.observations = file.observations.map(({ photographs: _, ...rest }) => rest);
  const text = JSON.stringify(file);
  return (n) => text.replace(file.id, `N${n}`);
}

export async function benchStream(lines = LINES): Promise<readonly Row[]> {
  const folder = mkdtempSync(join(tmpdir(), "good-grounds-bench-"));
  try {
    const path = join(folder, "many.jsonl");
    const make = lineMaker();
    const out = createWriteStream(path);
    for (let n = 0; n < lines; n++) if (!out.write(`${make(n)}\n`)) await once(out, "drain");
    out.end();
    await once(out, "finish");
    const command = fileURLToPath(new URL("../apps/cli/bin/goodgrounds.mjs", import.meta.url));
    const start = performance.now();
    const child = spawn(process.execPath, [command, "weigh", path], { stdio: ["ignore", "pipe", "inherit"] });
    let peak = 0;
    let seen = 0;
    const watch = setInterval(() => {
      peak = Math.max(peak, residentMegabytes(child.pid ?? 0));
    }, 50);
    child.stdout.on("data", (chunk: Buffer) => {
      for (const byte of chunk) if (byte === 10) seen += 1;
    });
    const [code] = await once(child, "close");
    clearInterval(watch);
    if (code !== 0 || seen !== lines) throw new Error(`exit ${code}, ${seen} of ${lines} lines`);
    const seconds = (performance.now() - start) / 1000;
    return [
      {
        what: `${lines} installations of ${CIRCUITS} circuits streamed on ${availableParallelism()} cores`,
        value: seconds,
        unit: "s",
      },
      { what: "installations a second", value: lines / seconds, unit: "1/s" },
      { what: "largest resident memory", value: peak, unit: "MB", target: 400 },
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Worker threads share the process, so its resident memory is all of it. */
function residentMegabytes(pid: number): number {
  try {
    const kilobytes = /VmRSS:\s+(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, "utf8"))?.[1];
    return Number(kilobytes ?? 0) / 1024;
  } catch {
    return 0;
  }
}
