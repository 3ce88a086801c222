import { PRECAUTIONS } from "@good-grounds/inspection/precautions";
import type { Record as JobRecord } from "../../record/record.ts";
import { earthingOff } from "../../shell/safety.ts";
import type { HowFar } from "../../shell/screens.ts";
import { CAUTIONS } from "../../words/cautions.ts";
import { confirmedSteps } from "./precautions.ts";

export function cautionsHowFar(record: JobRecord): HowFar {
  const off = earthingOff(record) !== undefined;
  const have = confirmedSteps(record).size;
  return { words: CAUTIONS.summary(off, have, PRECAUTIONS.length), done: !off && have === PRECAUTIONS.length };
}
