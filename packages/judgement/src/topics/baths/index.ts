import type { Topic } from "../topic.ts";
import { bathEquipmentInZone } from "./bath-equipment-in-zone.ts";
import { bathHeaterInReach } from "./bath-heater-in-reach.ts";
import { bathRcdAndBonding } from "./bath-rcd-and-bonding.ts";
import { bathSocketPosition } from "./bath-socket-position.ts";
import { bathSwitchInReach } from "./bath-switch-in-reach.ts";
import { shaverOutlet } from "./shaver-outlet.ts";

export const BATHS: readonly Topic[] = Object.freeze([
  bathEquipmentInZone,
  bathHeaterInReach,
  bathRcdAndBonding,
  bathSocketPosition,
  bathSwitchInReach,
  shaverOutlet,
]);
