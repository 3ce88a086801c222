import { CLASSIFICATIONS, type Classification } from "@good-grounds/core";
import { join } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import type { Record as JobRecord } from "../../record/record.ts";

export function textAt(record: JobRecord, path: string): string {
  const value = record.value(path);
  return typeof value === "string" ? value : "";
}

/** The classification somebody chose for an observation. */
export function chosenOf(record: JobRecord, observation: string): Classification | undefined {
  const choice = record.value(join(observation, "choice")) as { readonly classification?: Value } | undefined;
  return CLASSIFICATIONS.find((one) => one === choice?.classification);
}

/** Everything below a place that is one value each: facts by name, positions by point. */
export function valuesBelow(record: JobRecord, path: string): Readonly<Record<string, Value>> {
  return Object.fromEntries(
    record.names(path).flatMap((name) => {
      const value = record.value(join(path, name));
      return value === undefined || value === null ? [] : [[name, value] as const];
    }),
  );
}
