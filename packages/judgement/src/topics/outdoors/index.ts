import type { Topic } from "../topic.ts";
import { gardenCableUnprotected } from "./garden-cable-unprotected.ts";
import { hotTubOutdoors } from "./hot-tub-outdoors.ts";
import { outbuildingSupply } from "./outbuilding-supply.ts";
import { outdoorEnclosure } from "./outdoor-enclosure.ts";
import { outdoorLuminaireDamaged } from "./outdoor-luminaire-damaged.ts";
import { pondOrWaterFeature } from "./pond-or-water-feature.ts";

export const OUTDOORS: readonly Topic[] = Object.freeze([
  gardenCableUnprotected,
  hotTubOutdoors,
  outbuildingSupply,
  outdoorEnclosure,
  outdoorLuminaireDamaged,
  pondOrWaterFeature,
]);
