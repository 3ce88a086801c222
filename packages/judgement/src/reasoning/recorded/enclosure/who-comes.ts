import { COMERS, isKnownFact, KEY_HOLDERS } from "@good-grounds/core";
import { ofThings } from "../of-things.ts";
import { worded } from "../property.ts";

/** Who has the key of it; where that is not recorded, who comes there, to it or to the place named. */
export const whoComes = worded(
  "who-comes",
  "who has the key or comes there",
  [...new Set([...KEY_HOLDERS, ...COMERS])],
  (spoken) => [
    ...ofThings(spoken, "enclosures", ({ keyHolder, comers }) => (isKnownFact(keyHolder) ? keyHolder : comers)),
    ...ofThings(spoken, "places", ({ comers }) => comers),
  ],
);
