import { ALWAYS, any, is, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A socket-outlet, switch or other accessory that is not firmly fixed. */
export const accessoryLoose = topic({
  id: "accessory-loose",
  title: "Loose accessory",
  group: "accessories",
  items: ["accessories.condition", "accessories.connections"],
  facts: {
    fixing: ranked({
      asks: "How is the accessory held?",
      effort: "glance",
      values: {
        firm: "the accessory is firmly fixed",
        loose: "the accessory or its box is loose but still held",
        hanging: "the accessory hangs by its cables",
      },
    }),
    "live-in-reach": yesNo({
      asks: "Does the looseness let a finger get at live metal?",
      effort: "glance",
      yes: "a finger gets at live metal behind the loose plate",
      no: "no live metal can be reached behind the loose plate",
      worse: "yes",
    }),
    strain: yesNo({
      asks: "Does it pull on the terminals when it moves, or is a cable rubbed or nicked?",
      effort: "opened",
      yes: "moving it strains the terminals or has hurt a cable",
      no: "terminals and cables take no strain from the movement",
      worse: "yes",
    }),
  },
  contested: {},
  paths: [
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "somebody touches live metal behind the loose plate",
      exists: ALWAYS,
      layers: [
        {
          id: "enclosure",
          provision: "barrier-or-enclosure",
          words: "the plate and the box together",
          gone: yes("live-in-reach"),
          sound: is("fixing", "firm", "loose"),
          regulations: ["416.2.1", "416.2.3"],
        },
      ],
    },
    {
      id: "connection-works-loose",
      hazard: "burns-or-fire",
      route: "use works a connection loose or a core through, and it arcs or makes metal live",
      exists: any(yes("strain"), is("fixing", "hanging")),
      layers: [
        oneEventAway("connections", "insulation", "connections and insulation that are strained but still hold", [
          "526.1",
          "526.6",
        ]),
      ],
    },
  ],
  departures: [
    {
      when: any(is("fixing", "loose", "hanging"), yes("strain")),
      words: "the accessory is not securely fixed",
      regulations: ["134.1.1", "526.6"],
    },
    { when: yes("live-in-reach"), words: "live parts can be reached", regulations: ["416.2.1"] },
  ],
  client: {
    C1: "Live metal can be touched behind a loose socket or switch. It can kill. Keep away until it is fixed.",
    C2: "A socket or switch hangs loose or pulls on its wires. A wire could come off and cause a fire or a shock. Fix it soon.",
    C3: "A socket or switch is loose. It is not a danger now. It should be fixed tight to the wall.",
    FI: [
      unsure(
        "A socket or switch is loose. We could not see if its wires are hurt. It must be looked at soon.",
        ["strain"],
        is("fixing", "loose", "hanging"),
      ),
      unsure("We could not find out if a socket or switch is fixed in a safe way. It must be looked at soon.", [
        "fixing",
        "live-in-reach",
        "strain",
      ]),
    ],
    none: "The socket or switch is firmly fixed.",
  },
  remedies: [
    {
      words: "Fix the box and tighten the accessory; check and remake the terminations.",
      changes: { fixing: "firm", "live-in-reach": "no", strain: "no" },
    },
  ],
  examples: [
    {
      name: "back box pulling out, nothing live in reach, no strain",
      facts: { fixing: "loose", "live-in-reach": false, strain: false },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: insecure fixing",
    },
    {
      name: "the same with strain on the terminals",
      facts: { fixing: "loose", "live-in-reach": false, strain: true },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: a connection is about to fail",
    },
    {
      name: "hanging by its cables, terminals in reach",
      facts: { fixing: "hanging", "live-in-reach": true },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: bare live metal in reach",
    },
    {
      name: "hanging by its cables, nothing in reach",
      facts: { fixing: "hanging", "live-in-reach": false },
      possible: ["C2"],
      source: "trade practice: cables are no fixing",
    },
    {
      name: "loose, not opened",
      facts: { fixing: "loose", "live-in-reach": false },
      possible: ["C3", "C2"],
      missing: ["strain"],
      source: "union over what opening would show",
    },
  ],
});
