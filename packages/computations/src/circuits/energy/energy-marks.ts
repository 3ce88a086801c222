import type { Evidence, Fact, Remark } from "@good-grounds/core";
import type { DeviceMarks, markedDevice } from "../device-figures.ts";

/** What the energy an overcurrent device lets through is found from. */
export interface EnergyMarks extends DeviceMarks {
  readonly breakingCapacity: Evidence<"ampere">;
  readonly energyClass: Fact<"1" | "2" | "3">;
  readonly letThrough: Evidence<"ampere-squared-second">;
}

/** The prospective currents an earth fault may have, A: least at the far end of the conductor, most at its beginning. */
export interface FaultRange {
  readonly least: Evidence<"ampere">;
  readonly most: Evidence<"ampere">;
}

export type Device = NonNullable<ReturnType<typeof markedDevice>>;

/**
 * The energy let through by an overcurrent device, A²s, at the worst current of the range: a band by what is published of
 * it, and where physics bounds it more closely, a band by what is to be expected as well.
 */
export interface OvercurrentEnergy {
  readonly shown: Evidence<"ampere-squared-second">;
  readonly expected?: Evidence<"ampere-squared-second">;
  /** Whether the device opens in less than 0.1 s at these faults, so that the formula with a time does not hold. */
  readonly instant: boolean;
  /** Which evidence is held, in words. */
  readonly remarks: readonly Remark[];
}
