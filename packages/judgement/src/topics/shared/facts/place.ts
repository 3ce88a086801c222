import { ranked, yesNo } from "@good-grounds/core";

/** Who comes to a live part, and what kind of place it is in. */
export const PLACE_FACTS = Object.freeze({
  "who-comes": ranked({
    asks: "Who has the key, or where there is none, who comes there?",
    effort: "glance",
    values: {
      "skilled-only": "only skilled persons, or instructed persons under them, have the key or come there",
      "named-keeper": "one named keeper has the key",
      "many-keys": "many people have the key, or the key is a common one",
      anyone: "anyone can open it or come there",
      "children-or-less-able": "children or people less able come there by themselves, as in a school or a care home",
    },
  }),
  "wet-or-conductive": yesNo({
    asks: "Is the place wet, or do people stand in it among earthed metal or on a conducting floor?",
    effort: "glance",
    yes: "the place is wet, or closed in by conducting surfaces",
    no: "the place is dry, and its surfaces do not conduct",
    worse: "yes",
  }),
});
