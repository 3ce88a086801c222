import { ACCESSORIES } from "./accessories/index.ts";
import { BATHS } from "./baths/index.ts";
import { BOARDS } from "./boards/index.ts";
import { CABLES } from "./cables/index.ts";
import { CIRCUITS } from "./circuits/index.ts";
import { EARTHING } from "./earthing/index.ts";
import { FIRE } from "./fire/index.ts";
import { IDENTIFICATION } from "./identification/index.ts";
import { INTAKE } from "./intake/index.ts";
import { OUTDOORS } from "./outdoors/index.ts";
import { RESIDUAL_CURRENT } from "./residual-current/index.ts";
import { SOURCES } from "./sources/index.ts";
import { SPECIAL } from "./special/index.ts";
import type { Topic } from "./topic.ts";

/** Every topic, in the order of a walk from the origin outwards. */
export const TOPICS: readonly Topic[] = Object.freeze([
  ...INTAKE,
  ...EARTHING,
  ...BOARDS,
  ...RESIDUAL_CURRENT,
  ...CIRCUITS,
  ...CABLES,
  ...ACCESSORIES,
  ...BATHS,
  ...OUTDOORS,
  ...SPECIAL,
  ...SOURCES,
  ...IDENTIFICATION,
  ...FIRE,
]);
