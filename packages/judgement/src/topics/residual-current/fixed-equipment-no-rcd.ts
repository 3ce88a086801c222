import { all, held, is, NEVER, no, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** A cooker, heater, shower or other fixed equipment without 30 mA RCD protection, its earthing and disconnection being in order. */
export const fixedEquipmentNoRcd = topic({
  id: "fixed-equipment-no-rcd",
  title: "Fixed equipment without RCD",
  group: "residual-current",
  items: ["circuits.additional-protection"],
  facts: {
    "rcd-30ma": yesNo({
      asks: "Is the circuit behind an RCD of 30 mA or less that works?",
      effort: "glance",
      yes: "a working RCD of 30 mA or less protects the circuit",
      no: "no working RCD of 30 mA or less protects the circuit",
      worse: "no",
    }),
    place: ranked({
      asks: "Where is the equipment, and what do people do with it?",
      effort: "glance",
      values: {
        dry: "the equipment is dry, and people are dry when they use it",
        wet: "people are wet when they use it, or it heats water that they stand in",
      },
    }),
    "asked-by-maker": yesNo({
      asks: "Do the maker's instructions ask for an RCD?",
      effort: "opened",
      yes: "the maker asks for an RCD",
      no: "the maker does not ask for an RCD, or nothing is known of it",
      worse: "yes",
    }),
  },
  contested: {
    "wet-use": {
      question: "What weight has the missing RCD where people are wet and fault protection is sound?",
      positions: {
        improvement: {
          words: "it is an improvement to advise",
          because: "earthing and disconnection are in order, and additional protection is an extra",
        },
        "layer-lost": {
          words: "it is potentially dangerous",
          because: "on wet skin the time the breaker takes is too long, and makers of showers ask for an RCD",
        },
      },
    },
  },
  paths: [
    {
      id: "fault-in-equipment",
      hazard: "shock-under-fault",
      route: "the equipment fails inside, and its metal or water becomes live under somebody's hand",
      exists: no("rcd-30ma"),
      layers: [
        {
          id: "basic",
          provision: "insulation",
          words: "the insulation inside the equipment",
          gone: NEVER,
          sound: NEVER,
          regulations: ["416.1"],
        },
        {
          id: "fault-protection",
          provision: "fault-protection",
          words: "earthing and disconnection in time",
          gone: all(is("place", "wet"), held("wet-use", "layer-lost")),
          sound: NEVER,
          regulations: ["411.3.1.1", "411.3.2"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(no("rcd-30ma"), yes("asked-by-maker")),
      words: "the RCD that the maker of the equipment asks for is absent",
      regulations: ["134.1.1"],
    },
    {
      when: all(no("rcd-30ma"), is("place", "wet")),
      words: "equipment used by people who are wet has no RCD of 30 mA or less",
      regulations: ["701.411.3.3", "415.1.1"],
    },
  ],
  client: {
    C2: "No fast safety switch that works guards this, and a fault could make it live. It could give a shock. Fix this soon.",
    C3: "No fast safety switch that works guards this. Adding one is advised.",
    FI: [
      unsure("We could not find out if a fault here would be cut off in time. It must be looked at soon.", [
        "rcd-30ma",
      ]),
      unsure(
        "No fast safety switch that works guards this. We could not find out if people are wet when they use it. It must be looked at soon.",
        ["place"],
        no("rcd-30ma"),
      ),
    ],
    none: "This is protected well enough.",
  },
  remedies: [{ words: "Protect the circuit by a 30 mA RCD or RCBO.", changes: { "rcd-30ma": "yes" } }],
  examples: [
    {
      name: "immersion heater on its own breaker",
      facts: { "rcd-30ma": false, place: "dry", "asked-by-maker": false },
      possible: ["none"],
      classification: "none",
      source: "trade practice: no rule asks for it",
    },
    {
      name: "electric shower, earthing sound",
      facts: { "rcd-30ma": false, place: "wet", "asked-by-maker": true },
      possible: ["C3"],
      source: "trade discussion: showers without RCD",
    },
    {
      name: "the same held to have lost a layer",
      facts: { "rcd-30ma": false, place: "wet", "asked-by-maker": true },
      positions: { "wet-use": "layer-lost" },
      possible: ["C2"],
      source: "trade discussion: showers without RCD",
    },
    {
      name: "maker's instructions not to be found yet",
      facts: { "rcd-30ma": false, place: "dry" },
      possible: ["none", "C3"],
      missing: ["asked-by-maker"],
      source: "union over what the maker asks for",
    },
  ],
});
