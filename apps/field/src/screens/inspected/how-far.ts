import { ITEMS } from "@good-grounds/inspection/items";
import type { Record as JobRecord } from "../../record/record.ts";
import type { HowFar } from "../../shell/screens.ts";
import { INSPECTED } from "../../words/inspected.ts";
import { answered } from "./answers.ts";

export function inspectedHowFar(record: JobRecord): HowFar {
  const have = answered(record);
  return { words: INSPECTED.far(have, ITEMS.length), done: have === ITEMS.length };
}
