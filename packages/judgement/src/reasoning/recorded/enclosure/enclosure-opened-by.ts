import { OPENED_BY } from "@good-grounds/core";
import { ofThings } from "../of-things.ts";
import { worded } from "../property.ts";

/** What it takes to open it. */
export const enclosureOpenedBy = worded("enclosure-opened-by", "what opens it", OPENED_BY, (spoken) =>
  ofThings(spoken, "enclosures", ({ openedBy }) => openedBy),
);
