import { ofThings } from "../of-things.ts";
import { stated } from "../property.ts";

/** Whether its hinges carry. */
export const hingesCarry = stated("hinges-carry", "the hinges carry", (spoken) =>
  ofThings(spoken, "enclosures", (state) => state.hinges),
);
