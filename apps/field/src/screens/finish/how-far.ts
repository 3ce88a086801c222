import { membersOf } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import type { HowFar } from "../../shell/screens.ts";
import { FINISH } from "../../words/finish.ts";

/** Whether somebody has signed; whether the signature still holds is said on the screen itself. */
export function finishHowFar(record: JobRecord): HowFar {
  const count = membersOf(record, "signatures").length;
  return { words: FINISH.far(count), done: count > 0 };
}
