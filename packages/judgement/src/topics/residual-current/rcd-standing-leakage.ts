import { all, any, is, NEVER, no, not, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";
import { LOSS_HURTS } from "./facts.ts";

/** Current that flows to earth all the time through an RCD, so that it trips for nothing or is near to it. */
export const rcdStandingLeakage = topic({
  id: "rcd-standing-leakage",
  title: "Too much standing leakage behind an RCD",
  group: "residual-current",
  items: ["boards.rcd"],
  facts: {
    "over-share": yesNo({
      asks: "With everything on that usually is, does more than 30 % of its rated residual current flow to earth (9 mA for 30 mA)?",
      effort: "measured",
      yes: "more than 30 % of the rated residual current flows to earth",
      no: "no more than 30 % of the rated residual current flows to earth",
      worse: "yes",
      worked: { by: "leakage-within", met: "no", notMet: "yes" },
    }),
    trips: ranked({
      asks: "Does it trip without a fault being found?",
      effort: "glance",
      values: {
        never: "the RCD does not trip without cause",
        sometimes: "the RCD trips now and then without a fault being found",
        "made-not-to": "the RCD tripped so often that somebody has bridged it or taken circuits off it",
      },
    }),
    cause: ranked({
      asks: "Where does the current come from?",
      effort: "beyond",
      values: {
        equipment: "the leakage is the sum of what sound equipment leaks, seen by unplugging piece by piece",
        wiring: "the leakage comes from damaged insulation or damp in wiring or fixed equipment",
      },
    }),
    "loss-hurts": LOSS_HURTS,
  },
  contested: {},
  paths: [
    {
      id: "failing-insulation",
      hazard: "shock-under-fault",
      route: "insulation that has begun to fail goes on failing, and a person or the earth carries the current",
      exists: any(yes("over-share"), not(is("trips", "never"))),
      layers: [
        {
          id: "insulation",
          provision: "insulation",
          words: "the insulation of wiring and fixed equipment",
          gone: is("cause", "wiring"),
          sound: is("cause", "equipment"),
          regulations: ["416.1", "643.3.2"],
        },
        {
          id: "rcd",
          provision: "additional-protection",
          words: "the RCD that trips when it grows",
          gone: NEVER,
          sound: NEVER,
          regulations: ["415.1.1"],
        },
      ],
    },
    {
      id: "bridged",
      hazard: "contact-with-live-parts",
      route: "a lead or tool is damaged, somebody touches the core, and no RCD is left to cut the current short",
      exists: is("trips", "made-not-to"),
      layers: [
        oneEventAway("lead", "insulation", "the insulation of leads and tools", ["416.1"]),
        {
          id: "rcd-in-circuit",
          provision: "additional-protection",
          words: "an RCD that is left in the circuit",
          gone: is("trips", "made-not-to"),
          sound: NEVER,
          regulations: ["411.3.3", "415.1.1"],
        },
      ],
    },
    {
      id: "sudden-loss",
      hazard: "loss-of-supply",
      route: "the RCD trips for nothing, and somebody at risk is left without light or a machine they need",
      exists: yes("loss-hurts"),
      layers: [
        {
          id: "stays-on",
          provision: "surroundings",
          words: "an RCD that does not trip for nothing",
          gone: not(is("trips", "never")),
          sound: all(is("trips", "never"), no("over-share")),
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
      when: any(yes("over-share"), not(is("trips", "never"))),
      words: "the standing leakage is more than the RCD can carry without tripping for nothing",
      regulations: ["531.3.2"],
    },
  ],
  client: {
    C2: [
      says(
        "A safety switch tripped so often that it was put out of use. This is not safe. Have it put right soon.",
        is("trips", "made-not-to"),
      ),
      says(
        "Power leaks from damaged or damp parts. This is not safe. Have them put right soon.",
        is("cause", "wiring"),
      ),
      says(
        "The safety switch trips and no fault is found. Someone here could come to harm when the power goes. Have it put right soon.",
        all(yes("loss-hurts"), is("trips", "sometimes")),
      ),
    ],
    C3: "A small current leaks all the time. The safety switch may trip for no reason. It would be good to split it.",
    FI: [
      unsure(
        "A current leaks away, and we could not find where. It could be bad wiring. It must be looked at soon.",
        ["cause"],
        any(yes("over-share"), is("trips", "sometimes", "made-not-to")),
      ),
      unsure(
        "We could not find out if too much power leaks away behind the safety switch. It must be looked at soon.",
        ["over-share", "trips", "cause", "loss-hurts"],
      ),
    ],
    none: "The safety switch has no reason to trip.",
  },
  remedies: [
    { words: "Find and repair the damaged or damp part.", changes: { cause: "equipment" } },
    {
      words: "Spread the circuits over more RCDs, so that each carries a small share of the leakage.",
      changes: { "over-share": "no", trips: "never" },
    },
  ],
  examples: [
    {
      name: "11 mA behind 30 mA from many chargers",
      facts: { "over-share": true, trips: "never", cause: "equipment", "loss-hurts": false },
      possible: ["C3"],
      classification: "C3",
      source: "arithmetic: 11 mA > 30 % of 30 mA",
    },
    {
      name: "damp outdoor cable",
      facts: { "over-share": true, trips: "sometimes", cause: "wiring", "loss-hurts": false },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: insulation failing, the RCD is all that is left",
    },
    {
      name: "trips now and then, cause not found",
      facts: {
        "over-share": true,
        trips: "sometimes",
        cause: { notKnown: "limited", reason: "tenant's equipment could not be unplugged" },
        "loss-hurts": false,
      },
      possible: ["C3", "C2"],
      classification: "FI",
      source: "union over the cause",
    },
    {
      name: "somebody has bridged it",
      facts: { trips: "made-not-to", cause: "equipment" },
      possible: ["C2"],
      source: "trade practice: protection put out of use",
    },
    {
      name: "not yet clamped",
      facts: { trips: "never", cause: "equipment", "loss-hurts": false },
      possible: ["none", "C3"],
      missing: ["over-share"],
      source: "union over the measurement",
    },
  ],
});
