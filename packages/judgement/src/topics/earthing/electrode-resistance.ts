import { ALWAYS, all, any, held, is, NEVER, no, not, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** An earth electrode of high resistance, against its RCDs and over the years. */
export const electrodeResistance = topic({
  id: "electrode-resistance",
  title: "Earth electrode resistance high",
  group: "earthing",
  items: ["earthing.electrode"],
  facts: {
    "suits-rcds": yesNo({
      asks: "Does electrode resistance times the rated residual current of each RCD stay within 50 V?",
      effort: "measured",
      yes: "electrode resistance times rated residual current is 50 V or less",
      no: "electrode resistance times rated residual current is more than 50 V, or no RCD is there",
      worse: "no",
      worked: { by: "electrode", met: "yes", notMet: "no" },
    }),
    "above-200": yesNo({
      asks: "Does the electrode, by itself, measure more than 200 Ω?",
      effort: "measured",
      yes: "the electrode measures more than 200 Ω",
      no: "the electrode measures 200 Ω or less",
      worse: "yes",
    }),
    cause: ranked({
      asks: "Why is it high: last report, soil, season, state of the rod?",
      effort: "opened",
      values: {
        soil: "the soil is poor here, and the value is the same as at the last report",
        season: "it was dry or frozen at the time of measurement, and it was lower before",
        worn: "the value has risen, and the electrode or its connection is worn",
      },
    }),
  },
  contested: {
    "high-value": {
      question: "What is an electrode of more than 200 Ω that still suits its RCDs?",
      positions: {
        advice: {
          words: "it is an improvement to lower it",
          because: "the RCD disconnects today, and the note to Table 41.5 says that such a value may not be stable",
        },
        "within-limit": {
          words: "it complies",
          because: "411.5.3 asks for 50 V and no more, and 1667 Ω give that with 30 mA",
        },
        "cause-first": {
          words: "it depends on why it is so high",
          because: "poor soil stays as it is, a wearing rod does not",
        },
        "not-stable": {
          words: "it does not count as fault protection",
          because: "the next dry summer may lift it beyond what the RCD allows",
        },
      },
    },
  },
  paths: [
    {
      id: "metal-stays-live",
      hazard: "shock-under-fault",
      route: "metal becomes live through a fault, and the electrode passes too little current for the RCD to trip",
      exists: ALWAYS,
      layers: [
        oneEventAway("basic", "insulation", "the insulation between live parts and earthed metal", ["416.1"]),
        {
          id: "electrode",
          provision: "fault-protection",
          words: "an electrode through which the RCDs trip",
          gone: any(
            no("suits-rcds"),
            all(
              yes("above-200"),
              any(held("high-value", "not-stable"), all(held("high-value", "cause-first"), is("cause", "worn"))),
            ),
          ),
          sound: NEVER,
          regulations: ["411.5.3", "542.2.4"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(yes("above-200"), not(held("high-value", "within-limit"))),
      words: "the electrode resistance is above 200 Ω and may not be stable",
      regulations: ["411.5.3", "542.2.4"],
    },
  ],
  client: {
    C2: "The earth rod does not do its job well enough. In a fault, metal could stay live. Have this put right soon.",
    C3: "The earth rod works, but only just. Dry soil could make it worse. A second rod would help.",
    FI: [
      unsure(
        "The earth rod gave a poor test. We could not find out why. This must be looked at soon.",
        ["cause"],
        yes("above-200"),
      ),
      unsure("We could not find out if the earth rod does its job. It must be tested soon.", [
        "suits-rcds",
        "above-200",
        "cause",
      ]),
    ],
    none: "The earth rod works well enough.",
  },
  remedies: [
    { words: "Clean or renew the clamp, and measure again.", changes: { cause: "soil" } },
    {
      words: "Drive the rod deeper or add rods, until the resistance is 200 Ω or less and suits the RCDs.",
      changes: { "suits-rcds": "yes", "above-200": "no" },
    },
  ],
  examples: [
    {
      name: "90 Ω, 30 mA",
      facts: { "suits-rcds": true, "above-200": false },
      possible: ["none"],
      source: "arithmetic: 90 Ω × 0.03 A = 2.7 V",
    },
    {
      name: "480 Ω, 30 mA",
      facts: { "suits-rcds": true, "above-200": true },
      possible: ["C3"],
      classification: "C3",
      source: "trade discussion of electrodes above 200 Ω",
    },
    {
      name: "the same by the formula alone",
      facts: { "suits-rcds": true, "above-200": true },
      positions: { "high-value": "within-limit" },
      possible: ["none"],
      source: "arithmetic: 480 Ω × 0.03 A = 14 V",
    },
    {
      name: "the same, cause wanted and not to be found today",
      facts: {
        "suits-rcds": true,
        "above-200": true,
        cause: { notKnown: "limited", reason: "no last report, rod under paving" },
      },
      positions: { "high-value": "cause-first" },
      possible: ["C3", "C2"],
      classification: "FI",
      source: "trade discussion of electrodes above 200 Ω",
    },
    {
      name: "the same held not to be stable",
      facts: { "suits-rcds": true, "above-200": true },
      positions: { "high-value": "not-stable" },
      possible: ["C2"],
      source: "trade discussion of electrodes above 200 Ω",
    },
    {
      name: "2100 Ω, 30 mA",
      facts: { "suits-rcds": false, "above-200": true },
      possible: ["C2"],
      classification: "C2",
      source: "arithmetic: 2100 Ω × 0.03 A = 63 V",
    },
    {
      name: "150 Ω with a 500 mA RCD",
      facts: { "suits-rcds": false, "above-200": false },
      possible: ["C2"],
      source: "arithmetic: 150 Ω × 0.5 A = 75 V",
    },
    {
      name: "not measured",
      facts: {},
      possible: ["none", "C3", "C2"],
      missing: ["suits-rcds", "above-200"],
      source: "union over what is not known",
    },
  ],
});
