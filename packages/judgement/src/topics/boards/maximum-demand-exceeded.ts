import { no, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A load beyond what supply, tails, switch or board are rated for. */
export const maximumDemandExceeded = topic({
  id: "maximum-demand-exceeded",
  title: "Demand beyond the rating of supply or board",
  group: "boards",
  items: ["intake.cut-out", "intake.meter-tails", "boards.devices"],
  facts: {
    within: yesNo({
      asks: "Is the demand, by log or with diversity, within the rating of supply fuse, tails, main switch and board?",
      effort: "measured",
      yes: "the demand is within every rating from the supply fuse to the board",
      no: "the demand is beyond a rating between the supply fuse and the board",
      worse: "no",
      worked: { by: "maximum-demand", notMet: "no" },
    }),
    "fuse-protects": yesNo({
      asks: "Is the fuse ahead rated no higher than the tails, switch and board can carry?",
      effort: "opened",
      yes: "the fuse ahead is rated no higher than what stands behind it",
      no: "the fuse ahead is rated higher than what stands behind it",
      worse: "no",
    }),
  },
  contested: {},
  paths: [
    {
      id: "overheats",
      hazard: "burns-or-fire",
      route: "the demand overheats tails, switch or busbar until something burns",
      exists: no("within"),
      layers: [
        {
          id: "fuse-ahead",
          provision: "overcurrent-protection",
          words: "a fuse ahead that melts before they are hurt",
          gone: no("fuse-protects"),
          sound: yes("fuse-protects"),
          regulations: ["433.1", "536.4.202"],
        },
        oneEventAway("seldom", "surroundings", "that the full demand comes seldom and not for long", ["311.1"]),
      ],
    },
  ],
  departures: [
    {
      when: no("within"),
      words: "the demand is beyond what the supply or board is rated for",
      regulations: ["311.1", "132.3"],
    },
  ],
  client: {
    C2: "The supply can be overloaded. Parts could get hot and burn. Have this put right soon.",
    C3: "You may use more power than the supply is made for. A fuse would stop it. A larger supply is advised.",
    FI: [
      unsure("You may use more power than the supply is made for. We could not find out. It must be looked at.", [
        "within",
      ]),
      unsure(
        "More power may be used than parts are made for. We could not find out if a fuse would stop it. It must be looked at.",
        ["fuse-protects"],
        no("within"),
      ),
    ],
    none: "The supply is large enough.",
  },
  remedies: [
    {
      words: "Limit or interlock large loads, or manage the charging of cars by the current of the supply.",
      changes: { within: "yes" },
    },
    {
      words: "Ask the distributor for a fuse of the rating that tails and board can carry.",
      changes: { "fuse-protects": "yes" },
    },
    {
      words: "Replace what heat has hurt and raise the rating of tails and switch.",
      changes: { within: "yes" },
    },
  ],
  examples: [
    {
      name: "two showers and a car charger behind 60 A, fuse protects the tails",
      facts: { within: false, "fuse-protects": true },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: the fuse is what gives way",
    },
    {
      name: "80 A switch behind 100 A fuse, demand 95 A",
      facts: { within: false, "fuse-protects": false },
      possible: ["C2"],
      classification: "C2",
      source: "arithmetic: 95 A > 80 A, and the fuse carries it",
    },
    {
      name: "demand not logged",
      facts: {
        within: { notKnown: "limited", reason: "no logging agreed" },
        "fuse-protects": false,
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "union over the demand",
    },
    {
      name: "demand not reckoned yet",
      facts: { "fuse-protects": true },
      possible: ["none", "C3"],
      missing: ["within"],
      source: "union over the demand",
    },
  ],
});
