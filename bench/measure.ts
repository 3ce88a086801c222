import { spawn } from "node:child_process";
import { once } from "node:events";

/** One line of a result. `ratio` is against the first line of its group; `target` is what was asked for. */
export interface Row {
  readonly what: string;
  readonly value: number;
  readonly unit: string;
  readonly ratio?: number;
  readonly target?: number;
}

/** Processor time of this process so far, ms. On a busy machine it drifts far less than the clock. */
export function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/**
 * Processor time of each work, ms: all of them in turn, round by round, and the best of each. Other work on the machine only
 * adds, so the best is what it takes. `times`: how often a work is done for one measurement.
 */
export function bestOf<Name extends string>(
  works: Readonly<Record<Name, () => unknown>>,
  rounds: number,
  times = 1,
): Readonly<Record<Name, number>> {
  const best = {} as Record<Name, number>;
  for (let round = 0; round < rounds; round++)
    for (const [name, work] of Object.entries(works) as [Name, () => unknown][]) {
      const start = processorTime();
      for (let i = 0; i < times; i++) work();
      const took = (processorTime() - start) / times;
      best[name] = Math.min(best[name] ?? Number.POSITIVE_INFINITY, took);
    }
  return best;
}

/** Has a process say at its end how much processor time it took, threads and start included. */
const SAYS_AT_END = `data:text/javascript,process.on("exit",()=>process.stderr.write("\\nPROCESSOR "+JSON.stringify(process.cpuUsage())))`;

/** Runs Node with these arguments. What it prints is thrown away, but the number of its lines. */
export async function processorTimeOf(
  args: readonly string[],
): Promise<{ readonly milliseconds: number; readonly lines: number; readonly code: number }> {
  const child = spawn(process.execPath, ["--import", SAYS_AT_END, ...args], { stdio: ["ignore", "pipe", "pipe"] });
  let [lines, said] = [0, ""];
  child.stdout.on("data", (chunk: Buffer) => {
    for (const byte of chunk) if (byte === 10) lines += 1;
  });
  child.stderr.on("data", (chunk: Buffer) => {
    said = (said + chunk.toString()).slice(-4000);
  });
  const [code] = await once(child, "close");
  const { user, system } = JSON.parse([...said.matchAll(/PROCESSOR (\{.*\})/g)].at(-1)?.[1] ?? "{}");
  return { milliseconds: (user + system) / 1000, lines, code };
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  const upper = sorted[middle] ?? Number.NaN;
  return sorted.length % 2 === 1 ? upper : (upper + (sorted[middle - 1] ?? Number.NaN)) / 2;
}
