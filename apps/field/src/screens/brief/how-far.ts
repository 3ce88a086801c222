import type { Record as JobRecord } from "../../record/record.ts";
import type { HowFar } from "../../shell/screens.ts";
import { BRIEF } from "../../words/brief.ts";

/** What a report cannot do without. */
const NEEDED = [
  "brief/premises/address",
  "brief/client/name",
  "brief/use",
  "brief/tenure",
  "brief/nation",
  "brief/purpose",
  "inspectedOn",
  "edition",
];

export function briefHowFar(record: JobRecord): HowFar {
  const have = NEEDED.filter((path) => record.value(path) !== undefined).length;
  return { words: BRIEF.far(have, NEEDED.length), done: have === NEEDED.length };
}
