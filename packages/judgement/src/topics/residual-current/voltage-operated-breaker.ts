import { all, any, is, NEVER, no, ranked, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** An old earth-leakage breaker that senses the voltage of the earthing conductor. */
export const voltageOperatedBreaker = topic({
  id: "voltage-operated-breaker",
  title: "Old voltage-operated earth-leakage breaker",
  group: "residual-current",
  items: ["boards.rcd"],
  facts: {
    breaker: ranked({
      asks: "Is the earth-leakage breaker one through whose coil the earthing conductor runs?",
      effort: "opened",
      values: {
        none: "no voltage-operated breaker is fitted",
        bypassed: "a voltage-operated breaker is fitted as a switch only, and the earthing conductor goes past it",
        "in-use": "the earthing conductor runs through the coil of a voltage-operated breaker",
      },
    }),
    "faults-cleared": yesNo({
      asks: "Does an RCD, breaker or fuse clear an earth fault in time without it?",
      effort: "measured",
      yes: "an RCD, breaker or fuse clears an earth fault in time without it",
      no: "nothing else clears an earth fault in time",
      worse: "no",
    }),
    "coil-whole": yesNo({
      asks: "Is the earthing path through the coil whole and low?",
      effort: "measured",
      yes: "the earthing path through the coil is whole",
      no: "the earthing path through the coil is broken or high",
      worse: "no",
    }),
  },
  contested: {},
  paths: [
    {
      id: "fault-stays",
      hazard: "shock-under-fault",
      route: "metal becomes live through a fault and stays live, and somebody touches it",
      exists: is("breaker", "in-use", "bypassed"),
      layers: [
        oneEventAway("basic", "insulation", "the insulation of the live parts", ["416.1"]),
        {
          id: "disconnection",
          provision: "fault-protection",
          words: "a device other than this that disconnects an earth fault",
          gone: any(no("faults-cleared"), all(is("breaker", "in-use"), no("coil-whole"))),
          sound: NEVER,
          regulations: ["411.4.4", "411.5.2"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("breaker", "in-use"),
      words: "a device of a kind no longer recognised stands in the earthing path",
      regulations: ["411.5.2", "542.1.1"],
    },
  ],
  client: {
    C2: "An old safety switch of a bad kind is here. Metal could stay live in a fault. Replace it soon.",
    C3: "An old safety switch of a kind no longer used is here. Faults are cut off without it. Take it out.",
    FI: [
      unsure(
        "An old safety switch is here. We could not find out if faults are cut off. It must be looked at soon.",
        ["faults-cleared", "coil-whole"],
        is("breaker", "bypassed", "in-use"),
      ),
      unsure("We could not find out if there is an old safety switch of a bad kind. It must be looked at soon.", [
        "breaker",
      ]),
    ],
    none: "No old safety switch of a bad kind is in use.",
  },
  remedies: [
    {
      words: "Take the breaker out, carry the earthing conductor through, and fit an RCD where one is wanted.",
      changes: { breaker: "none", "faults-cleared": "yes" },
    },
  ],
  examples: [
    {
      name: "the only protection on TT",
      facts: { breaker: "in-use", "faults-cleared": false },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: parallel earths put such a breaker out of work",
    },
    {
      name: "left in place, an RCD protects all circuits",
      facts: { breaker: "in-use", "faults-cleared": true, "coil-whole": true },
      possible: ["C3"],
      source: "trade practice",
    },
    {
      name: "coil broken",
      facts: { breaker: "in-use", "faults-cleared": true, "coil-whole": false },
      possible: ["C2"],
      source: "trade practice: the earthing path is lost with the coil",
    },
    {
      name: "coil not measured",
      facts: { breaker: "in-use", "faults-cleared": true },
      possible: ["C3", "C2"],
      missing: ["coil-whole"],
      source: "union over the coil",
    },
  ],
});
