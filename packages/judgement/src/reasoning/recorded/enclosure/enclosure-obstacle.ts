import { OBSTACLES } from "@good-grounds/core";
import { ofThings } from "../of-things.ts";
import { worded } from "../property.ts";

/** The obstacle before live parts. */
export const enclosureObstacle = worded("enclosure-obstacle", "obstacle before the live parts", OBSTACLES, (spoken) =>
  ofThings(spoken, "enclosures", ({ obstacle }) => obstacle),
);
