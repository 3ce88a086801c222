import { no, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A main switch or RCD rated below the fuse ahead and the devices behind it. */
export const switchRatingLow = topic({
  id: "switch-rating-low",
  title: "Main switch or RCD rated below what feeds it",
  group: "boards",
  items: ["boards.devices", "boards.main-switch"],
  facts: {
    "rating-enough": yesNo({
      asks: "Is the switch or RCD rated at least as high as the fuse ahead, or as the devices behind it added up?",
      effort: "opened",
      yes: "the switch or RCD is rated for the fuse ahead or for all devices behind it",
      no: "the switch or RCD is rated below the fuse ahead and below the devices behind it",
      worse: "no",
    }),
    "load-within": yesNo({
      asks: "Does the load really seen or logged stay within its rating?",
      effort: "measured",
      yes: "the load stays within its rating",
      no: "the load goes beyond its rating",
      worse: "no",
    }),
  },
  contested: {},
  paths: [
    {
      id: "switch-overheats",
      hazard: "burns-or-fire",
      route: "the switch carries more than it is rated for and heats until something burns",
      exists: no("rating-enough"),
      layers: [
        {
          id: "load",
          provision: "surroundings",
          words: "a load that stays within its rating",
          gone: no("load-within"),
          sound: yes("load-within"),
          regulations: ["536.4.202"],
        },
        oneEventAway("enclosure", "barrier-or-enclosure", "the enclosure round it, which stands some heat", ["421.1"]),
      ],
    },
  ],
  departures: [
    {
      when: no("rating-enough"),
      words: "the switch or RCD is not protected against overload by the fuse ahead or the devices behind",
      regulations: ["536.4.202"],
    },
  ],
  client: {
    C2: "A main switch carries more than it is made for. It could get hot and burn. Change it soon.",
    C3: "A main switch is small for the supply. It can take what you use now. A larger one is advised.",
    FI: unsure("A main switch may be too small. We could not find out how much it carries. It must be looked at.", [
      "load-within",
      "rating-enough",
    ]),
    none: "The main switch is large enough.",
  },
  remedies: [
    {
      words: "Move a large load to another way, so that the load stays within the rating.",
      changes: { "load-within": "yes" },
    },
    { words: "Replace the switch or RCD by one of sufficient rating.", changes: { "rating-enough": "yes" } },
  ],
  examples: [
    {
      name: "63 A RCD behind 100 A, ways behind it add up to 90 A, load small",
      facts: { "rating-enough": false, "load-within": true },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: not protected by rating, load modest",
    },
    {
      name: "shower and charger take it beyond",
      facts: { "rating-enough": false, "load-within": false },
      possible: ["C2"],
      classification: "C2",
      source: "arithmetic: load above the rating, and no device stops it",
    },
    {
      name: "load not known",
      facts: {
        "rating-enough": false,
        "load-within": { notKnown: "limited", reason: "no logging agreed" },
      },
      possible: ["C3", "C2"],
      classification: "FI",
      source: "union over the load",
    },
    {
      name: "load not looked at",
      facts: { "rating-enough": false },
      possible: ["C3", "C2"],
      missing: ["load-within"],
      source: "union over the load",
    },
  ],
});
