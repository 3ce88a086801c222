import { join, membersOf } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import type { HowFar } from "../../shell/screens.ts";
import { HOW_MANY } from "../../words/observations.ts";
import { chosenOf } from "../observations/read.ts";
import { untold } from "./told.ts";

/** Whether every danger found was told; nothing where none was found. */
export function dangerHowFar(record: JobRecord): HowFar | undefined {
  const dangers = membersOf(record, "observations").filter(
    (name) => chosenOf(record, join("observations", name)) === "C1",
  );
  if (dangers.length === 0) return undefined;
  const open = untold(record).length;
  return { words: HOW_MANY.dangers(dangers.length, open), done: open === 0 };
}
