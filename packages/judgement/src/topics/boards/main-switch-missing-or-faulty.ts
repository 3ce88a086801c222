import { any, is, NEVER, not, ranked, unsure } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** No switch for the whole installation, or one that does not do its work. */
export const mainSwitchMissingOrFaulty = topic({
  id: "main-switch-missing-or-faulty",
  title: "Main switch missing or faulty",
  group: "boards",
  items: ["boards.main-switch", "intake.isolator"],
  facts: {
    switch: ranked({
      asks: "Is there a main switch as near as practicable to the origin?",
      effort: "glance",
      values: {
        there: "there is a main switch near the origin",
        far: "the main switch stands far from the origin, and the user gets to it",
        none: "there is no main switch",
      },
    }),
    works: ranked({
      asks: "Worked by hand and proved, does it open and close as it shows?",
      effort: "measured",
      values: {
        well: "the main switch opens and closes as it shows, or there is none to try",
        stiff: "the main switch is stiff or its marking is unclear, and it opens every pole",
        "does-not-open": "the main switch does not open, or a pole stays closed while it shows off",
      },
    }),
  },
  contested: {},
  paths: [
    {
      id: "stays-live",
      hazard: "contact-with-live-parts",
      route: "the installation cannot be made dead in an accident or for work, and somebody stays or comes in contact",
      exists: any(is("switch", "none"), is("works", "does-not-open")),
      layers: [
        oneEventAway("no-need", "barrier-or-enclosure", "enclosures, so that nobody touches live parts", ["416.2.1"]),
        {
          id: "main-switch",
          provision: "isolation",
          words: "a main switch that makes the installation dead",
          gone: any(is("switch", "none"), is("works", "does-not-open")),
          sound: NEVER,
          regulations: ["462.1", "462.1.201", "643.10"],
        },
      ],
    },
  ],
  departures: [
    {
      when: not(is("switch", "there")),
      words: "there is no main switch as near as practicable to the origin",
      regulations: ["462.1.201"],
    },
    {
      when: not(is("works", "well")),
      words: "the main switch does not work or show as it should",
      regulations: ["643.10"],
    },
  ],
  client: {
    C2: "The power cannot be turned off as it should in an accident. Someone could stay in danger. Fix this soon.",
    C3: "The main switch is hard to use or far away. It does work. A better one is advised.",
    FI: [
      unsure("We could not try the main switch. It may not turn off the power. This must be looked at soon.", [
        "works",
      ]),
      unsure("We could not find a main switch. This must be looked at soon.", ["switch"]),
    ],
    none: "The main switch works.",
  },
  remedies: [
    {
      words: "Fit a two-pole isolator near the origin.",
      changes: { switch: "there", works: "well" },
    },
    { words: "Replace the switch that does not work.", changes: { works: "well" } },
  ],
  examples: [
    {
      name: "no main switch",
      facts: { switch: "none", works: "well" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: no means of making the installation dead",
    },
    {
      name: "one pole stays closed",
      facts: { switch: "there", works: "does-not-open" },
      possible: ["C2"],
      source: "trade practice: switch that shows off while live",
    },
    {
      name: "stiff, opens every pole",
      facts: { switch: "there", works: "stiff" },
      possible: ["C3"],
      source: "trade practice",
    },
    {
      name: "could not be worked",
      facts: {
        switch: "there",
        works: { notKnown: "limited", reason: "the supply could not be interrupted" },
      },
      possible: ["none", "C3", "C2"],
      classification: "FI",
      source: "union over the functional test",
    },
    {
      name: "not tried yet",
      facts: { switch: "there" },
      possible: ["none", "C3", "C2"],
      missing: ["works"],
      source: "union over the functional test",
    },
  ],
});
