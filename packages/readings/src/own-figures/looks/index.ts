import type { Look } from "../look.ts";
import { copiedRow } from "./copied-row.ts";
import { copiedSchedule } from "./copied-schedule.ts";
import { evenSteps } from "./even-steps.ts";
import { identicalInsulation } from "./identical-insulation.ts";
import { impossibleLength } from "./impossible-length.ts";
import { instruments } from "./instruments.ts";
import { lastDigits } from "./last-digits.ts";
import { littleSpread } from "./little-spread.ts";
import { liveBetweenDead } from "./live-between-dead.ts";
import { mixedRangeEnds } from "./mixed-range-ends.ts";
import { outsideVisit } from "./outside-visit.ts";
import { pace } from "./pace.ts";
import { r1r2Difference } from "./r1r2-difference.ts";
import { rcdTimes } from "./rcd-times.ts";
import { repeatedRow } from "./repeated-row.ts";
import { ringShares } from "./ring-shares.ts";
import { sameTemperature } from "./same-temperature.ts";
import { sameWords } from "./same-words.ts";
import { shiftedRows } from "./shifted-rows.ts";
import { slippedDecimal } from "./slipped-decimal.ts";
import { swappedRows } from "./swapped-rows.ts";
import { zsSum } from "./zs-sum.ts";

/** Every way of looking at one's own figures. */
export const LOOKS: readonly Look[] = Object.freeze([
  zsSum,
  r1r2Difference,
  ringShares,
  impossibleLength,
  identicalInsulation,
  mixedRangeEnds,
  rcdTimes,
  sameTemperature,
  lastDigits,
  evenSteps,
  littleSpread,
  slippedDecimal,
  swappedRows,
  shiftedRows,
  repeatedRow,
  copiedRow,
  copiedSchedule,
  pace,
  liveBetweenDead,
  outsideVisit,
  instruments,
  sameWords,
]);
