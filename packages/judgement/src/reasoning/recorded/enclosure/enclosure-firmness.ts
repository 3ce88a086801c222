import { FIRMNESSES } from "@good-grounds/core";
import { ofThings } from "../of-things.ts";
import { worded } from "../property.ts";

/** How whole and firm it is. */
export const enclosureFirmness = worded("enclosure-firmness", "how whole and firm it is", FIRMNESSES, (spoken) =>
  ofThings(spoken, "enclosures", ({ firmness }) => firmness),
);
