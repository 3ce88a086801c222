import { ALWAYS, all, any, held, is, NEVER, no, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Cables bunched together, in a hot place, or with marks of heat. */
export const cableBunchedOrHot = topic({
  id: "cable-bunched-or-hot",
  title: "Cables bunched or overheated",
  group: "cables",
  items: ["circuits.capacity", "boards.overheating", "fire.hot-surfaces"],
  facts: {
    sheath: ranked({
      asks: "What do sheath and insulation show?",
      effort: "opened",
      values: {
        sound: "sheath and insulation are supple and unmarked",
        discoloured: "they are discoloured and still whole and supple",
        brittle: "they are brittle, cracked, softened or melted",
      },
    }),
    "warm-now": ranked({
      asks: "Under load, how warm is it?",
      effort: "measured",
      values: {
        cool: "under load it is hardly warmer than its surroundings",
        warm: "under load it is clearly warm",
        hot: "under load it is too hot to hold",
      },
    }),
    cause: ranked({
      asks: "Where does the heat come from?",
      effort: "opened",
      values: {
        none: "no cause is at work: nothing heats it, or what did was put right",
        outside: "a pipe, lamp, flue or plant near it heats it",
        own: "its own current or a connection heats it",
      },
    }),
    "within-cable": yesNo({
      asks: "Bunched as they are and as warm as the place is, do the cables carry the rated current of their devices?",
      effort: "opened",
      yes: "the cables carry the rated current of their devices as installed",
      no: "the cables carry less than the rated current of their devices",
      worse: "no",
      worked: {
        by: "cable-capacity",
        matter: "device-within-cable",
        met: "yes",
        notMet: "no",
        findings: "not-met-only",
      },
    }),
    "loaded-together": yesNo({
      asks: "Are several of them heavily loaded at the same time?",
      effort: "glance",
      yes: "several are heavily loaded at the same time",
      no: "few of them are ever heavily loaded at the same time",
      worse: "yes",
    }),
  },
  contested: {
    discoloured: {
      question:
        "Insulation that is discoloured and still supple, with the cause put right: is that anything to report?",
      positions: {
        improve: {
          words: "heated insulation has lost part of its life and is to be improved",
          because: "it was hotter than it is made for",
        },
        nothing: {
          words: "with the cause gone it is nothing",
          because: "it still insulates and bends",
        },
      },
    },
  },
  paths: [
    {
      id: "burning",
      hazard: "burns-or-fire",
      route: "insulation goes on heating until it fails, arcs and burns",
      exists: any(
        is("cause", "outside", "own"),
        is("warm-now", "hot"),
        all(no("within-cable"), yes("loaded-together")),
      ),
      layers: [
        {
          id: "cause",
          provision: "thermal-protection",
          words: "a cable that is not heated beyond what it is made for",
          gone: any(
            is("sheath", "brittle"),
            is("warm-now", "hot"),
            all(is("cause", "outside", "own"), is("sheath", "discoloured")),
            all(no("within-cable"), yes("loaded-together")),
          ),
          sound: NEVER,
          regulations: ["523.5", "522.1.1", "522.2.1"],
        },
        {
          id: "insulation",
          provision: "insulation",
          words: "insulation that still holds",
          gone: all(is("sheath", "brittle"), is("warm-now", "hot")),
          sound: NEVER,
          regulations: ["421.1.1"],
        },
      ],
    },
    {
      id: "cracked",
      hazard: "contact-with-live-parts",
      route: "brittle insulation falls off on the next movement",
      exists: is("sheath", "brittle"),
      layers: [
        {
          id: "insulation",
          provision: "insulation",
          words: "the insulation of the cores",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["416.1"],
        },
        oneEventAway("enclosure", "barrier-or-enclosure", "the enclosure around the heated ends", ["416.2.1"]),
      ],
    },
  ],
  departures: [
    {
      when: any(
        is("sheath", "brittle"),
        all(is("sheath", "discoloured"), any(held("discoloured", "improve"), is("cause", "outside", "own"))),
      ),
      words: "cables are damaged by heat",
      regulations: ["134.1.1", "522.2.1"],
    },
    {
      when: no("within-cable"),
      words: "cables are not sized for being bunched or warm",
      regulations: ["523.5", "522.1.1"],
    },
    {
      when: any(is("cause", "outside", "own"), is("warm-now", "hot")),
      words: "cables are heated",
      regulations: ["522.2.1", "523.1"],
    },
  ],
  client: {
    C1: "A cable is too hot to hold and its cover is falling apart. It could start a fire now. The power to it must stay off until it is mended.",
    C2: [
      says(
        "The cover of cables is brittle from heat. It may fail and start a fire. Have this put right soon.",
        is("sheath", "brittle"),
      ),
      "Cables get too hot or carry too much. Their cover may fail and start a fire. Have this put right soon.",
    ],
    C3: [
      says(
        "Cables are packed too close for what they may carry. They cope for now. Spacing them out would be better.",
        no("within-cable"),
      ),
      "Cables were hot once, or lie near heat. They cope for now. Keeping them cool would be better.",
    ],
    FI: [
      unsure(
        "Cables look as if they were hot. We could not find out why. They could start a fire. This must be looked at.",
        ["cause"],
        is("sheath", "discoloured", "brittle"),
      ),
      unsure("We could not find out if cables get too hot. They could start a fire. This must be looked at.", [
        "sheath",
        "warm-now",
        "cause",
        "within-cable",
        "loaded-together",
      ]),
    ],
    none: "The cables stay cool enough.",
  },
  remedies: [
    {
      words: "Spread the cables, or shield them from what heats them.",
      changes: { "within-cable": "yes", cause: "none" },
    },
    {
      words: "Remake the connection or lower the load that heats them, and cut back to sound insulation.",
      changes: { cause: "none", "warm-now": "cool", sheath: "sound" },
    },
    {
      words: "Replace by larger or heat-resisting cable.",
      changes: { sheath: "sound", "within-cable": "yes", cause: "none" },
    },
  ],
  examples: [
    {
      name: "ends browned and brittle at a shower switch",
      facts: {
        sheath: "brittle",
        "warm-now": "warm",
        cause: "own",
        "within-cable": true,
        "loaded-together": false,
      },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: heat at a connection",
    },
    {
      name: "twelve circuits bunched, two ever loaded",
      facts: { sheath: "sound", "warm-now": "cool", cause: "none", "within-cable": false, "loaded-together": false },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice; regulation 523.5",
    },
    {
      name: "heater circuits of an electrically heated house bunched",
      facts: { sheath: "sound", "warm-now": "warm", cause: "none", "within-cable": false, "loaded-together": true },
      possible: ["C2"],
      source: "regulation 523.5",
    },
    {
      name: "melted and too hot to hold",
      facts: { sheath: "brittle", "warm-now": "hot" },
      possible: ["C1"],
      source: "trade practice: failing now",
    },
    {
      name: "discoloured from a joint since remade",
      facts: { sheath: "discoloured", "warm-now": "cool", cause: "none", "within-cable": true },
      possible: ["C3"],
      source: "trade practice",
    },
    {
      name: "the same held to be nothing",
      facts: { sheath: "discoloured", "warm-now": "cool", cause: "none", "within-cable": true },
      positions: { discoloured: "nothing" },
      possible: ["none"],
      source: "trade discussion",
    },
    {
      name: "discoloured, cause not found",
      facts: {
        sheath: "discoloured",
        "warm-now": "cool",
        "within-cable": true,
        cause: { notKnown: "limited", reason: "no load could be put on" },
      },
      possible: ["C3", "C2"],
      classification: "FI",
      source: "union over the cause",
    },
    {
      name: "not looked at under load",
      facts: { sheath: "sound", cause: "none", "within-cable": true },
      possible: ["none", "C2"],
      missing: ["warm-now"],
      source: "union over the temperature",
    },
  ],
});
