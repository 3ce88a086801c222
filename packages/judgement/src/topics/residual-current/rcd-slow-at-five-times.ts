import { all, any, held, no, not, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** An RCD for additional protection that is in time at its rated residual current and slow at five times that. */
export const rcdSlowAtFiveTimes = topic({
  id: "rcd-slow-at-five-times",
  title: "RCD slow at five times its rated residual current",
  group: "residual-current",
  items: ["boards.rcd"],
  facts: {
    "in-time-at-rated": yesNo({
      asks: "Does it open within the time of its standard at its rated residual current (300 ms for the general sort)?",
      effort: "measured",
      yes: "the RCD opens in time at its rated residual current",
      no: "the RCD is too slow at its rated residual current",
      worse: "no",
      worked: { by: "rcd-time", matter: "rcd-not-slow", met: "yes", notMet: "no" },
    }),
    "in-time-at-five": yesNo({
      asks: "Does it open within 40 ms at five times its rated residual current?",
      effort: "measured",
      yes: "the RCD opens within 40 ms at five times its rated residual current",
      no: "the RCD takes more than 40 ms at five times its rated residual current",
      worse: "no",
      worked: { by: "rcd-time", matter: "rcd-five", met: "yes", notMet: "no" },
    }),
    "additional-protection": yesNo({
      asks: "Is it of 30 mA or less and meant as additional protection?",
      effort: "glance",
      yes: "the RCD is meant as additional protection",
      no: "the RCD is not meant as additional protection",
      worse: "yes",
    }),
  },
  contested: {
    "five-times": {
      question: "Does the time at five times the rated residual current count?",
      positions: {
        counts: {
          words: "it counts: 40 ms is what the device is made to, and people count on it",
          because: "the product standard still has the limit, and a slow device is a failing one",
        },
        "not-counted": {
          words: "it does not count: only the test at the rated residual current is asked for",
          because: "since the 2022 amendment effectiveness is shown by that test alone",
        },
        advise: {
          words: "the test that is asked for is met, and replacement is advised",
          because: "it drifts away from its standard without having left what must be shown",
        },
      },
    },
  },
  paths: [
    {
      id: "touch-lasts",
      hazard: "contact-with-live-parts",
      route: "insulation of a lead or tool is cut, somebody touches the core, and the current lasts too long",
      exists: yes("additional-protection"),
      layers: [
        oneEventAway("lead", "insulation", "the insulation of leads and tools", ["416.1"]),
        {
          id: "rcd-quick",
          provision: "additional-protection",
          words: "an RCD that cuts a current through the body short",
          gone: any(no("in-time-at-rated"), all(no("in-time-at-five"), held("five-times", "counts"))),
          sound: all(yes("in-time-at-rated"), any(yes("in-time-at-five"), not(held("five-times", "counts")))),
          regulations: ["415.1.1", "643.8"],
        },
      ],
    },
  ],
  departures: [
    {
      when: no("in-time-at-rated"),
      words: "the RCD does not open in time at its rated residual current",
      regulations: ["643.8"],
    },
    {
      when: all(yes("additional-protection"), no("in-time-at-five"), not(held("five-times", "not-counted"))),
      words: "the RCD is slower at five times its rated residual current than its standard allows",
      regulations: ["643.8"],
    },
  ],
  client: {
    C2: "The safety switch is too slow. A shock could last too long. Change the switch soon.",
    C3: [
      says(
        "The safety switch is a bit slow. It passed the main test. It would be good to change it.",
        yes("in-time-at-rated"),
      ),
      says(
        "The safety switch is too slow. It is not the part that saves you from a shock. It would be good to change it.",
        no("in-time-at-rated"),
      ),
    ],
    FI: [
      unsure("We could not fully test how fast the safety switch is. This must be looked at soon.", [
        "in-time-at-rated",
        "in-time-at-five",
      ]),
      unsure("The safety switch is slow. We could not find out what it has to guard. This must be looked at soon.", [
        "additional-protection",
      ]),
    ],
    none: "The safety switch is fast enough in the main test.",
  },
  remedies: [
    {
      words: "Test again with the load off after working the device a few times; replace it where it stays slow.",
      changes: { "in-time-at-rated": "yes", "in-time-at-five": "yes" },
    },
  ],
  examples: [
    {
      name: "185 ms at 30 mA, 48 ms at 150 mA",
      facts: {
        "in-time-at-rated": true,
        "in-time-at-five": false,
        "additional-protection": true,
      },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: limit of the product standard at five times not met",
    },
    {
      name: "the same where only the rated test counts",
      facts: {
        "in-time-at-rated": true,
        "in-time-at-five": false,
        "additional-protection": true,
      },
      positions: { "five-times": "not-counted" },
      possible: ["none"],
      source: "regulation 643.8 since the 2022 amendment",
    },
    {
      name: "the same, replacement advised",
      facts: {
        "in-time-at-rated": true,
        "in-time-at-five": false,
        "additional-protection": true,
      },
      positions: { "five-times": "advise" },
      possible: ["C3"],
      source: "trade discussion: required test met",
    },
    {
      name: "312 ms at the rated current",
      facts: { "in-time-at-rated": false, "additional-protection": true },
      possible: ["C2"],
      source: "arithmetic: 312 ms > 300 ms",
    },
    {
      name: "five times not tested",
      facts: { "in-time-at-rated": true, "additional-protection": true },
      possible: ["none", "C2"],
      missing: ["in-time-at-five"],
      source: "union over the test at five times",
    },
  ],
});
