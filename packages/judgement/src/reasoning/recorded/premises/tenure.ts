import { TENURES } from "@good-grounds/core";
import { ofPremises } from "../of-things.ts";
import { worded } from "../property.ts";

/** How the premises are held. */
export const tenure = worded("tenure", "tenure", TENURES, (spoken) => ofPremises(spoken, ({ tenure }) => tenure));
