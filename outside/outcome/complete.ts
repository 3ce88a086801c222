import { type InspectionFile, parseInspectionData } from "@good-grounds/inspection";
import { inspectedItems } from "../../examples/scenarios/common.ts";
import { assemble } from "../../packages/assembly/src/index.ts";

/** A file as plain data, to be changed. */
export type Data = Record<string, unknown>;

/** A tested installation as a finished inspection: every item answered. */
export function complete(file: object): Data {
  const data = structuredClone(file) as Data;
  data.inspected = inspectedItems(["dwelling"], {}, {});
  return data;
}

/** The outcome of a file with its open points. */
export function outcomeOfData(data: object) {
  const parsed = parseInspectionData(data);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues.slice(0, 3)));
  return assemble(parsed.file as InspectionFile).outcome;
}
