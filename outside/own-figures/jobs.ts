import { type InspectionFile, parseInspectionData, resolveInstallation } from "@good-grounds/inspection";
import { lookAtOwnFigures } from "@good-grounds/readings";
import { SCENARIOS } from "../../examples/scenarios/index.ts";
import { randomInstallation } from "./random-installation.ts";

/** Simulated jobs: the three scenarios of the examples and random installations, in turn. */
const SCENARIO_KINDS = Object.values(SCENARIOS) as readonly ((seed: number) => object)[];
const KINDS = SCENARIO_KINDS.length + 1;
const FIRST_SEED = 1000;
const EARLIER_SEED = 900_000;

/** The clean job of a number. Throws where the simulator breaks the schema. */
export function jobOf(n: number): InspectionFile {
  return made(n, false);
}

/** The same installation as that of the job, inspected by itself at an earlier time. */
export function earlierOf(n: number): InspectionFile {
  return made(n, true);
}

function made(n: number, earlier: boolean): InspectionFile {
  const seed = FIRST_SEED + Math.floor(n / KINDS);
  const scenario = SCENARIO_KINDS[n % KINDS];
  const data =
    scenario === undefined ? randomInstallation(seed, earlier) : scenario(earlier ? seed + EARLIER_SEED : seed);
  const parsed = parseInspectionData(JSON.parse(JSON.stringify(data)));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return parsed.file;
}

/** Ids of the checks that show something on a job. */
export function shownOn(file: InspectionFile, earlier?: InspectionFile): readonly string[] {
  const parsed = parseInspectionData(file);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return lookAtOwnFigures(resolveInstallation(parsed.file), earlier).toConfirm.map(({ check }) => check);
}
