import { all, any, held, is, NEVER, no, oneKind, ranked, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** The earth of a PME supply is taken to where a broken supply neutral makes it dangerous. */
export const pmeExported = topic({
  id: "pme-exported",
  title: "PME earth taken to where it should not go",
  group: "earthing",
  items: ["earthing.arrangement", "special.other"],
  facts: {
    "pme-earth": yesNo({
      asks: "Is the earth used there the earth of a PME supply?",
      effort: "opened",
      yes: "the earth used there comes from a PME supply",
      no: "the supply is not PME, or the place has an earth of its own and the PME earth ends before it",
      worse: "yes",
    }),
  },
  contested: {},
  paths: [],
  departures: [],
  client: {},
  remedies: [],
  examples: [],
});
