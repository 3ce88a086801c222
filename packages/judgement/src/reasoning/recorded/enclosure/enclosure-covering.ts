import { COVERINGS } from "@good-grounds/core";
import { ofThings } from "../of-things.ts";
import { worded } from "../property.ts";

/** What covers the live part: within an enclosure, or the outermost layer of a length of conductors. */
export const enclosureCovering = worded("enclosure-covering", "covering of the live part", COVERINGS, (spoken) => [
  ...ofThings(spoken, "enclosures", ({ covering }) => covering),
  ...ofThings(spoken, "sections", ({ layer }) => layer),
]);
