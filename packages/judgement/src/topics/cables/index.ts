import type { Topic } from "../topic.ts";
import { cableDamaged } from "./cable-damaged.ts";
import { cableInWall } from "./cable-in-wall.ts";
import { cableMetalPartition } from "./cable-metal-partition.ts";
import { jointInaccessible } from "./joint-inaccessible.ts";
import { jointNotEnclosed } from "./joint-not-enclosed.ts";
import { rubberOrLeadCable } from "./rubber-or-lead-cable.ts";
import { sheathMissing } from "./sheath-missing.ts";

export const CABLES: readonly Topic[] = Object.freeze([
  cableDamaged,
  sheathMissing,
  cableInWall,
  cableMetalPartition,
  rubberOrLeadCable,
  jointNotEnclosed,
  jointInaccessible,
]);
