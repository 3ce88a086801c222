import { BUTTON_BESIDE_FAILED_TIME } from "./button-beside-failed-time.ts";
import { CANNOT_BE_TESTED_BESIDE_TIME } from "./cannot-be-tested-beside-time.ts";
import { DANGER_UNNAMED } from "./danger-unnamed.ts";
import { IN_ORDER_BESIDE_FAILED_CHECK } from "./in-order-beside-failed-check.ts";
import { IN_ORDER_BESIDE_NONE } from "./in-order-beside-none.ts";
import { LIMITATION_OVER_MEASURED } from "./limitation-over-measured.ts";
import { MADE_SAFE } from "./made-safe.ts";
import { NOT_APPLICABLE_BESIDE_RECORDED } from "./not-applicable-beside-recorded.ts";
import { OUTCOME_STATED_OTHERWISE } from "./outcome-stated-otherwise.ts";
import { POLARITY_BESIDE_READINGS } from "./polarity-beside-readings.ts";
import type { ContradictionRow } from "./row.ts";
import { STATED_AGAINST_FILE } from "./stated-against-file.ts";
import { TOLD_AND_UNTOLD } from "./told-and-untold.ts";

/** Every kind of contradiction, in the order in which they are shown. */
export const CONTRADICTION_ROWS: readonly ContradictionRow[] = Object.freeze([
  STATED_AGAINST_FILE,
  MADE_SAFE,
  TOLD_AND_UNTOLD,
  DANGER_UNNAMED,
  POLARITY_BESIDE_READINGS,
  BUTTON_BESIDE_FAILED_TIME,
  IN_ORDER_BESIDE_FAILED_CHECK,
  IN_ORDER_BESIDE_NONE,
  NOT_APPLICABLE_BESIDE_RECORDED,
  CANNOT_BE_TESTED_BESIDE_TIME,
  LIMITATION_OVER_MEASURED,
  OUTCOME_STATED_OTHERWISE,
]);
