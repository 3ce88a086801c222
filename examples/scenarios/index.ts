import { contentHash, parseInspectionData, printInspection } from "@good-grounds/inspection";
import { farmhouse } from "./farmhouse.ts";
import { terracedHouse } from "./terraced-house.ts";
import { workshop } from "./workshop.ts";

/** Every invented installation, by the name of its file. */
export const SCENARIOS = Object.freeze({ "terraced-house": terracedHouse, farmhouse, workshop });

/** A scenario as the text of an inspection file, signed for what stands in it. Throws with every problem when the scenario breaks the schema. */
export function textOf(scenario: unknown): string {
  const parsed = parseInspectionData(scenario);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues, null, 2));
  const { file } = parsed;
  const content = contentHash(file);
  const signed = parseInspectionData({ ...file, signatures: file.signatures.map((one) => ({ ...one, content })) });
  if (!signed.ok) throw new Error(JSON.stringify(signed.issues, null, 2));
  return printInspection(signed.file);
}
