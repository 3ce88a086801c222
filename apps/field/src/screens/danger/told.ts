import { join, membersOf } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { chosenOf, textAt } from "../observations/read.ts";

/** Whether somebody was told of a danger, with the time. */
export function isTold(record: JobRecord, observation: string): boolean {
  const safe = (record.value(join(observation, "madeSafe")) ?? {}) as { readonly [name: string]: Value };
  return ["done", "told", "at"].every((name) => typeof safe[name] === "string" && safe[name] !== "");
}

/** Dangers of which nobody was told and no reason is written: the job cannot be called finished with them. */
export function untold(record: JobRecord): readonly string[] {
  return membersOf(record, "observations").filter((name) => {
    const at = join("observations", name);
    return chosenOf(record, at) === "C1" && !isTold(record, at) && textAt(record, join(at, "untold")) === "";
  });
}
