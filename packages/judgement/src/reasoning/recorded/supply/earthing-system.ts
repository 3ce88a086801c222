import { EARTHING_SYSTEMS } from "@good-grounds/core";
import { ofSupply } from "../of-things.ts";
import { worded } from "../property.ts";

/** TN-S, TN-C-S, TT or IT. */
export const earthingSystem = worded("earthing-system", "system earthing", EARTHING_SYSTEMS, (spoken) =>
  ofSupply(spoken, ({ earthing }) => earthing),
);
