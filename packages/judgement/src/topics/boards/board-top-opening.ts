import { is, NEVER, not, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A slot or hole in the top of a board, where the shape of what can enter is stricter than at the front. */
export const boardTopOpening = topic({
  id: "board-top-opening",
  title: "Opening in the top of a board",
  group: "boards",
  items: ["boards.enclosure"],
  facts: {
    opening: ranked({
      asks: "What goes in at the top, does it reach live metal, and can someone readily reach the top?",
      effort: "opened",
      values: {
        tight: "nothing 1 mm thick that goes in at the top reaches live metal",
        "slot-out-of-reach": "a 1 mm wire put in at the top reaches live metal, and the top cannot readily be reached",
        slot: "a 1 mm wire put in at the top reaches live metal, a finger does not",
        finger: "the jointed test finger put in at the top touches live metal",
      },
    }),
    "drops-likely": yesNo({
      asks: "Is anything likely to drop in: a shelf in use above, a pipe or tank that may drip, screws, filings?",
      effort: "glance",
      yes: "things or water are likely to drop in",
      no: "nothing is likely to drop in",
      worse: "yes",
    }),
  },
  contested: {},
  paths: [
    {
      id: "reach-in",
      hazard: "contact-with-live-parts",
      route: "somebody reaches in at the top and touches live metal",
      exists: is("opening", "finger"),
      layers: [
        {
          id: "top",
          provision: "barrier-or-enclosure",
          words: "the top of the enclosure",
          gone: is("opening", "finger"),
          sound: NEVER,
          regulations: ["416.2.1"],
        },
      ],
    },
    {
      id: "drop-in",
      hazard: "burns-or-fire",
      route: "metal or water drops in, bridges live parts or makes the case live, and it arcs",
      exists: yes("drops-likely"),
      layers: [
        {
          id: "top-against-drops",
          provision: "barrier-or-enclosure",
          words: "the top of the enclosure",
          gone: not(is("opening", "tight")),
          sound: is("opening", "tight"),
          regulations: ["416.2.2"],
        },
        oneEventAway("clearing", "overcurrent-protection", "the device ahead, which clears a short circuit", ["434.1"]),
      ],
    },
  ],
  departures: [
    {
      when: is("opening", "slot", "finger"),
      words: "the top face that can be reached does not give IP4X or IPXXD",
      regulations: ["416.2.2"],
    },
    {
      when: is("opening", "finger"),
      words: "the enclosure does not give IP2X or IPXXB",
      regulations: ["416.2.1"],
    },
  ],
  client: {
    C1: "There is a hole in the top of the fuse box. A finger can touch live metal. Keep away until it is closed.",
    C2: "There is a gap in the top of the fuse box. Water or bits of metal could fall on live parts. Close it soon.",
    C3: "There is a thin gap in the top of the fuse box. No finger fits. Closing it would make it safer.",
    FI: [
      unsure(
        "There is a gap in the top of the fuse box. We could not find out if things may fall in. It must be looked at soon.",
        ["drops-likely"],
        is("opening", "slot", "slot-out-of-reach"),
      ),
      unsure("We could not see if the top of the fuse box is closed well enough. It must be looked at soon.", [
        "opening",
      ]),
    ],
    none: "The top of the fuse box is closed well enough.",
  },
  remedies: [
    { words: "Close the opening with a grommet, gland or plate fixed from inside.", changes: { opening: "tight" } },
    { words: "Take away the shelf or stop the drip above the board.", changes: { "drops-likely": "no" } },
  ],
  examples: [
    {
      name: "3 mm slot, a wire reaches a terminal 60 mm down",
      facts: { opening: "slot", "drops-likely": false },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: below IP4X on top, no finger access",
    },
    {
      name: "the same below a dripping pipe",
      facts: { opening: "slot", "drops-likely": true },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: objects or water likely to drop in",
    },
    {
      name: "knock-out gone at the top, finger on the busbar",
      facts: { opening: "finger", "drops-likely": false },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: nothing stands between a finger and live metal",
    },
    {
      name: "slot up at the ceiling, out of reach",
      facts: { opening: "slot-out-of-reach", "drops-likely": false },
      possible: ["none"],
      source: "regulation 416.2.2: horizontal top surfaces readily accessible",
    },
    {
      name: "slot seen, what is above not noted",
      facts: { opening: "slot" },
      possible: ["C3", "C2"],
      missing: ["drops-likely"],
      source: "union over what stands above",
    },
  ],
});
