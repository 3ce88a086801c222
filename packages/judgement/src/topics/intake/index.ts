import type { Topic } from "../topic.ts";
import { distributorEquipmentDamaged } from "./distributor-equipment-damaged.ts";
import { intakeSurroundings } from "./intake-surroundings.ts";
import { loopedSupply } from "./looped-supply.ts";
import { meterTailsExposed } from "./meter-tails-exposed.ts";
import { meterTailsSize } from "./meter-tails-size.ts";
import { originIsolator } from "./origin-isolator.ts";
import { supplyDeviceUnknown } from "./supply-device-unknown.ts";
import { supplyPolarityReversed } from "./supply-polarity-reversed.ts";
import { supplyVoltageOutOfLimits } from "./supply-voltage-out-of-limits.ts";

export const INTAKE: readonly Topic[] = Object.freeze([
  distributorEquipmentDamaged,
  supplyDeviceUnknown,
  loopedSupply,
  supplyPolarityReversed,
  supplyVoltageOutOfLimits,
  meterTailsExposed,
  meterTailsSize,
  originIsolator,
  intakeSurroundings,
]);
