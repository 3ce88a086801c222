import { parseInspectionData, printInspection } from "@good-grounds/inspection";
import { farmhouse } from "./farmhouse.ts";
import { terracedHouse } from "./terraced-house.ts";
import { workshop } from "./workshop.ts";

/** Every invented installation, by the name of its file. */
export const SCENARIOS = Object.freeze({ "terraced-house": terracedHouse, farmhouse, workshop });

/** A scenario as the text of an inspection file. Throws with every problem when the scenario breaks the schema. */
export function textOf(scenario: unknown): string {
  const parsed = parseInspectionData(scenario);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues, null, 2));
  return printInspection(parsed.file);
}
