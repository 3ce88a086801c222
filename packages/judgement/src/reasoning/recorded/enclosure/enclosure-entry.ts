import { ENTRIES } from "@good-grounds/core";
import { ofThings } from "../of-things.ts";
import { worded } from "../property.ts";

/** What gets in by the probes. */
export const enclosureEntry = worded("enclosure-entry", "what gets in", ENTRIES, (spoken) =>
  ofThings(spoken, "enclosures", ({ entry }) => entry),
);
