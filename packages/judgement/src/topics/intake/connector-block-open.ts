import { ALWAYS, any, is, NEVER, no, ranked, says, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";
import { HOT_NOW, HOT_NOW_TOLD, heatAtIntake } from "./facts.ts";

/** The block that divides the tails between two boards or more. */
export const connectorBlockOpen = topic({
  id: "connector-block-open",
  title: "Connector block in the tails open, loose or hot",
  group: "intake",
  items: ["intake.meter-tails", "intake.isolator"],
  facts: {
    cover: ranked({
      asks: "How is the block covered?",
      effort: "glance",
      values: {
        "needs-tool": "the block is covered, and opens with a tool only",
        "by-hand": "the cover comes off by hand, or is cracked, and nothing live is reached while it is on",
        "live-reached": "a finger reaches live metal of the block",
      },
    }),
    tight: yesNo({
      asks: "Are its terminals tight, each with as many conductors as it is made for?",
      effort: "opened",
      yes: "its terminals are tight and not overfilled",
      no: "a terminal is loose or overfilled",
      worse: "no",
    }),
    heat: heatAtIntake({
      asks: "Does the block show signs of heat?",
      effort: "glance",
      none: "the block shows no sign of heat",
      marks: "the block shows signs of heat",
    }),
    fixed: yesNo({
      asks: "Is the block fixed, and do sheaths go into it?",
      effort: "glance",
      yes: "the block is fixed, and sheaths go into it",
      no: "the block hangs free, or sheaths stop short of it",
      worse: "no",
    }),
  },
  contested: {},
  paths: [
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "somebody touches live metal of the block",
      exists: ALWAYS,
      layers: [
        {
          id: "cover",
          provision: "barrier-or-enclosure",
          words: "the cover of the block",
          gone: is("cover", "live-reached"),
          sound: is("cover", "needs-tool"),
          regulations: ["416.2.1", "416.2.4"],
        },
      ],
    },
    {
      id: "hot-joint",
      hazard: "burns-or-fire",
      route: "a joint on the main fuse goes on heating until something burns",
      exists: ALWAYS,
      layers: [
        {
          id: "no-heat",
          provision: "thermal-protection",
          words: "joints that stay cool",
          gone: any(is("heat", "marks", "now"), no("tight")),
          sound: NEVER,
          regulations: ["526.1", "526.2"],
        },
        oneEventAway("around", "surroundings", "enclosures and surroundings that do not burn", ["421.1.1"]),
      ],
    },
  ],
  departures: [
    {
      when: no("fixed"),
      words: "the block is not fixed, or unsheathed conductors lie outside it",
      regulations: ["134.1.1", "526.8"],
    },
  ],
  dangers: [HOT_NOW],
  client: {
    C1: [
      HOT_NOW_TOLD,
      says(
        "Live metal of a joint in the main wires can be touched. It can kill. Keep away. Have it made safe now.",
        is("cover", "live-reached"),
      ),
    ],
    C2: "A joint in the main wires is loose, too full or badly covered, or has been hot. It could burn or give a shock. Have it put right soon.",
    C3: "A joint in the main wires should be better fixed. It is not a danger now.",
    FI: unsure("We could not look inside a joint in the main wires. This must be looked at soon.", [
      "cover",
      "tight",
      "heat",
    ]),
    none: "The joint in the main wires is in order.",
  },
  remedies: [
    { words: "Fix the block, and bring the sheaths into it.", changes: { fixed: "yes" } },
    { words: "Refit or replace the cover, with its screws.", changes: { cover: "needs-tool" } },
    {
      words: "Make the joints off anew in a block of the right size; the supplier isolates.",
      changes: { cover: "needs-tool", tight: "yes", heat: "none", fixed: "yes" },
    },
  ],
  examples: [
    {
      name: "cover missing, terminals in reach under the stairs",
      facts: { cover: "live-reached" },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: live parts in reach",
    },
    {
      name: "cover held by a clip that a hand opens",
      facts: { cover: "by-hand", tight: true, heat: "none", fixed: true },
      possible: ["C2"],
      source: "regulation 416.2.4",
    },
    {
      name: "two conductors forced into a terminal for one",
      facts: { cover: "needs-tool", tight: false, heat: "none", fixed: true },
      possible: ["C2"],
      source: "regulation 526.2",
    },
    {
      name: "hangs by its tails, closed and cool",
      facts: { cover: "needs-tool", tight: true, heat: "none", fixed: false },
      possible: ["C3"],
      source: "regulation 134.1.1",
    },
    {
      name: "sealed by the supplier, not opened",
      facts: {
        cover: "needs-tool",
        heat: "none",
        fixed: true,
        tight: { notKnown: "limited", reason: "the block carries the supplier's seal" },
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "union over what is inside",
    },
    {
      name: "not opened yet",
      facts: { cover: "needs-tool", heat: "none", fixed: true },
      possible: ["none", "C2"],
      missing: ["tight"],
      source: "union over what is inside",
    },
  ],
});
