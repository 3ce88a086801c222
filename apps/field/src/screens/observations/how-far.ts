import { join, membersOf } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import type { HowFar } from "../../shell/screens.ts";
import { HOW_MANY } from "../../words/observations.ts";
import { chosenOf } from "./read.ts";

/** How many observations there are, and how many are still without a classification. */
export function observationsHowFar(record: JobRecord): HowFar | undefined {
  const names = membersOf(record, "observations");
  if (names.length === 0) return undefined;
  const open = names.filter((name) => chosenOf(record, join("observations", name)) === undefined).length;
  return { words: HOW_MANY.observations(names.length, open), done: open === 0 };
}
