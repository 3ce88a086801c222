import type { Calculation } from "../check.ts";
import { adiabaticKFactor } from "./adiabatic-k-factor.ts";
import { resistancePerMetre } from "./conductor-resistance.ts";
import { energyLimit } from "./energy-limit.ts";
import { operatingCurrentWithinTime } from "./operating-current.ts";
import { permittedTime } from "./permitted-disconnection-time.ts";
import { permittedElectrodeResistance } from "./permitted-electrode-resistance.ts";
import { protectiveSizes } from "./protective-sizes.ts";
import { ratingFactors } from "./rating-factors.ts";
import { rcdTimes } from "./rcd-times.ts";
import { capacityOfCable } from "./tabulated-capacity.ts";
import { temperatureFactorOf } from "./temperature-factor.ts";

/** Tables as computations of their own. */
export const LOOKUPS: readonly Calculation[] = Object.freeze([
  permittedTime,
  operatingCurrentWithinTime,
  resistancePerMetre,
  temperatureFactorOf,
  capacityOfCable,
  ratingFactors,
  adiabaticKFactor,
  protectiveSizes,
  rcdTimes,
  permittedElectrodeResistance,
  energyLimit,
]) as unknown as readonly Calculation[];
