import { TENURES } from "@good-grounds/core";
import { ofBrief } from "../file-leaves.ts";
import { worded } from "../property.ts";

/** How the premises are held. */
export const tenure = worded("tenure", "tenure", TENURES, (spoken) =>
  ofBrief(spoken, "tenure", "tenure", (brief) => brief.tenure),
);
