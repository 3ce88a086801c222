import { ALWAYS, all, held, is, NEVER, not, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Cables that are not held: sagging, hanging across a way, or fixed so that they fall early in a fire. */
export const cableUnsupported = topic({
  id: "cable-unsupported",
  title: "Cables not supported",
  group: "cables",
  items: ["circuits.support", "fire.escape-routes"],
  facts: {
    support: ranked({
      asks: "How are the cables held?",
      effort: "glance",
      values: {
        held: "the cables are held along their length",
        sagging: "the cables sag or lie loose, and nothing pulls on them",
        pulling: "the cables hang so that their weight or people pull on connections",
        "in-the-way": "the cables hang where people catch on them",
      },
    }),
    "early-fall": yesNo({
      asks: "Would the fixings let go early in a fire, so that cables fall where people or firefighters pass?",
      effort: "glance",
      yes: "the fixings would let go early in a fire and cables would fall across the way",
      no: "fixings of metal or the way the cables lie would keep them up",
      worse: "yes",
    }),
    bulk: ranked({
      asks: "How much would fall?",
      effort: "glance",
      values: {
        little: "a single light cable or two would fall",
        much: "a bunch or many cables would fall, enough to catch a person",
      },
    }),
    "way-out": yesNo({
      asks: "Is it the way out of the building, or a way firefighters come in by?",
      effort: "glance",
      yes: "it is a way out, or a way in for firefighters",
      no: "it is not a way out or in",
      worse: "yes",
    }),
  },
  contested: {
    "falling-cables": {
      question: "When are cables that would fall in a fire potentially dangerous?",
      positions: {
        "by-bulk": {
          words: "when enough would fall across a way out to catch a person",
          because: "firefighters have died in fallen cables, and a fire is the one event it takes",
        },
        improve: {
          words: "they are to be improved, however many",
          because: "they break no protection against shock, and the rule came late",
        },
        nothing: {
          words: "cables fixed in the manner of their day are nothing to report",
          because: "521.10.202 came in after most of them were put up",
        },
      },
    },
  },
  paths: [
    {
      id: "entangled",
      hazard: "mechanical-movement",
      route: "in a fire cables fall and people or firefighters are caught in them",
      exists: all(yes("early-fall"), yes("way-out"), is("bulk", "much"), held("falling-cables", "by-bulk")),
      layers: [
        oneEventAway("no-fire", "surroundings", "a fire that does not break out"),
        {
          id: "fixings",
          provision: "surroundings",
          words: "fixings that last in a fire",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["521.10.202"],
        },
      ],
    },
    {
      id: "pulled-out",
      hazard: "contact-with-live-parts",
      route: "a pull tears cores out of a connection or strips them",
      exists: is("support", "pulling", "in-the-way"),
      layers: [
        oneEventAway("insulation", "insulation", "connections and insulation that are whole so far", ["416.1"]),
        {
          id: "held",
          provision: "barrier-or-enclosure",
          words: "supports that take the weight and the pull",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["522.8.5", "526.6"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("support", "sagging", "pulling", "in-the-way"),
      words: "cables are not supported",
      regulations: ["522.8.4"],
    },
    {
      when: all(yes("early-fall"), not(held("falling-cables", "nothing"))),
      words: "cables would fall early in a fire",
      regulations: ["521.10.202"],
    },
  ],
  client: {
    C2: [
      says(
        "Cables hang loose. They could be pulled out and give a shock. Have them fixed up soon.",
        is("support", "pulling", "in-the-way"),
      ),
      says("Cables could fall on people in a fire. Have them fixed up soon.", all(yes("early-fall"), yes("way-out"))),
    ],
    C3: "Some cables are not held well. It is not a danger now. Have them fixed up.",
    FI: [
      unsure("We could not see how some cables are held. They could fall in a fire. This must be looked at.", [
        "support",
        "early-fall",
      ]),
      unsure("We could not find out if cables could fall on people in a fire. This must be looked at.", [
        "way-out",
        "bulk",
      ]),
    ],
    none: "The cables are held well enough.",
  },
  remedies: [
    { words: "Clip the cables and take the pull off their ends.", changes: { support: "held" } },
    {
      words: "Add metal clips or hooks at points that keep the cables up in a fire.",
      changes: { "early-fall": "no" },
    },
  ],
  examples: [
    {
      name: "one cable in plastic trunking over a hall, no metal fixing",
      facts: { support: "held", "early-fall": true, bulk: "little", "way-out": true },
      possible: ["C3"],
      classification: "C3",
      source: "trade discussion of cable supports; regulation 521.10.202",
    },
    {
      name: "the same held to be nothing",
      facts: { support: "held", "early-fall": true, bulk: "little", "way-out": true },
      positions: { "falling-cables": "nothing" },
      possible: ["none"],
      source: "trade discussion of cable supports",
    },
    {
      name: "a bunch on plastic ties above a common stair",
      facts: { support: "held", "early-fall": true, bulk: "much", "way-out": true },
      possible: ["C2"],
      source: "trade discussion: hanging in a way out",
    },
    {
      name: "the same held to be an improvement",
      facts: { support: "held", "early-fall": true, bulk: "much", "way-out": true },
      positions: { "falling-cables": "improve" },
      possible: ["C3"],
      source: "trade discussion of cable supports",
    },
    {
      name: "a cable hung on its junction box",
      facts: { support: "pulling", "early-fall": false },
      possible: ["C2"],
      classification: "C2",
      source: "regulation 522.8.5: no strain on conductors and connections",
    },
    {
      name: "fixings above a ceiling not seen",
      facts: {
        support: "held",
        bulk: "much",
        "way-out": true,
        "early-fall": { notKnown: "limited", reason: "ceiling not opened" },
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "union over the fixings",
    },
    {
      name: "amount not looked at",
      facts: { support: "held", "early-fall": true, "way-out": true },
      possible: ["C3", "C2"],
      missing: ["bulk"],
      source: "union over the amount",
    },
  ],
});
