import type { FactOf } from "@good-grounds/core";
import { COVERING_FACTS } from "./covering.ts";
import { DISTANCE_FACTS } from "./distance.ts";
import { FIXING_FACTS } from "./fixing.ts";
import { OPENING_FACTS } from "./opening.ts";
import { OPENING_UP_FACTS } from "./opening-up.ts";
import { PLACE_FACTS } from "./place.ts";
import { WEAR_FACTS } from "./wears.ts";

/**
 * The facts that basic protection rests on, in the order of a walk from a person to the live part. In this order the
 * decision diagram of the state is a third smaller than the other way round.
 */
export const TOUCH_FACTS = Object.freeze({
  ...OPENING_FACTS,
  ...FIXING_FACTS,
  ...OPENING_UP_FACTS,
  ...PLACE_FACTS,
  ...DISTANCE_FACTS,
  ...COVERING_FACTS,
  ...WEAR_FACTS,
}) satisfies Readonly<Record<string, FactOf>>;
