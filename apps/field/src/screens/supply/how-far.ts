import { shownWords } from "../../keypad/reading.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import type { HowFar } from "../../shell/screens.ts";
import { READINGS } from "../../words/readings.ts";
import { SHELL } from "../../words/shell.ts";
import { progressOf } from "../readings/progress.ts";
import { supplyGroups } from "./supply-fields.ts";

/** The system of earthing and how many readings of the origin there are. */
export function supplyHowFar(record: JobRecord): HowFar {
  const { done, all } = progressOf(record, supplyGroups(record));
  const system = shownWords(record.value("supply/earthing"));
  if (done === 0 && system === "") return { words: SHELL.nothingYet, done: false };
  return { words: [system, READINGS.done(done, all)].filter(Boolean).join(", "), done: done === all };
}
