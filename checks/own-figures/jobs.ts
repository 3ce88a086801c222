import { type InspectionFile, parseInspectionData, resolveInstallation } from "@good-grounds/inspection";
import { lookAtOwnFigures } from "@good-grounds/judgement";
import { SCENARIOS } from "../../examples/scenarios/index.ts";
import { randomInstallation } from "./random-installation.ts";

/** Simulated jobs: the three scenarios of the examples and random installations, in turn. */
const KINDS: readonly ((seed: number) => object)[] = [...Object.values(SCENARIOS), randomInstallation];

/** The clean job of a number. Throws where the simulator breaks the schema. */
export function jobOf(n: number): InspectionFile {
  const make = KINDS[n % KINDS.length] as (seed: number) => object;
  const parsed = parseInspectionData(JSON.parse(JSON.stringify(make(1000 + Math.floor(n / KINDS.length)))));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return parsed.file;
}

/** Ids of the tests that show something on a job. */
export function shownOn(file: InspectionFile, earlier?: InspectionFile): readonly string[] {
  const parsed = parseInspectionData(file);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return lookAtOwnFigures(resolveInstallation(parsed.file), earlier).toConfirm.map(({ check }) => check);
}
