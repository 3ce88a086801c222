import { PREMISES_USES } from "@good-grounds/core";
import { ofBrief } from "../file-leaves.ts";
import { worded } from "../property.ts";

/** What the premises are used for. */
export const premisesUse = worded("premises-use", "use of the premises", PREMISES_USES, (spoken) =>
  ofBrief(spoken, "use", "use of the premises", ({ use }) => use),
);
