import type { Topic } from "../topic.ts";
import { conductingPlace } from "./conducting-place.ts";
import { farmProtection } from "./farm-protection.ts";
import { floorHeating } from "./floor-heating.ts";
import { medicalPlace } from "./medical-place.ts";
import { pitchOrMooringSupply } from "./pitch-or-mooring-supply.ts";
import { poolEquipment } from "./pool-equipment.ts";
import { saunaEquipment } from "./sauna-equipment.ts";

export const SPECIAL: readonly Topic[] = Object.freeze([
  conductingPlace,
  farmProtection,
  floorHeating,
  medicalPlace,
  pitchOrMooringSupply,
  poolEquipment,
  saunaEquipment,
]);
