import { RCD_TYPES } from "@good-grounds/core";
import { ofRcds } from "../of-things.ts";
import { worded } from "../property.ts";

/** The waveform type of the RCD as marked. */
export const rcdType = worded("rcd-type", "type of the RCD", RCD_TYPES, (spoken) => ofRcds(spoken, ({ type }) => type));
