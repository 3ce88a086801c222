import { ofRcds } from "../of-things.ts";
import { quantity } from "../property.ts";

/** Operating time of the RCD at its rated residual current as measured. */
export const rcdTime = quantity("rcd-time", "operating time of the RCD", "second", (spoken) =>
  ofRcds(spoken, ({ timeAtRated }) => timeAtRated),
);
