import { WETNESSES } from "@good-grounds/core";
import { ofThings } from "../of-things.ts";
import { worded } from "../property.ts";

/** How wet the place named is. */
export const placeWetness = worded("place-wetness", "dry or wet", WETNESSES, (spoken) =>
  ofThings(spoken, "places", ({ wetness }) => wetness),
);
