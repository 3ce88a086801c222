import { all, is, NEVER, no, oneKind, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";
import { LOSS_HURTS } from "./facts.ts";

/** Two RCDs in series of which the one ahead does not wait for the one behind. */
export const rcdTimeDelayMissing = topic({
  id: "rcd-time-delay-missing",
  title: "RCDs in series that do not wait for each other",
  group: "residual-current",
  items: ["boards.rcd"],
  facts: {
    series: ranked({
      asks: "Which RCDs stand in series before a circuit?",
      effort: "glance",
      values: {
        one: "one RCD alone stands before each circuit",
        waits: "two stand in series, and the one ahead is time-delayed and of at least three times the rating",
        "does-not-wait": "two stand in series, and the one ahead is not delayed or not of three times the rating",
      },
      worked: { by: "rcds-grade", met: "waits", notMet: "does-not-wait" },
    }),
    serves: oneKind({
      asks: "What does the one ahead serve?",
      effort: "opened",
      values: {
        everything: "the one ahead serves the whole installation, or a large part of it",
        "one-circuit": "the one ahead serves the same circuit only",
      },
    }),
    "loss-hurts": LOSS_HURTS,
    "standby-light": yesNo({
      asks: "Is there light that comes on by itself where it matters, and does a machine that must run have its own supply?",
      effort: "glance",
      yes: "light and supply that matter stay or come on by themselves",
      no: "light and supply that matter are lost too",
      worse: "no",
    }),
  },
  contested: {},
  paths: [
    {
      id: "all-lost",
      hazard: "loss-of-supply",
      route: "a fault in one circuit puts out everything, and somebody at risk comes to harm",
      exists: all(is("series", "does-not-wait"), is("serves", "everything"), yes("loss-hurts")),
      layers: [
        oneEventAway("no-fault", "insulation", "circuits and appliances that have no fault", ["416.1"]),
        {
          id: "left-on",
          provision: "surroundings",
          words: "light and supply that do not hang on the same device",
          gone: no("standby-light"),
          sound: NEVER,
          regulations: ["314.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(is("series", "does-not-wait"), is("serves", "everything")),
      words: "the RCD ahead does not leave it to the one behind to clear a fault",
      regulations: ["536.4.1", "314.1"],
    },
  ],
  client: {
    C2: "One fault can turn off all you need at once. Someone here could come to harm. Have it put right soon.",
    C3: "A fault in one place may turn off all or most of the power. That is a nuisance. A slower main switch would help.",
    FI: unsure("We could not find out what goes off in a fault. Someone could come to harm. It must be looked at.", [
      "series",
      "serves",
      "loss-hurts",
      "standby-light",
    ]),
    none: "A fault turns off no more than it should.",
  },
  remedies: [
    { words: "Give light and machines that matter a supply that stays.", changes: { "standby-light": "yes" } },
    {
      words: "Replace the RCD ahead by a time-delayed one of at least three times the rating that suits the electrode.",
      changes: { series: "waits" },
    },
  ],
  examples: [
    {
      name: "TT, 100 mA without delay ahead of 30 mA",
      facts: { series: "does-not-wait", serves: "everything", "loss-hurts": false },
      possible: ["C3"],
      classification: "C3",
      source: "arithmetic: three times the rating, but no delay",
    },
    {
      name: "medical machine behind it",
      facts: { series: "does-not-wait", serves: "everything", "loss-hurts": true, "standby-light": false },
      possible: ["C2"],
      source: "trade practice: loss of supply puts somebody at risk",
    },
    {
      name: "RCD socket behind an RCD of its own circuit",
      facts: { series: "does-not-wait", serves: "one-circuit" },
      possible: ["none"],
      source: "trade practice: nothing more is lost",
    },
    {
      name: "what it serves not traced",
      facts: { series: "does-not-wait", "loss-hurts": false },
      possible: ["none", "C3"],
      missing: ["serves"],
      source: "union over what it serves",
    },
  ],
});
