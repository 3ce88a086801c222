import { all, any, held, is, no, ranked, says, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A cooker, oven or hob without a switch that can be reached when a pan is on fire. */
export const cookerIsolationMissing = topic({
  id: "cooker-isolation-missing",
  title: "Cooker switch missing or badly placed",
  group: "accessories",
  items: ["accessories.isolation", "accessories.emergency"],
  facts: {
    switch: ranked({
      asks: "What cuts the cooker off, and where is it?",
      effort: "glance",
      values: {
        "at-hand": "a switch or plug within a step or two cuts the cooker off",
        "board-only": "only the breaker or fuse at the board cuts the cooker off",
        "line-only": "the switch at hand leaves the neutral connected",
        "over-hob": "the switch is over the hob, so that one reaches across the heat",
        hidden: "the switch or plug is behind the appliance or stored goods",
        none: "nothing cuts the cooker off on its own",
      },
    }),
    "board-near": yesNo({
      asks: "Can whoever cooks get to the board in a moment?",
      effort: "glance",
      yes: "whoever cooks gets to the board in a moment",
      no: "the board is locked, far away or hard to get at for whoever cooks",
      worse: "no",
    }),
  },
  contested: {
    "board-is-enough": {
      question: "Is it worth recording that only the board cuts the cooker off?",
      positions: {
        record: {
          words: "it is worth recording as an improvement",
          because: "a pan on fire or a cooker to be pulled out wants a switch close by",
        },
        "leave-it": {
          words: "it is not recorded",
          because: "the device at the board isolates the circuit, and no rule asks for a second one",
        },
      },
    },
  },
  paths: [
    {
      id: "cannot-be-cut-off",
      hazard: "burns-or-fire",
      route: "a fault or fire at the cooker goes on because nobody can cut it off",
      exists: is("switch", "none"),
      layers: [oneEventAway("no-fault", "overcurrent-protection", "the device of the circuit", ["462.2", "465.1"])],
    },
  ],
  departures: [
    {
      when: any(
        is("switch", "line-only", "over-hob", "hidden", "none"),
        all(is("switch", "board-only"), any(no("board-near"), held("board-is-enough", "record"))),
      ),
      words: "the cooker cannot readily be cut off",
      regulations: ["462.2", "465.1"],
    },
  ],
  client: {
    C2: "The cooker cannot be turned off in a safe way if there is a fire. A good switch should be fitted soon.",
    C3: "The cooker has no good switch close by. It is not a danger now. A better switch is advised.",
    FI: unsure("We could not find or check the switch for the cooker. This must be looked at soon.", ["switch"]),
    none: [
      says("The cooker has a good switch close by.", is("switch", "at-hand")),
      says("The cooker can be turned off at the fuse box close by.", is("switch", "board-only")),
    ],
  },
  remedies: [
    {
      words: "Fit a double-pole switch beside the cooker, clear of the hob.",
      changes: { switch: "at-hand" },
    },
  ],
  examples: [
    {
      name: "hob with only a breaker in the hall",
      facts: { switch: "board-only" },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: cut off, but not at hand",
    },
    {
      name: "switch above the hob",
      facts: { switch: "over-hob" },
      possible: ["C3"],
      source: "trade practice: one reaches across the heat",
    },
    {
      name: "hob with only a breaker in the hall, held enough",
      facts: { switch: "board-only", "board-near": true },
      positions: { "board-is-enough": "leave-it" },
      possible: ["none"],
      source: "regulation: the circuit can be isolated",
    },
    {
      name: "wired past every switch and its own device",
      facts: { switch: "none" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: cannot be cut off",
    },
    {
      name: "switch beside the cooker",
      facts: { switch: "at-hand" },
      possible: ["none"],
      source: "trade practice",
    },
    {
      name: "switch not found",
      facts: { "board-near": true },
      possible: ["none", "C3", "C2"],
      missing: ["switch"],
      source: "union over switches",
    },
  ],
});
