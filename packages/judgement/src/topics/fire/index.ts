import type { Topic } from "../topic.ts";
import { dustyOrStoragePlace } from "./dusty-or-storage-place.ts";
import { emergencyLighting } from "./emergency-lighting.ts";
import { escapeRouteEquipment } from "./escape-route-equipment.ts";
import { fireAlarmSupply } from "./fire-alarm-supply.ts";
import { fireStopping } from "./fire-stopping.ts";
import { firefightersSwitch } from "./firefighters-switch.ts";
import { hotEquipmentClearance } from "./hot-equipment-clearance.ts";

export const FIRE: readonly Topic[] = Object.freeze([
  dustyOrStoragePlace,
  emergencyLighting,
  escapeRouteEquipment,
  fireAlarmSupply,
  fireStopping,
  firefightersSwitch,
  hotEquipmentClearance,
]);
