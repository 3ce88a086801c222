import { CONNECTION_STATES } from "@good-grounds/core";
import { ofBonds } from "../of-things.ts";
import { worded } from "../property.ts";

/** The condition of the bond and its clamps. */
export const bondCondition = worded("bond-condition", "condition of the bond", CONNECTION_STATES, (spoken) =>
  ofBonds(spoken, ({ condition }) => condition),
);
