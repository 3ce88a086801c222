import { all, any, is, NEVER, no, oneKind, ranked, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** A switch, breaker or fuse in the neutral that can open it while the line stays connected. */
export const neutralSwitchedOrFused = topic({
  id: "neutral-switched-or-fused",
  title: "Switch or fuse in the neutral alone",
  group: "circuits",
  items: ["boards.single-pole", "accessories.single-pole-switches"],
  facts: {
    opens: ranked({
      asks: "Can the neutral be opened while the line stays connected?",
      effort: "opened",
      values: {
        never: "the neutral is not switched, or opens only together with the line",
        "by-fuse": "a fuse or single breaker in the neutral can open and leave the line connected",
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
      asks: "With the neutral open, can a user touch live metal without a tool, as when changing a lamp or a fuse wire?",
      effort: "opened",
      yes: "a user reaches live metal without a tool",
      no: "what stays live is behind a cover that needs a tool",
      worse: "yes",
    }),
    service: oneKind({
      asks: "Is the circuit in service?",
      effort: "glance",
      values: { live: "the circuit is in service", dead: "the circuit is disconnected and locked off" },
    }),
  },
  contested: {},
  paths: [
    {
      id: "seems-dead",
      hazard: "contact-with-live-parts",
      route: "equipment stops and seems dead, but its line is live, and somebody works on it",
      exists: all(is("service", "live"), is("opens", "by-fuse", "by-switch")),
      layers: [
        {
          id: "isolation",
          provision: "isolation",
          words: "switching off that breaks the line",
          gone: any(is("opens", "by-fuse"), no("line-also"), is("opens", "by-switch")),
          sound: NEVER,
          regulations: ["132.14.1", "132.14.2"],
        },
        {
          id: "closed",
          provision: "barrier-or-enclosure",
          words: "covers around what stays live",
          gone: all(yes("live-in-use"), no("line-also")),
          sound: NEVER,
          regulations: ["416.2.4"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(is("service", "live"), is("opens", "by-fuse", "by-switch")),
      words: "a single-pole device stands in the neutral",
      regulations: ["132.14.1", "132.14.2"],
    },
  ],
  client: {
    C1: "A switch does not cut the live wire. Live metal can be touched when it seems off. Keep the power off until it is mended.",
    C2: "A switch or fuse cuts the wrong wire. Things can seem dead and still give a shock. Have it changed soon.",
    FI: "We could not find out if a switch or fuse cuts the right wire. If not, there could be a shock. This must be looked at.",
    none: "Switches and fuses cut the right wire.",
  },
  remedies: [
    { words: "Move the switch into the line and prove it.", changes: { opens: "never" } },
    {
      words: "Replace the fuse in the neutral by a solid link, or the board by one without neutral fuses.",
      changes: { opens: "never" },
    },
  ],
  examples: [
    {
      name: "old board with fuses in line and neutral",
      facts: { opens: "by-fuse", "live-in-use": false, service: "live" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: the neutral fuse can blow and leave equipment live; regulation 132.14.2",
    },
    {
      name: "light switch in the neutral",
      facts: { opens: "by-switch", "live-in-use": false, service: "live" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice; regulation 132.14.1",
    },
    {
      name: "heater element in reach of a finger while its switch in the neutral is off",
      facts: { opens: "by-switch", "live-in-use": true, "line-also": false, service: "live" },
      possible: ["C1"],
      source: "trade practice: live metal in reach",
    },
    {
      name: "double-pole switch",
      facts: { opens: "never", service: "live" },
      possible: ["none"],
      source: "regulation 132.14.2",
    },
    {
      name: "switch not opened",
      facts: { "live-in-use": false, service: "live" },
      possible: ["none", "C2"],
      missing: ["opens"],
      source: "union over where the switch stands",
    },
  ],
});
