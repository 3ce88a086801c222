import type { Topic } from "../topic.ts";
import { batteryIsolation } from "./battery-isolation.ts";
import { batteryPlace } from "./battery-place.ts";
import { evDirectCurrent } from "./ev-direct-current.ts";
import { evOpenPen } from "./ev-open-pen.ts";
import { generatorChangeover } from "./generator-changeover.ts";
import { islandEarthReference } from "./island-earth-reference.ts";
import { pvCableDamaged } from "./pv-cable-damaged.ts";
import { pvIsolation } from "./pv-isolation.ts";
import { sourceOnFinalCircuit } from "./source-on-final-circuit.ts";

export const SOURCES: readonly Topic[] = Object.freeze([
  batteryIsolation,
  batteryPlace,
  evDirectCurrent,
  evOpenPen,
  generatorChangeover,
  islandEarthReference,
  pvCableDamaged,
  pvIsolation,
  sourceOnFinalCircuit,
]);
