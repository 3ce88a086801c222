import type { ContestedPoint } from "@good-grounds/core";
import { DAMAGED_BEHIND_COVER } from "./damaged-behind-cover.ts";
import { DOOR_ONLY_SHUTS } from "./door-only-shuts.ts";
import { HEIGHT_OR_OBSTACLE } from "./height-or-obstacle.ts";
import { LAMP_CONTACT } from "./lamp-contact.ts";
import { LOCKED_PLACE } from "./locked-place.ts";
import { MANY_KEYS } from "./many-keys.ts";
import { OPEN_CORES } from "./open-cores.ts";

/** Where inspectors differ on basic protection, by the names that topics already give these points. */
export const TOUCH_POINTS = Object.freeze({
  "many-keys": MANY_KEYS,
  "door-only-shuts": DOOR_ONLY_SHUTS,
  distance: HEIGHT_OR_OBSTACLE,
  "lamp-contact": LAMP_CONTACT,
  "damaged-behind-cover": DAMAGED_BEHIND_COVER,
  "locked-board": LOCKED_PLACE,
  "open-cores": OPEN_CORES,
}) satisfies Readonly<Record<string, ContestedPoint>>;
