import { all, is, NEVER, no, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";
import { LOSS_HURTS } from "./facts.ts";

/** An RCD that opens at half its rated residual current or less. */
export const rcdTooSensitive = topic({
  id: "rcd-too-sensitive",
  title: "RCD trips at half its rated current",
  group: "residual-current",
  items: ["boards.rcd"],
  facts: {
    "holds-at-half": yesNo({
      asks: "With its load off, does it stay closed at half its rated residual current?",
      effort: "measured",
      yes: "with its load off the RCD stays closed at half its rated residual current",
      no: "with its load off the RCD opens at half its rated residual current",
      worse: "no",
    }),
    trips: ranked({
      asks: "Does it trip in use without a fault being found?",
      effort: "glance",
      values: {
        never: "the RCD does not trip in use without cause",
        sometimes: "the RCD trips in use now and then without a fault being found",
      },
    }),
    "loss-hurts": LOSS_HURTS,
  },
  contested: {},
  paths: [
    {
      id: "sudden-loss",
      hazard: "loss-of-supply",
      route: "the RCD trips for nothing, and somebody at risk is left without light or a machine they need",
      exists: all(no("holds-at-half"), yes("loss-hurts")),
      layers: [
        {
          id: "stays-on",
          provision: "surroundings",
          words: "an RCD that does not trip for nothing",
          gone: is("trips", "sometimes"),
          sound: NEVER,
          regulations: ["531.3.2"],
        },
        oneEventAway(
          "not-just-then",
          "surroundings",
          "that the person at risk is not on the stairs or in need just then",
          ["314.1"],
        ),
      ],
    },
  ],
  departures: [
    {
      when: no("holds-at-half"),
      words: "the RCD opens at a smaller current than it should",
      regulations: ["531.3.2"],
    },
  ],
  client: {
    C2: "The safety switch goes off for no reason. Someone here could come to harm in the dark. Change it soon.",
    C3: "The safety switch goes off too soon. It is not a danger now. A new one would save you trouble.",
    FI: [
      unsure("We could not fully test the safety switch. It may go off for no reason. It must be looked at.", [
        "holds-at-half",
      ]),
      unsure(
        "The safety switch goes off too soon. We could not find out if that could harm someone. It must be looked at.",
        ["trips", "loss-hurts"],
        no("holds-at-half"),
      ),
    ],
    none: "The safety switch holds when it should.",
  },
  remedies: [{ words: "Replace the RCD.", changes: { "holds-at-half": "yes" } }],
  examples: [
    {
      name: "opens at 14 mA of 30 mA",
      facts: { "holds-at-half": false, trips: "never", "loss-hurts": false },
      possible: ["C3"],
      classification: "C3",
      source: "arithmetic: 14 mA < half of 30 mA",
    },
    {
      name: "trips at night, person on a breathing machine",
      facts: { "holds-at-half": false, trips: "sometimes", "loss-hurts": true },
      possible: ["C2"],
      source: "trade practice: loss of supply puts somebody at risk",
    },
    {
      name: "not tested at half",
      facts: { trips: "never", "loss-hurts": false },
      possible: ["none", "C3"],
      missing: ["holds-at-half"],
      source: "union over the test",
    },
  ],
});
