import { ALWAYS, all, any, held, is, NEVER, no, not, oneKind, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";
import { HEAT_OR_LOOSE } from "./facts.ts";

/** An enclosure that burns, in a home. */
export const boardCombustible = topic({
  id: "board-combustible",
  title: "Board enclosure that can burn",
  group: "boards",
  items: ["boards.non-combustible", "boards.overheating"],
  facts: {
    combustible: yesNo({
      asks: "Is the enclosure of a material that burns, with no non-combustible cabinet round it?",
      effort: "glance",
      yes: "the enclosure can burn and no non-combustible cabinet stands round it",
      no: "the enclosure, or a cabinet round it, is non-combustible",
      worse: "yes",
    }),
    premises: oneKind({
      asks: "Is it in a home?",
      effort: "glance",
      values: { home: "it is in a home", elsewhere: "it is not in a home" },
    }),
    "asked-when-fitted": yesNo({
      asks: "Was it fitted when non-combustible enclosures were already asked for in homes (from 2016)?",
      effort: "glance",
      yes: "the board was fitted when a non-combustible enclosure was already asked for",
      no: "the board was fitted before a non-combustible enclosure was asked for",
      worse: "yes",
    }),
    heat: HEAT_OR_LOOSE,
    "only-way-out": yesNo({
      asks: "Is it under the stairs or on the way out, where a fire would cut off the only escape?",
      effort: "glance",
      yes: "a fire at the board would cut off the only way out",
      no: "a fire at the board would leave another way out",
      worse: "yes",
    }),
    "alarm-near": yesNo({
      asks: "Is there a working smoke alarm that would sense smoke from the board?",
      effort: "glance",
      yes: "a working smoke alarm would sense smoke from the board",
      no: "no working smoke alarm would sense smoke from the board",
      worse: "no",
    }),
  },
  contested: {
    standing: {
      question: "What weight has an enclosure that can burn, where nothing is hot or loose?",
      positions: {
        improvement: {
          words: "it is short of today's edition and wants improving, no more",
          because: "with tight connections nothing sets it alight",
        },
        "met-its-edition": {
          words: "it is no matter for the report where it met the edition it was fitted under",
          because: "what is older is not unsafe for that, and nothing shows heat",
        },
        "way-out-counts": {
          words: "it is potentially dangerous where it stands on the only way out and no alarm warns",
          because: "one joint that works loose is enough, and the fire then stands between people and the door",
        },
      },
    },
  },
  paths: [
    {
      id: "board-fire",
      hazard: "burns-or-fire",
      route: "a joint heats until the board burns",
      exists: ALWAYS,
      layers: [
        {
          id: "cool-joints",
          provision: "thermal-protection",
          words: "tight joints that do not heat",
          gone: is("heat", "active"),
          sound: is("heat", "none"),
          regulations: ["421.1", "526.1"],
        },
        {
          id: "enclosure",
          provision: "barrier-or-enclosure",
          words: "an enclosure that holds a fire in",
          gone: yes("combustible"),
          sound: NEVER,
          regulations: ["421.1.201"],
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
      id: "escape-cut-off",
      hazard: "burns-or-fire",
      route: "a fire at the board cuts off the only way out while people sleep",
      exists: all(yes("only-way-out"), held("standing", "way-out-counts")),
      layers: [
        {
          id: "joints-of-years",
          provision: "thermal-protection",
          words: "joints that have not worked loose so far",
          gone: is("heat", "active"),
          sound: NEVER,
          regulations: ["526.1"],
        },
        {
          id: "enclosure-on-way-out",
          provision: "barrier-or-enclosure",
          words: "an enclosure that holds a fire in",
          gone: yes("combustible"),
          sound: no("combustible"),
          regulations: ["421.1.201"],
        },
        {
          id: "alarm",
          provision: "information",
          words: "a smoke alarm that wakes people in time",
          gone: no("alarm-near"),
          sound: NEVER,
        },
      ],
    },
  ],
  departures: [
    {
      when: all(
        yes("combustible"),
        is("premises", "home"),
        any(not(held("standing", "met-its-edition")), yes("asked-when-fitted")),
      ),
      words: "the enclosure in a home is not of non-combustible material",
      regulations: ["421.1.201"],
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
        "The fuse box can burn, and a part of it is hot, crackles or smells of burning. Turn it off and keep away. It must be made safe today.",
        yes("combustible"),
      ),
      "A part of the fuse box is hot, crackles or smells of burning. Turn it off and keep away. It must be made safe today.",
    ],
    C2: [
      says(
        "The fuse box can burn, and there are signs of a fire risk. Get it repaired soon.",
        all(yes("combustible"), is("heat", "loose", "marks")),
      ),
      says(
        "A wire in the fuse box is loose, or parts have been hot. It could start a fire. Get it repaired soon.",
        is("heat", "loose", "marks"),
      ),
      says(
        "The fuse box can burn. A fire there would block the only way out. Have it changed soon.",
        all(yes("combustible"), yes("only-way-out")),
      ),
    ],
    C3: "The fuse box is of a kind that can burn. We saw no heat. A metal one would be safer.",
    FI: [
      unsure(
        "The fuse box can burn. We could not check it for heat or loose wires. It must be looked at soon.",
        ["heat"],
        yes("combustible"),
      ),
      unsure("We could not check the fuse box for heat or loose wires. It must be looked at soon.", ["heat"]),
      unsure(
        "We could not find out how far a fire in the fuse box would put people at risk. It must be looked at soon.",
        ["combustible", "only-way-out", "alarm-near"],
      ),
    ],
    none: "The fuse box gives no cause for worry about fire.",
  },
  remedies: [
    {
      words: "Tighten the terminals as the maker says and replace parts hurt by heat.",
      changes: { heat: "none" },
    },
    { words: "Fit a smoke alarm near the board.", changes: { "alarm-near": "yes" } },
    {
      words: "Replace the enclosure by a non-combustible one, or put it in a non-combustible cabinet.",
      changes: { combustible: "no", heat: "none" },
    },
  ],
  examples: [
    {
      name: "under timber stairs, only way out, no heat",
      facts: {
        combustible: true,
        premises: "home",
        "asked-when-fitted": false,
        heat: "none",
        "only-way-out": true,
        "alarm-near": true,
      },
      possible: ["C3"],
      classification: "C3",
      source: "trade discussion: enclosure that burns, in a home",
    },
    {
      name: "the same, held to have met its edition",
      facts: {
        combustible: true,
        premises: "home",
        "asked-when-fitted": false,
        heat: "none",
        "only-way-out": true,
      },
      positions: { standing: "met-its-edition" },
      possible: ["none"],
      source: "trade discussion: enclosure that burns, in a home",
    },
    {
      name: "the same with no alarm, held to cut off the way out",
      facts: {
        combustible: true,
        premises: "home",
        heat: "none",
        "only-way-out": true,
        "alarm-near": false,
      },
      positions: { standing: "way-out-counts" },
      possible: ["C2"],
      source: "trade discussion: enclosure that burns, in a home",
    },
    {
      name: "loose neutral found in it",
      facts: { combustible: true, premises: "home", heat: "loose", "only-way-out": false },
      possible: ["C2"],
      source: "trade practice: potentially dangerous with heat or loose terminals",
    },
    {
      name: "browned at the main switch",
      facts: { combustible: true, premises: "home", heat: "marks", "only-way-out": false },
      possible: ["C2"],
      source: "trade practice: potentially dangerous with heat or loose terminals",
    },
    {
      name: "not opened",
      facts: {
        combustible: true,
        premises: "home",
        heat: { notKnown: "limited", reason: "board could not be opened" },
        "only-way-out": false,
      },
      possible: ["C3", "C2", "C1"],
      classification: "FI",
      source: "union over what the open board would show",
    },
    {
      name: "only the material is known",
      facts: { combustible: true, premises: "home" },
      possible: ["C3", "C2", "C1"],
      missing: ["heat"],
      source: "union over what the open board would show",
    },
  ],
});
