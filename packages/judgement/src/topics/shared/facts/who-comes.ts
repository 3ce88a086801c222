import { ranked } from "@good-grounds/core";

/** Who can get to the live part, by a key or by walking up to it. */
export const WHO_FACTS = Object.freeze({
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
});
