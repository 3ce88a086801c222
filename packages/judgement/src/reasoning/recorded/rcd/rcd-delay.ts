import { RCD_DELAYS } from "@good-grounds/core";
import { ofRcds } from "../of-things.ts";
import { worded } from "../property.ts";

/** Whether the RCD opens without delay or is selective. */
export const rcdDelay = worded("rcd-delay", "delay of the RCD", RCD_DELAYS, (spoken) =>
  ofRcds(spoken, ({ delay }) => delay),
);
