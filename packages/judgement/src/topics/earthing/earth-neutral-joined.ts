import { ALWAYS, all, any, is, NEVER, no, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** Neutral and earth are joined where only the distributor, or nobody, may join them. */
export const earthNeutralJoined = topic({
  id: "earth-neutral-joined",
  title: "Neutral and earth joined in the installation",
  group: "earthing",
  items: ["earthing.arrangement", "circuits.cpc"],
  facts: {
    joined: ranked({
      asks: "Where are neutral and earth joined?",
      effort: "opened",
      values: {
        "by-distributor": "they are joined by the distributor or not at all, and nowhere after that",
        "link-at-origin": "somebody other than the distributor joined them at the origin",
        downstream: "they are joined in a board, an accessory or equipment of the installation",
        "neutral-as-earth": "a neutral is used as the earth of a circuit or of equipment",
      },
    }),
    "designed-so": yesNo({
      asks: "Is it an installation with its own transformer or generator, designed and recorded with the join at this one point?",
      effort: "glance",
      yes: "the source is the consumer's own, and design and records show the one join here",
      no: "the supply is the distributor's, or no record shows such a design",
      worse: "no",
    }),
    "metal-live": yesNo({
      asks: "Is earthed metal at a dangerous voltage to true earth now?",
      effort: "measured",
      yes: "earthed metal is at a dangerous voltage now",
      no: "earthed metal is not at a dangerous voltage",
      worse: "yes",
    }),
  },
  contested: {},
  paths: [
    {
      id: "neutral-opens",
      hazard: "shock-under-fault",
      route: "the neutral comes loose or is opened, its current finds earthed metal, and the metal becomes live",
      exists: ALWAYS,
      layers: [
        {
          id: "neutral",
          provision: "fault-protection",
          words: "a neutral that is whole, so that what is joined to it stays near earth potential",
          gone: all(yes("metal-live"), is("joined", "link-at-origin", "downstream", "neutral-as-earth")),
          sound: NEVER,
          regulations: ["411.4.2"],
        },
        {
          id: "apart",
          provision: "fault-protection",
          words: "protective conductors that carry no load current, kept apart from the neutral",
          gone: any(
            is("joined", "downstream", "neutral-as-earth"),
            all(is("joined", "link-at-origin"), no("designed-so")),
          ),
          sound: NEVER,
          regulations: ["543.4.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(is("joined", "downstream", "neutral-as-earth"), all(is("joined", "link-at-origin"), no("designed-so"))),
      words: "neutral and protective conductor are joined after the point where they part",
      regulations: ["543.4.1"],
    },
  ],
  dangers: [
    {
      id: "metal-live",
      least: "C1",
      when: yes("metal-live"),
      words: "metal within reach is live now",
      regulations: ["131.2.2", "411.3.1.1"],
    },
  ],
  client: {
    C1: [
      says(
        "Metal here is live, and two wires are joined that must be apart. It can kill. Turn the power off now.",
        any(is("joined", "downstream", "neutral-as-earth"), all(is("joined", "link-at-origin"), no("designed-so"))),
      ),
      "Metal here that must never be live is live. It can kill. Turn the power off now. Call the power network at once.",
    ],
    C2: [
      says(
        "Two wires are joined that must be apart. If one comes loose, metal could give a shock. Have it put right soon.",
        any(is("joined", "downstream", "neutral-as-earth"), no("designed-so")),
      ),
    ],
    FI: [
      unsure("We could not find out if two wires are joined that must be apart. This must be traced soon.", ["joined"]),
      unsure(
        "Two wires are joined where the power comes in. We could not find out if they are meant to be. This must be traced soon.",
        ["designed-so"],
        is("joined", "link-at-origin"),
      ),
      unsure("We could not find out if metal here is live. This must be tested soon.", ["metal-live"]),
    ],
    none: [
      says("The earth wires are kept apart as they should be.", is("joined", "by-distributor")),
      says(
        "The earth wires are joined in the way they were planned.",
        all(yes("designed-so"), is("joined", "link-at-origin")),
      ),
    ],
  },
  remedies: [
    {
      words: "Remove the join, run a protective conductor where the neutral served as one, and test both conductors.",
      changes: { joined: "by-distributor" },
    },
    { words: "Until then, isolate the circuit on which metal is live.", changes: { "metal-live": "no" } },
  ],
  examples: [
    {
      name: "neutral and earth joined at a cooker outlet",
      facts: { joined: "downstream", "metal-live": false },
      possible: ["C2"],
      classification: "C2",
      source: "regulation 543.4.1",
    },
    {
      name: "link made by an earlier owner at the board, earth absent",
      facts: { joined: "link-at-origin", "designed-so": false, "metal-live": false },
      possible: ["C2"],
      source: "regulation 543.4.1",
    },
    {
      name: "neutral as earth of a shower, neutral loose, case at 180 V",
      facts: { joined: "neutral-as-earth", "designed-so": false, "metal-live": true },
      possible: ["C1"],
      source: "trade practice: metal live now",
    },
    {
      name: "own transformer, one join on record",
      facts: { joined: "link-at-origin", "designed-so": true, "metal-live": false },
      possible: ["none"],
      source: "regulation 543.4.1",
    },
    {
      name: "current in the earthing conductor, place of the join not found",
      facts: {
        "designed-so": false,
        "metal-live": false,
        joined: { notKnown: "limited", reason: "circuits could not be switched off one by one" },
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "union over the place",
    },
    {
      name: "not traced yet",
      facts: { "designed-so": false, "metal-live": false },
      possible: ["none", "C2"],
      missing: ["joined"],
      source: "union over the place",
    },
  ],
});
