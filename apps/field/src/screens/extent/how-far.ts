import { membersOf } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import type { HowFar } from "../../shell/screens.ts";
import { EXTENT } from "../../words/extent.ts";

export function extentHowFar(record: JobRecord): HowFar {
  const agreed = ["extent/covered", "extent/agreedWith"].every((path) => record.value(path) !== undefined);
  return { words: EXTENT.far(agreed, membersOf(record, "limitations").length), done: agreed };
}
