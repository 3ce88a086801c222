import { ALWAYS, all, is, NEVER, not, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";
import { HEAT_OR_LOOSE } from "./facts.ts";

/** A board of wood, or with a wooden back. */
export const oldWoodenBoard = topic({
  id: "old-wooden-board",
  title: "Old board of wood or with a wooden back",
  group: "boards",
  items: ["boards.enclosure", "boards.overheating"],
  facts: {
    wood: ranked({
      asks: "Where is there wood, or another thing that burns, in or behind the board?",
      effort: "opened",
      values: {
        none: "no wood stands in the board, or a plate that does not burn lies between",
        behind: "a closed enclosure is screwed to wood",
        "live-on-wood": "live parts or their connections lie on wood or open to it",
      },
    }),
    "live-reach": yesNo({
      asks: "Can live metal be touched from the rear, the sides or the front with the test finger?",
      effort: "opened",
      yes: "a finger touches live metal",
      no: "a finger does not touch live metal",
      worse: "yes",
    }),
    heat: HEAT_OR_LOOSE,
    insulation: ranked({
      asks: "How is the insulation of the conductors in it?",
      effort: "opened",
      values: {
        supple: "the insulation in the board is supple and whole",
        stiff: "the insulation in the board is stiff with age and still whole",
        crumbling: "the insulation in the board crumbles when moved",
      },
    }),
  },
  contested: {},
  paths: [
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "somebody touches live metal of the board",
      exists: yes("live-reach"),
      layers: [
        {
          id: "enclosure",
          provision: "barrier-or-enclosure",
          words: "an enclosure on all sides",
          gone: yes("live-reach"),
          sound: NEVER,
          regulations: ["416.2.1"],
        },
      ],
    },
    {
      id: "wood-burns",
      hazard: "burns-or-fire",
      route: "a hot joint or an arc sets the wood alight",
      exists: ALWAYS,
      layers: [
        {
          id: "cool-joints",
          provision: "thermal-protection",
          words: "tight joints and whole insulation that do not heat or arc",
          gone: is("heat", "active"),
          sound: all(is("heat", "none"), not(is("insulation", "crumbling"))),
          regulations: ["421.1", "526.1"],
        },
        {
          id: "no-fuel",
          provision: "surroundings",
          words: "an enclosure that does not burn",
          gone: is("wood", "live-on-wood"),
          sound: NEVER,
          regulations: ["421.1", "526.5"],
        },
      ],
    },
    {
      id: "loose-joint",
      hazard: "burns-or-fire",
      route: "a joint that is loose or has run hot heats on or lets go",
      exists: not(is("heat", "none")),
      layers: [
        {
          id: "grip",
          provision: "thermal-protection",
          words: "a terminal that holds its conductor",
          gone: not(is("heat", "none")),
          sound: NEVER,
          regulations: ["526.1"],
        },
        oneEventAway("stands-heat", "barrier-or-enclosure", "the parts round it, which stand some heat", ["421.1"]),
      ],
    },
    {
      id: "insulation-falls",
      hazard: "contact-with-live-parts",
      route: "insulation falls off when the board is worked on or shaken, and metal becomes live",
      exists: is("insulation", "crumbling"),
      layers: [
        {
          id: "basic",
          provision: "insulation",
          words: "the insulation of the conductors",
          gone: is("insulation", "crumbling"),
          sound: NEVER,
          regulations: ["416.1"],
        },
        {
          id: "case",
          provision: "barrier-or-enclosure",
          words: "the case of the board",
          gone: yes("live-reach"),
          sound: NEVER,
          regulations: ["416.2.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("wood", "live-on-wood"),
      words: "connections are not enclosed by material that does not burn",
      regulations: ["526.5", "421.1"],
    },
    {
      when: not(is("heat", "none")),
      words: "joints in the board are loose or have run hot",
      regulations: ["526.1"],
    },
  ],
  dangers: [
    {
      id: "active",
      least: "C1",
      when: is("heat", "active"),
      words: "a part is too hot to hold, smells of burning or crackles now",
      regulations: ["421.1.1", "526.1"],
    },
  ],
  client: {
    C1: [
      says(
        "Live metal can be touched in the old fuse board. It can kill. Keep away. Make it safe today.",
        yes("live-reach"),
      ),
      says(
        "A part of the old fuse board is hot or smells of burning. Turn it off and keep away. Make it safe today.",
        is("heat", "active"),
      ),
    ],
    C2: "The old fuse board is in a bad state. It could start a fire or give a shock. Replace it soon.",
    C3: "The fuse board is old and part of it is wood. It is not a danger now. A new one would be better.",
    FI: unsure("We could not look at all parts of the old fuse board. It could be unsafe. It must be looked at soon.", [
      "live-reach",
      "heat",
      "insulation",
      "wood",
    ]),
    none: "The fuse board is old, but it is sound.",
  },
  remedies: [
    {
      words: "Tighten the joints and replace what heat has hurt.",
      changes: { heat: "none" },
    },
    { words: "Close the open sides with a plate that does not burn.", changes: { wood: "none", "live-reach": "no" } },
    {
      words: "Replace the board.",
      changes: { wood: "none", "live-reach": "no", heat: "none", insulation: "supple" },
    },
  ],
  examples: [
    {
      name: "open-backed on wood, cool and tight",
      facts: {
        wood: "live-on-wood",
        "live-reach": false,
        heat: "none",
        insulation: "stiff",
      },
      possible: ["C3"],
      classification: "C3",
      source: "trade discussion: old boards with a wooden back",
    },
    {
      name: "closed iron case on a wooden plate",
      facts: { wood: "behind", "live-reach": false, heat: "none", insulation: "supple" },
      possible: ["none"],
      source: "trade discussion: sound old boards",
    },
    {
      name: "browned wood behind a fuse way",
      facts: { wood: "live-on-wood", "live-reach": false, heat: "marks", insulation: "stiff" },
      possible: ["C2"],
      source: "trade practice: heat beside what burns",
    },
    {
      name: "terminals open at the rear",
      facts: { wood: "live-on-wood", "live-reach": true },
      possible: ["C1"],
      source: "trade practice: live parts within reach",
    },
    {
      name: "too frail to open",
      facts: {
        wood: "live-on-wood",
        "live-reach": false,
        heat: { notKnown: "limited", reason: "too frail to disturb" },
        insulation: { notKnown: "limited", reason: "too frail to disturb" },
      },
      possible: ["C3", "C2", "C1"],
      classification: "FI",
      source: "union over what opening would show",
    },
    {
      name: "not opened yet",
      facts: { wood: "behind", "live-reach": false, heat: "none" },
      possible: ["none", "C2"],
      missing: ["insulation"],
      source: "union over what opening would show",
    },
  ],
});
