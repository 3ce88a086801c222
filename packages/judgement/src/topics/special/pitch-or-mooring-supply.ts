import { all, any, is, NEVER, no, oneKind, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Supplies to caravans on pitches and to boats at moorings. */
export const pitchOrMooringSupply = topic({
  id: "pitch-or-mooring-supply",
  title: "Supply to a caravan pitch or a boat mooring",
  group: "special",
  items: ["special.caravans-boats"],
  facts: {
    earthing: oneKind({
      asks: "What earth does the outlet give to the caravan or boat?",
      effort: "opened",
      values: {
        "separate-electrode": "the outlet is earthed by an electrode, apart from the supply's PEN",
        "tn-s": "the outlet is earthed by a separate supply conductor",
        pme: "the outlet is earthed by the supply's PEN (PME)",
      },
    }),
    "rcd-each": yesNo({
      asks: "Has each outlet its own 30 mA RCD in all live conductors, and does it work?",
      effort: "glance",
      yes: "each outlet has its own working 30 mA RCD",
      no: "outlets share an RCD or have no working one of 30 mA",
      worse: "no",
    }),
    outlet: ranked({
      asks: "What state are the outlets in?",
      effort: "glance",
      values: {
        sound: "the outlets are sound and keep water out",
        weathered: "outlets are cracked or no longer keep water out",
        "live-parts": "live parts of an outlet can be touched",
      },
    }),
    "rcd-any": yesNo({
      asks: "Is there at least one 30 mA RCD that works before the outlet?",
      effort: "glance",
      yes: "a working 30 mA RCD stands before the outlet",
      no: "no working 30 mA RCD stands before the outlet",
      worse: "no",
    }),
  },
  contested: {},
  paths: [
    {
      id: "broken-pen",
      hazard: "shock-under-fault",
      route: "the supply's PEN breaks and the metal body takes a dangerous voltage to the ground under it",
      exists: is("earthing", "pme"),
      layers: [
        oneEventAway("pen", "fault-protection", "the supply's PEN, which the distributor keeps whole", ["708.411.4"]),
      ],
    },
    {
      id: "wet-outlet",
      hazard: "contact-with-live-parts",
      route: "somebody touches a live part at the outlet or a damaged lead",
      exists: any(is("outlet", "weathered", "live-parts"), no("rcd-any")),
      layers: [
        {
          id: "enclosure",
          provision: "barrier-or-enclosure",
          words: "the outlet's enclosure and the lead's insulation",
          gone: is("outlet", "live-parts"),
          sound: NEVER,
          regulations: ["708.512.2", "416.2.1"],
        },
        {
          id: "rcd",
          provision: "additional-protection",
          words: "an RCD of 30 mA or less behind sound enclosures",
          gone: any(no("rcd-any"), is("outlet", "weathered", "live-parts")),
          sound: NEVER,
          regulations: ["708.415.1"],
        },
      ],
    },
  ],
  departures: [
    { when: no("rcd-each"), words: "outlets have no RCD of their own", regulations: ["708.415.1", "709.531.2"] },
    {
      when: all(is("earthing", "pme"), yes("rcd-any")),
      words: "a PME earth is given to a caravan or boat",
      regulations: ["708.411.4"],
    },
  ],
  client: {
    C1: "Live parts of an outlet can be touched. Switch it off and keep people away now.",
    C2: "The supply to the caravan or boat could give a shock after one fault. Have it put right soon.",
    C3: "The outlets share a safety switch. Each should have its own. It is not a danger now.",
    FI: [
      unsure("We could not find out how the caravan or boat supply is earthed. This must be looked at soon.", [
        "earthing",
      ]),
      unsure("We could not find out if the supply to the caravan or boat is safe. This must be looked at soon.", [
        "outlet",
        "rcd-any",
      ]),
    ],
    none: "The supply to the caravan or boat is as it should be.",
  },
  remedies: [
    { words: "Fit a 30 mA RCD for each outlet.", changes: { "rcd-each": "yes", "rcd-any": "yes" } },
    { words: "Replace damaged outlets.", changes: { outlet: "sound" } },
    {
      words: "Give the outlets an electrode, apart from the supply's earth.",
      changes: { earthing: "separate-electrode" },
    },
  ],
  examples: [
    {
      name: "PME earth on a caravan pitch",
      facts: { earthing: "pme", "rcd-each": true, "rcd-any": true, outlet: "sound" },
      possible: ["C2"],
      source: "708.411.4 and the supply regulations",
    },
    {
      name: "two outlets on one RCD",
      facts: { earthing: "separate-electrode", "rcd-each": false, "rcd-any": true, outlet: "sound" },
      possible: ["C3"],
      source: "708.415.1",
    },
    {
      name: "earthing not known",
      facts: { "rcd-each": true, "rcd-any": true, outlet: "sound" },
      possible: ["none", "C2"],
      missing: ["earthing"],
      source: "union over the earthing",
    },
  ],
});
