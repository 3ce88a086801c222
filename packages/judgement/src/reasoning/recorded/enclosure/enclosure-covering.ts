import { COVERINGS } from "@good-grounds/core";
import { ofThings } from "../of-things.ts";
import { worded } from "../property.ts";

/** What covers the live part within. */
export const enclosureCovering = worded("enclosure-covering", "covering of the live part", COVERINGS, (spoken) =>
  ofThings(spoken, "enclosures", ({ covering }) => covering),
);
