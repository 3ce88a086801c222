import { NATIONS } from "@good-grounds/core";
import { ofBrief } from "../file-leaves.ts";
import { worded } from "../property.ts";

/** The part of the United Kingdom, whose law holds. */
export const nation = worded("nation", "nation", NATIONS, (spoken) =>
  ofBrief(spoken, "nation", "nation", (brief) => brief.nation),
);
