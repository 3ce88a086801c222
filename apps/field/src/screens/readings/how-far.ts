import { membersOf } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import type { HowFar } from "../../shell/screens.ts";
import { READINGS } from "../../words/readings.ts";
import { SHELL } from "../../words/shell.ts";
import { circuitProgress } from "./progress.ts";

/** How far the readings of the whole job are. */
export function readingsHowFar(record: JobRecord): HowFar {
  let [done, all] = [0, 0];
  for (const board of membersOf(record, "boards"))
    for (const circuit of membersOf(record, `boards/${board}/circuits`)) {
      const one = circuitProgress(record, board, circuit);
      done += one.done;
      all += one.all;
    }
  return all === 0 ? { words: SHELL.nothingYet, done: false } : { words: READINGS.done(done, all), done: done === all };
}
