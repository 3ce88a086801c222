import type { Calculation } from "../check.ts";
import { adiabaticSize } from "./adiabatic-size.ts";
import { armsReach } from "./arms-reach.ts";
import { combinedInsulation } from "./combined-insulation.ts";
import { conductorTemperature } from "./conductor-temperature.ts";
import { diversity } from "./diversity.ts";
import { expectedR1R2 } from "./expected-r1r2.ts";
import { expectedZs } from "./expected-zs.ts";
import { faultCurrent } from "./fault-current.ts";
import { faultTouchVoltage } from "./fault-touch-voltage.ts";
import { lengthFromResistance } from "./length-from-resistance.ts";
import { requiredTabulatedCapacity } from "./required-tabulated-capacity.ts";
import { ringReading } from "./ring-reading.ts";
import { sampleReach } from "./sample-reach.ts";
import { sampleSize } from "./sample-size.ts";
import { voltageDropCorrection } from "./voltage-drop-correction.ts";
import { voltageDropVolts } from "./voltage-drop-volts.ts";
import { withstandEnergy } from "./withstand-energy.ts";
import { zsAtLoad } from "./zs-at-load.ts";

/** Computations without a verdict. */
export const CALCULATIONS: readonly Calculation[] = Object.freeze([
  adiabaticSize,
  armsReach,
  combinedInsulation,
  conductorTemperature,
  diversity,
  expectedR1R2,
  expectedZs,
  faultCurrent,
  faultTouchVoltage,
  lengthFromResistance,
  requiredTabulatedCapacity,
  ringReading,
  sampleReach,
  sampleSize,
  voltageDropCorrection,
  voltageDropVolts,
  withstandEnergy,
  zsAtLoad,
]) as unknown as readonly Calculation[];
