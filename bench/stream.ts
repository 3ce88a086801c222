/** Installations of ten circuits as JSON lines through the built command, on all cores: processor time, and how it grows. */
import { once } from "node:events";
import { createWriteStream, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseInspection } from "@good-grounds/inspection";
import { processorTimeOf, type Row } from "./measure.ts";

const CIRCUITS = 10;
const command = fileURLToPath(new URL("../apps/cli/bin/goodgrounds.mjs", import.meta.url));

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

/** Processor time of so many lines, ms. */
async function took(lines: number, ...options: readonly string[]): Promise<number> {
  const folder = mkdtempSync(join(tmpdir(), "good-grounds-bench-"));
  try {
    const path = join(folder, "many.jsonl");
    const make = lineMaker();
    const out = createWriteStream(path);
    for (let n = 0; n < lines; n++) if (!out.write(`${make(n)}\n`)) await once(out, "drain");
    out.end();
    await once(out, "finish");
    const { milliseconds, lines: seen, code } = await processorTimeOf([command, "weigh", path, ...options]);
    if (code !== 0 || seen !== lines) throw new Error(`exit ${code}, ${seen} of ${lines} lines`);
    return milliseconds;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/**
 * What one more job takes, from a number of jobs and twice as many: start and warming up fall out. Two cores share it, and
 * 100,000 jobs take 50,000 times as long on each.
 */
async function rows(
  what: string,
  jobs: number,
  target: number,
  ...options: readonly string[]
): Promise<readonly Row[]> {
  const [one, two, four] = [
    await took(jobs, ...options),
    await took(2 * jobs, ...options),
    await took(4 * jobs, ...options),
  ];
  const each = (four - two) / (2 * jobs);
  return [
    { what: `${what}: ${jobs} jobs of ${CIRCUITS} circuits`, value: one, unit: "ms" },
    { what: `${2 * jobs} jobs`, value: two, unit: "ms", ratio: two / one },
    { what: `${4 * jobs} jobs`, value: four, unit: "ms", ratio: four / one },
    { what: "each further job", value: each, unit: "ms" },
    { what: "100,000 jobs on two cores, at that", value: each * 50, unit: "s", target },
  ];
}

export async function benchStream(): Promise<readonly Row[]> {
  return [
    ...(await rows("without misfits", 1000, 60)),
    ...(await rows("with everything, as JSON", 150, 400, "--json")),
  ];
}
