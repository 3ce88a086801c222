/**
 * What a planted fault leaves in the readings where nothing tells of it: the change it makes to each reading of its
 * circuits, beside what that reading may be out by, given all others. Installations and faults are those of
 * `outside/alarms`. Writes bench/results/unseen.md. `node bench/unseen.ts [--faults 24] [--seed 1]`
 */
import { writeFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { parseInspectionData, resolveInstallation } from "@good-grounds/inspection";
import { Draws } from "../outside/alarms/draws.ts";
import type { Fault } from "../outside/alarms/faults/fault.ts";
import { FAULTS } from "../outside/alarms/faults/index.ts";
import { drawHouse } from "../outside/alarms/house/draw-house.ts";
import { careOf, type FaultyJob, faultyJob, newIn } from "../outside/alarms/job.ts";
import { Site } from "../outside/alarms/site/site.ts";
import { type Written, written } from "../outside/alarms/site/write.ts";
import { boardReadings, fitBoard } from "../packages/readings/src/diagnosis/installation/board-fit.ts";

const { values } = parseArgs({
  options: { faults: { type: "string", default: "24" }, seed: { type: "string", default: "1" } },
});

/** A reading by its place in the file. */
interface Doubted {
  readonly value: number;
  /** Standard deviation given every other reading and the cable. */
  readonly deviation: number;
}

/** The readings of circuits that were held against the rest of their board. */
function readingsOf(file: FaultyJob["file"], at: ReadonlySet<string>): ReadonlyMap<string, Doubted> {
  const parsed = parseInspectionData(structuredClone(file));
  if (!parsed.ok) throw new Error("the simulated file is refused");
  const installation = resolveInstallation(parsed.file);
  const found = new Map<string, Doubted>();
  for (const board of installation.boards) {
    const readings = boardReadings(board, installation, new Map(), undefined, new Set());
    const fit = readings && fitBoard(readings, { kind: "plain" });
    for (const { block, sound } of fit?.circuits ?? [])
      for (const [i, { path, low, high }] of sound.expected.entries())
        if (at.has(block.circuit.id))
          found.set(path.join("/"), { value: block.readings[i]?.value ?? Number.NaN, deviation: (high - low) / 3.92 });
  }
  return found;
}

/** The file of the same job without the fault, which is drawn from the same seed. */
function soundFile(fault: Fault, seed: string, level: number): Written {
  for (let attempt = 0; attempt < 60; attempt++) {
    const draws = new Draws(`${seed}/${attempt}`);
    const house = drawHouse(draws);
    if (fault.plant(house, draws.of(`fault/${fault.id}`)) === null) continue;
    return written(new Site(house, careOf(level), draws.of("site")));
  }
  throw new Error(`no house for ${fault.id}`);
}

function traceOf(job: FaultyJob, without: Written): number {
  const at = new Set(job.planted.at);
  const [sound, faulty] = [readingsOf(without, at), readingsOf(job.file, at)];
  const apart = [...faulty].map(([path, { value }]) => {
    const before = sound.get(path);
    return before === undefined ? 0 : Math.abs(value - before.value) / Math.max(before.deviation, 0.005);
  });
  return Math.max(0, ...apart);
}

interface Unseen {
  readonly traced: number;
  readonly traces: readonly number[];
}

function unseenOf(fault: Fault): Unseen {
  let traced = 0;
  const traces: number[] = [];
  for (let i = 0; i < Number(values.faults); i++) {
    const [seed, level] = [`${values.seed}/${fault.id}/${i}`, (i % 4) + 1];
    const job = faultyJob(fault, seed, careOf(level));
    if (job === null || !job.traced || fault.inOutcome === true) continue;
    traced++;
    const { raised, told, open } = newIn(job);
    if (raised.length + told.length + open.length === 0) traces.push(traceOf(job, soundFile(fault, seed, level)));
  }
  return { traced, traces: traces.sort((a, b) => a - b) };
}

const rows = FAULTS.flatMap((fault): string[] => {
  process.stderr.write(`${fault.id}...\n`);
  const { traced, traces } = unseenOf(fault);
  if (traces.length === 0) return [];
  const count = (low: number, high: number) => traces.filter((one) => one >= low && one < high).length;
  const middle = traces[traces.length >> 1] ?? 0;
  return [
    `| ${fault.says} | ${traces.length} of ${traced} | ${middle.toFixed(1)} | ${count(0, 3)} | ${count(3, 5)} | ${count(5, Number.POSITIVE_INFINITY)} |`,
  ];
});

const text = [
  "# Faults that nothing tells of",
  "",
  `Seed ${values.seed}, ${values.faults} jobs for each kind of fault, at four levels of care in turn. *Trace*: the greatest change that the fault makes to a reading of its circuits, in standard deviations of that reading given all others and the cable. Below 3 it is within what a sound circuit shows; from about 5 on a fault of 3 in 100 circuits is likelier than chance. [what-cannot-be-seen.md](../../docs/what-cannot-be-seen.md) says why. Readings of origin, boards and points of a ring are not in the trace.`,
  "",
  "| kind | told of by nothing | trace in the middle | below 3 | 3 to 5 | above 5 |",
  "|---|---|---|---|---|---|",
  ...rows,
];
writeFileSync(new URL("results/unseen.md", import.meta.url), `${text.join("\n")}\n`);
