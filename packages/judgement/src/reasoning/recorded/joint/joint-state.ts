import { CONNECTION_STATES } from "@good-grounds/core";
import { ofThings } from "../of-things.ts";
import { worded } from "../property.ts";

/** The state of a joint. */
export const jointState = worded("joint-state", "state of the joint", CONNECTION_STATES, (spoken) =>
  ofThings(spoken, "joints", ({ state }) => state),
);
