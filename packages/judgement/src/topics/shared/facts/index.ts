import type { FactOf } from "@good-grounds/core";
import { COVERING_FACTS } from "./covering.ts";
import { DISTANCE_FACTS } from "./distance.ts";
import { FIXING_FACTS } from "./fixing.ts";
import { OPENING_FACTS } from "./opening.ts";
import { OPENING_UP_FACTS } from "./opening-up.ts";
import { WEAR_FACTS } from "./wear.ts";
import { WHO_FACTS } from "./who-comes.ts";

/** The facts that basic protection rests on, in the order of a walk from the live part outwards. */
export const TOUCH_FACTS = Object.freeze({
  ...COVERING_FACTS,
  ...WEAR_FACTS,
  ...OPENING_FACTS,
  ...FIXING_FACTS,
  ...OPENING_UP_FACTS,
  ...WHO_FACTS,
  ...DISTANCE_FACTS,
}) satisfies Readonly<Record<string, FactOf>>;
