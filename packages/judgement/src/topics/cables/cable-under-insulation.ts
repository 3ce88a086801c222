import { all, any, held, is, NEVER, no, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A cable in or under thermal insulation, where it cannot shed its heat. */
export const cableUnderInsulation = topic({
  id: "cable-under-insulation",
  title: "Cable in thermal insulation",
  group: "cables",
  items: ["circuits.capacity", "circuits.support"],
  facts: {
    covered: ranked({
      asks: "How does it lie?",
      effort: "opened",
      values: {
        clear: "it lies clear of thermal insulation or on top of it",
        "one-side": "it lies against a surface with insulation on one side",
        surrounded: "it is surrounded by insulation for more than half a metre",
      },
    }),
    "within-cable": yesNo({
      asks: "Lying like that, does it still carry the rated current of its device?",
      effort: "opened",
      yes: "lying like that it carries the rated current of its device",
      no: "lying like that it carries less than the rated current of its device",
      worse: "no",
      worked: {
        by: "cable-capacity",
        matter: "device-within-cable",
        met: "yes",
        notMet: "no",
        findings: "not-met-only",
      },
    }),
    load: ranked({
      asks: "How is it loaded?",
      effort: "glance",
      values: {
        light: "it carries little, or for minutes only",
        heavy:
          "it carries heavy load for long: shower of a large family, heating, cooker, vehicle charging, a busy ring",
      },
    }),
    heat: ranked({
      asks: "Where it can be seen, what does the sheath show?",
      effort: "opened",
      values: {
        none: "the sheath is supple and unmarked",
        marks: "the sheath is browned, hard or soft",
      },
    }),
    polystyrene: yesNo({
      asks: "Does PVC sheath touch polystyrene?",
      effort: "opened",
      yes: "PVC sheath touches polystyrene",
      no: "PVC sheath does not touch polystyrene",
      worse: "yes",
    }),
  },
  contested: {
    "light-load": {
      question: "Does a light load make up for a cable that insulation has derated below its device?",
      positions: {
        counts: {
          words: "while it carries little, it is to be improved",
          because: "heat grows with the square of the current, and nothing shows heat",
        },
        "does-not-count": {
          words: "a device that no longer protects the cable is a danger",
          because: "the load lies in the users' hands, 433.1.1",
        },
      },
    },
  },
  paths: [
    {
      id: "overheating",
      hazard: "burns-or-fire",
      route: "heat builds up in the insulation, the sheath fails and the cable burns or shorts",
      exists: all(is("covered", "one-side", "surrounded"), any(no("within-cable"), is("heat", "marks"))),
      layers: [
        {
          id: "device",
          provision: "overcurrent-protection",
          words: "a device that protects the cable as it lies, or a light load",
          gone: any(is("heat", "marks"), is("load", "heavy"), held("light-load", "does-not-count")),
          sound: NEVER,
          regulations: ["433.1.1", "523.9"],
        },
        oneEventAway("cool", "thermal-protection", "a cable that has stayed cool so far"),
      ],
    },
  ],
  departures: [
    {
      when: all(is("covered", "one-side", "surrounded"), no("within-cable")),
      words: "the cable is not sized for lying in insulation",
      regulations: ["523.9"],
    },
    { when: yes("polystyrene"), words: "PVC touches polystyrene and hardens", regulations: ["522.5.3"] },
  ],
  dangers: [
    {
      id: "hot",
      least: "C2",
      when: is("heat", "marks"),
      words: "the sheath is browned, hard or soft from heat",
      regulations: ["134.1.1", "523.9"],
    },
  ],
  client: {
    C2: [
      says(
        "A cable lies in wool or foam and has been too hot. It could start a fire. Have it put right soon.",
        all(is("covered", "one-side", "surrounded"), is("heat", "marks")),
      ),
      says(
        "A cable lies in wool or foam and cannot cool. It could get too hot and start a fire. Have it moved soon.",
        is("covered", "one-side", "surrounded"),
      ),
      "A cable has been too hot. It could start a fire. Have it put right soon.",
    ],
    C3: [
      says(
        "A cable lies in wool or foam. It copes for now. Moving it would make it safer.",
        all(is("covered", "one-side", "surrounded"), no("within-cable")),
      ),
      says(
        "A cable touches foam that makes its cover hard. It is not a danger now. Moving it would make it safer.",
        yes("polystyrene"),
      ),
    ],
    FI: [
      unsure("We could not see how a cable lies in wool or foam. It could get too hot. This must be looked at.", [
        "covered",
      ]),
      unsure(
        "A cable lies in wool or foam. We could not find out if it gets too hot. This must be looked at.",
        ["within-cable", "load", "heat"],
        is("covered", "one-side", "surrounded"),
      ),
      unsure("We could not find out if a cable has been too hot. This must be looked at.", ["heat"]),
    ],
    none: "The cables can cool well enough.",
  },
  remedies: [
    { words: "Lift the cable on top of the insulation.", changes: { covered: "clear", polystyrene: "no" } },
    {
      words: "Fit a smaller device where the load allows it, and replace a length that shows heat.",
      changes: { "within-cable": "yes", heat: "none" },
    },
    { words: "Replace it by a larger cable.", changes: { "within-cable": "yes", heat: "none" } },
  ],
  examples: [
    {
      name: "6 mm² to a shower on 40 A, surrounded for 2 m",
      facts: { covered: "surrounded", "within-cable": false, load: "heavy", heat: "none", polystyrene: false },
      possible: ["C2"],
      classification: "C2",
      source: "arithmetic: half of 47 A is 23.5 A against 40 A; regulation 523.9",
    },
    {
      name: "lighting cable on 6 A, surrounded",
      facts: { covered: "surrounded", "within-cable": true, load: "light", heat: "none", polystyrene: false },
      possible: ["none"],
      source: "arithmetic: half of 16 A is 8 A against 6 A",
    },
    {
      name: "bedroom ring under quilt, light use",
      facts: { covered: "surrounded", "within-cable": false, load: "light", heat: "none", polystyrene: false },
      possible: ["C3"],
      source: "trade discussion of cables in lofts",
    },
    {
      name: "the same held to be a danger",
      facts: { covered: "surrounded", "within-cable": false, load: "light", heat: "none", polystyrene: false },
      positions: { "light-load": "does-not-count" },
      possible: ["C2"],
      source: "trade discussion of cables in lofts",
    },
    {
      name: "PVC against polystyrene, carries its device",
      facts: { covered: "one-side", "within-cable": true, heat: "none", polystyrene: true },
      possible: ["C3"],
      source: "regulation 522.5.3",
    },
    {
      name: "length in insulation not seen",
      facts: {
        load: "heavy",
        heat: "none",
        polystyrene: false,
        "within-cable": false,
        covered: { notKnown: "limited", reason: "boarded loft" },
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "union over how it lies",
    },
    {
      name: "load not asked",
      facts: { covered: "surrounded", "within-cable": false, heat: "none", polystyrene: false },
      possible: ["C3", "C2"],
      missing: ["load"],
      source: "union over the load",
    },
  ],
});
