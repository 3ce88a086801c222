/**
 * What is raised on sound jobs at four levels of care, and what is found of one planted fault a job. Installations, meters
 * and hands are those of `outside/alarms`, which know nothing of the diagnosis. Writes bench/results/alarms.md.
 * `node bench/alarms.ts [--jobs 300] [--faults 40] [--seed 1]`
 */
import { writeFileSync } from "node:fs";
import { cpus, totalmem } from "node:os";
import { parseArgs } from "node:util";
import { FAULTS } from "../outside/alarms/faults/index.ts";
import { tryFault } from "../outside/alarms/faulty.ts";
import { faultLines, soundLines } from "../outside/alarms/results.ts";
import { countSound } from "../outside/alarms/sound.ts";

const { values } = parseArgs({
  options: {
    jobs: { type: "string", default: "300" },
    faults: { type: "string", default: "40" },
    seed: { type: "string", default: "1" },
    out: { type: "string" },
  },
});
const [jobs, faults] = [wholeNumber("jobs"), wholeNumber("faults")];

function wholeNumber(name: "jobs" | "faults"): number {
  const number = Number(values[name]);
  if (!Number.isSafeInteger(number) || number < 0)
    throw new Error(`--${name} takes a whole number, not "${values[name]}"`);
  return number;
}

const sound = [1, 2, 3, 4].map((level) => {
  process.stderr.write(`sound jobs, level ${level}...\n`);
  return countSound(level, jobs, values.seed);
});
const faulty = FAULTS.map((fault) => {
  process.stderr.write(`${fault.id}...\n`);
  return { fault, results: tryFault(fault, faults, values.seed) };
});

const head = [
  "# Alarms on sound jobs, and faults found",
  "",
  `${cpus()[0]?.model ?? "unknown processor"}, ${cpus().length} cores, ${Math.round(totalmem() / 2 ** 30)} GiB, Node ${process.version}. Seed ${values.seed}; ${jobs} sound jobs at each level of care, ${faults} jobs for each kind of fault. Shares stand with their 95 % interval by Wilson's score.`,
  "",
  "The simulator in `outside/alarms` was written from physics and trade knowledge, apart from the diagnosis and from every model of readings in `packages`. A sound job is one in which every limit is met by what is there, however narrowly.",
  "",
];
const text = [...head, ...soundLines(sound), ...faultLines(faulty)].join("\n");
writeFileSync(values.out ?? new URL("results/alarms.md", import.meta.url), `${text}\n`);
