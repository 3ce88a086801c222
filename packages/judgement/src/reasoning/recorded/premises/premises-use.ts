import { PREMISES_USES } from "@good-grounds/core";
import { ofPremises } from "../of-things.ts";
import { worded } from "../property.ts";

/** What the premises are used for. */
export const premisesUse = worded("premises-use", "use of the premises", PREMISES_USES, (spoken) =>
  ofPremises(spoken, ({ use }) => use),
);
