import {
  type DeviceStandard,
  type DeviceType,
  type Evidence,
  type Fact,
  isKnown,
  isKnownFact,
  type Reckoner,
  TERM,
} from "@good-grounds/core";
import { breakingCapacityOf } from "@good-grounds/tables";

/** The marks a device's breaking capacity is found by, A. */
export interface BreakingMarks {
  readonly standard: Fact<DeviceStandard>;
  readonly type: Fact<DeviceType>;
  readonly breakingCapacity: Evidence<"ampere">;
}

/**
 * The marked capacity; without it that of the type where the standard ties the two together, or the usual rating of the
 * standard, from memory. A BS 1361 fuse whose type was not seen breaks at least what the lesser type does.
 */
export function ownBreakingCapacity(
  { breakingCapacity: marked, standard, type }: BreakingMarks,
  reckon: Reckoner,
): Evidence<"ampere"> {
  if (isKnown(marked) || !isKnownFact(standard)) return marked;
  const byType = isKnownFact(type) ? breakingCapacityOf(standard.word, type.word) : undefined;
  if (byType !== undefined && isKnown(byType)) return reckon.lookedUp(TERM.breakingCapacity, byType, standard, type);
  const usual = breakingCapacityOf(standard.word);
  if (isKnown(usual)) return reckon.lookedUp(TERM.breakingCapacity, usual, standard);
  return standard.word === "BS 1361" ? reckon.oneOf(TERM.breakingCapacity, EITHER_TYPE) : marked;
}

const EITHER_TYPE = Object.freeze([breakingCapacityOf("BS 1361", "I"), breakingCapacityOf("BS 1361", "II")]);
