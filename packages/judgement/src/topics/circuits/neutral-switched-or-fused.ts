import { ALWAYS, all, is, NEVER, no, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** A switch or fuse of an accessory that opens the neutral while the line stays connected. */
export const neutralSwitchedOrFused = topic({
  id: "neutral-switched-or-fused",
  title: "Point: switch or fuse of an accessory in the neutral",
  group: "circuits",
  items: ["accessories.single-pole-switches", "boards.single-pole"],
  facts: {
    opens: ranked({
      asks: "At the accessory, can the neutral be opened while the line stays connected? (For fuses at the board, see neutral-fused.)",
      effort: "opened",
      values: {
        never: "the neutral is not switched, or opens only together with the line",
        "by-fuse": "the fuse of a connection unit is in the neutral, and leaves the line connected when it opens",
        "by-switch": "a single-pole switch opens the neutral and leaves the line connected",
      },
    }),
    "line-also": yesNo({
      asks: "Does another switch in reach of the user break the line of the same point?",
      effort: "opened",
      yes: "another switch in reach breaks the line of the same point",
      no: "nothing else in reach breaks the line",
      worse: "no",
    }),
    "live-in-use": yesNo({
      asks: "Switched off there, can a user touch live metal without a tool, as when changing a lamp or cleaning an open element?",
      effort: "opened",
      yes: "a user reaches live metal without a tool",
      no: "what stays live is behind a cover that needs a tool",
      worse: "yes",
    }),
  },
  contested: {},
  paths: [
    {
      id: "seems-dead",
      hazard: "contact-with-live-parts",
      route: "equipment stops and seems dead, but its line is live, and somebody works on it",
      exists: is("opens", "by-fuse", "by-switch"),
      layers: [
        {
          id: "isolation",
          provision: "isolation",
          words: "switching off that breaks the line",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["132.14.1", "132.14.2"],
        },
        {
          id: "closed",
          provision: "barrier-or-enclosure",
          words: "covers around what stays live",
          gone: all(is("opens", "by-switch"), yes("live-in-use"), no("line-also")),
          sound: NEVER,
          regulations: ["416.2.4"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("opens", "by-fuse", "by-switch"),
      words: "a single-pole device stands in the neutral",
      regulations: ["132.14.1", "132.14.2"],
    },
  ],
  client: {
    C1: "A switch does not cut the live wire. Live metal can be touched when it seems off. Keep the power off until it is mended.",
    C2: "A switch or fuse cuts the wrong wire. Things can seem dead and still give a shock. Have it changed soon.",
    FI: unsure(
      "We could not find out if a switch or fuse cuts the right wire. If not, there could be a shock. This must be looked at.",
      ["opens"],
    ),
    none: "Switches and fuses cut the right wire.",
  },
  remedies: [
    { words: "Move the switch into the line and prove it.", changes: { opens: "never" } },
    { words: "Turn the supply of the connection unit round and prove it.", changes: { opens: "never" } },
  ],
  examples: [
    {
      name: "fuse of a connection unit in the neutral",
      facts: { opens: "by-fuse" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: the fuse opens and leaves the appliance live; regulation 132.14.2",
    },
    {
      name: "light switch in the neutral",
      facts: { opens: "by-switch", "live-in-use": false },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice; regulation 132.14.1",
    },
    {
      name: "heater element in reach of a finger while its switch in the neutral is off",
      facts: { opens: "by-switch", "live-in-use": true, "line-also": false },
      possible: ["C1"],
      source: "trade practice: live metal in reach",
    },
    {
      name: "double-pole switch",
      facts: { opens: "never" },
      possible: ["none"],
      source: "regulation 132.14.2",
    },
    {
      name: "switch not opened",
      facts: { "live-in-use": false },
      possible: ["none", "C2"],
      missing: ["opens"],
      source: "union over where the switch stands",
    },
  ],
});
