import {
  type DeviceStandard,
  type DeviceType,
  type EarthingSystem,
  type Evidence,
  type Fact,
  type Ground,
  isExact,
  isKnown,
  isKnownFact,
  type Reckoner,
  TERM,
} from "@good-grounds/core";
import { operatingCurrent, permittedDisconnectionTime } from "@good-grounds/tables";

/** The marks by which a device's figures are found. */
export interface DeviceMarks {
  readonly standard: Fact<DeviceStandard>;
  readonly type: Fact<DeviceType>;
  readonly rated: Evidence<"ampere">;
}

/** Standards whose figures depend on a type as well as on the rating. */
const TYPED: ReadonlySet<DeviceStandard> = new Set(["BS EN 60898", "BS EN 61009", "BS 3871"]);

/** What the figures of a device are found by: its standard, its type where the standard has several, its rating. */
export function marksOf({ standard, type, rated }: DeviceMarks): readonly Ground[] {
  if (isKnownFact(standard) && !TYPED.has(standard.word)) return [standard, rated];
  return [standard, type, rated];
}

/** A device as the tables ask for it; undefined while a mark that is needed is not known. */
export function markedDevice(marks: DeviceMarks) {
  const { standard, type, rated } = marks;
  if (!isKnownFact(standard) || !isExact(rated)) return undefined;
  const word = isKnownFact(type) ? type.word : null;
  if (word === null && TYPED.has(standard.word)) return undefined;
  return { standard: standard.word, type: word, rated: rated.value };
}

/** Permitted disconnection time by system, voltage and kind of circuit. */
export function permittedTime(
  system: Fact<EarthingSystem>,
  nominalVoltage: Evidence<"volt">,
  circuit: "final-41.1" | "other",
  reckon: Reckoner,
): Evidence<"second"> {
  const figure =
    isKnownFact(system) && isExact(nominalVoltage)
      ? permittedDisconnectionTime(system.word, nominalVoltage.value, circuit)
      : undefined;
  return reckon.lookedUp(TERM.disconnectionTime, figure, system, nominalVoltage);
}

/** The current that operates the device within a time, Ia. */
export function operatingCurrentWithin(
  marks: DeviceMarks,
  time: Evidence<"second">,
  reckon: Reckoner,
): Evidence<"ampere"> {
  const device = markedDevice(marks);
  const figure = device !== undefined && isKnown(time) ? operatingCurrent(device, time.value) : undefined;
  return reckon.lookedUp(TERM.operatingCurrent, figure, ...marksOf(marks), time);
}
