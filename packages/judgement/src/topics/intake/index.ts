import type { Topic } from "../topic.ts";
import { connectorBlockOpen } from "./connector-block-open.ts";
import { distributorEquipmentDamaged } from "./distributor-equipment-damaged.ts";
import { gasOrWaterNearIntake } from "./gas-or-water-near-intake.ts";
import { intakeSurroundings } from "./intake-surroundings.ts";
import { loopedSupply } from "./looped-supply.ts";
import { meterTailsEntry } from "./meter-tails-entry.ts";
import { meterTailsExposed } from "./meter-tails-exposed.ts";
import { meterTailsLongRun } from "./meter-tails-long-run.ts";
import { meterTailsSize } from "./meter-tails-size.ts";
import { originIsolator } from "./origin-isolator.ts";
import { supplyDeviceUnknown } from "./supply-device-unknown.ts";
import { supplyPolarityReversed } from "./supply-polarity-reversed.ts";
import { supplyTampered } from "./supply-tampered.ts";
import { supplyVoltageOutOfLimits } from "./supply-voltage-out-of-limits.ts";

export const INTAKE: readonly Topic[] = Object.freeze([
  distributorEquipmentDamaged,
  supplyTampered,
  supplyDeviceUnknown,
  loopedSupply,
  supplyPolarityReversed,
  supplyVoltageOutOfLimits,
  meterTailsExposed,
  meterTailsSize,
  meterTailsEntry,
  meterTailsLongRun,
  connectorBlockOpen,
  originIsolator,
  intakeSurroundings,
  gasOrWaterNearIntake,
]);
