import { all, any, held, is, NEVER, no, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Circuits of a room with a bath or shower: 30 mA RCD, supplementary bonding, or neither. */
export const bathRcdAndBonding = topic({
  id: "bath-rcd-and-bonding",
  title: "Bathroom circuits without RCD or bonding",
  group: "baths",
  items: ["bathrooms.rcd", "bathrooms.bonding", "earthing.supplementary"],
  facts: {
    "rcd-30ma": yesNo({
      asks: "Are all circuits of the room protected by a working RCD of 30 mA or less?",
      effort: "glance",
      yes: "a working RCD of 30 mA or less protects every circuit of the room",
      no: "a circuit of the room has no working RCD of 30 mA or less",
      worse: "no",
      worked: { by: "additional-protection", notMet: "no" },
    }),
    bonding: yesNo({
      asks: "Are all metal parts that can be touched together joined, with low readings between them?",
      effort: "measured",
      yes: "supplementary bonding joins the metal parts, and readings between them are low",
      no: "supplementary bonding is missing or broken",
      worse: "no",
      worked: { by: "supplementary-bonding", met: "yes", notMet: "no" },
    }),
    parts: ranked({
      asks: "Going by tests, what metal can be touched from the bath or shower?",
      effort: "measured",
      values: {
        nothing: "nothing class I and no metal that brings in an earth can be touched",
        "taps-only": "only taps, wastes or a rail on plastic pipes can be touched",
        "earthed-metal": "class I equipment or metal that brings in an earth can be touched",
      },
    }),
    "electric-shower": yesNo({
      asks: "Is there an electric shower, or other equipment in the water, whose maker asks for an RCD and has none?",
      effort: "glance",
      yes: "an electric shower whose maker asks for an RCD has none",
      no: "no electric shower is without an RCD that its maker asks for",
      worse: "yes",
    }),
  },
  contested: {
    "metal-on-plastic": {
      question: "Do metal taps or a hot rail on plastic pipes count as metal that wants bonding?",
      positions: {
        "not-counted": {
          words: "metal on plastic pipes brings in no earth and needs no bonding",
          because: "a part is extraneous only if it can bring in a potential, which a test settles",
        },
        counted: {
          words: "metal taps or a hot rail count as parts that can be touched together",
          because: "the water in the pipe and a later heater element make them less apart than they look",
        },
      },
    },
    "shower-without-rcd": {
      question: "Does an electric shower need its RCD to be safe where bonding is sound?",
      positions: {
        "bonding-holds": {
          words: "sound bonding and disconnection leave it an improvement",
          because: "bonding keeps the voltage between parts low until the device acts",
        },
        "rcd-expected": {
          words: "a shower without the RCD its maker asks for is one fault from danger",
          because: "bonding does nothing for a person who stands in water that touches the element",
        },
      },
    },
  },
  paths: [
    {
      id: "voltage-between-parts",
      hazard: "shock-under-fault",
      route: "a fault puts a voltage between metal parts, and somebody wet and undressed touches both",
      exists: any(
        is("parts", "earthed-metal"),
        all(is("parts", "taps-only", "earthed-metal"), held("metal-on-plastic", "counted")),
      ),
      layers: [
        oneEventAway("basic", "insulation", "the insulation of the circuits of the room", ["416.1"]),
        {
          id: "bonding-or-rcd",
          provision: "additional-protection",
          words: "supplementary bonding, or an RCD that cuts off at once",
          // Disconnection times are set for dry skin: in the bath they are not a layer of their own.
          gone: all(no("rcd-30ma"), no("bonding")),
          sound: NEVER,
          regulations: ["701.411.3.3", "701.415.2", "415.2.2"],
        },
      ],
    },
    {
      id: "live-water",
      hazard: "shock-under-fault",
      route: "the element fails and the water somebody stands in becomes live",
      exists: all(yes("electric-shower"), no("rcd-30ma"), held("shower-without-rcd", "rcd-expected")),
      layers: [oneEventAway("element", "insulation", "the sheath of the element", ["416.1", "701.411.3.3"])],
    },
  ],
  departures: [
    {
      when: no("rcd-30ma"),
      words: "a circuit of the room has no RCD of 30 mA or less",
      regulations: ["701.411.3.3"],
    },
  ],
  client: {
    C2: "If there is a fault in the bathroom, you could get a shock. It needs a safety switch or earth links soon.",
    C3: "No fast safety switch that works guards all of the bathroom. It is not a danger now. Adding one makes it safer.",
    FI: unsure("We could not find out if the bathroom is safe if a fault occurs. This must be looked at soon.", [
      "rcd-30ma",
      "bonding",
      "parts",
      "electric-shower",
    ]),
    none: "The bathroom circuits are protected well enough.",
  },
  remedies: [
    {
      words: "Protect every circuit of the room by a 30 mA RCD.",
      changes: { "rcd-30ma": "yes", "electric-shower": "no" },
    },
    { words: "Join the metal parts by supplementary bonding and measure between them.", changes: { bonding: "yes" } },
  ],
  examples: [
    {
      name: "no RCD, bonding measured at 0.03 Ω",
      facts: { "rcd-30ma": false, bonding: true },
      possible: ["C3"],
      classification: "C3",
      source: "trade discussion: bathroom light without RCD",
    },
    {
      name: "no RCD, no bonding, plastic pipes, nothing class I",
      facts: { "rcd-30ma": false, bonding: false, parts: "nothing" },
      possible: ["C3"],
      classification: "C3",
      source: "trade discussion: bathroom with plastic pipes",
    },
    {
      name: "no RCD, no bonding, metal taps on plastic",
      facts: { "rcd-30ma": false, bonding: false, parts: "taps-only" },
      possible: ["C3"],
      source: "trade discussion: bathroom with plastic pipes",
    },
    {
      name: "the same, taps held to count",
      facts: { "rcd-30ma": false, bonding: false, parts: "taps-only" },
      positions: { "metal-on-plastic": "counted" },
      possible: ["C2"],
      source: "trade discussion: bathroom with plastic pipes",
    },
    {
      name: "no RCD, no bonding, copper pipes",
      facts: { "rcd-30ma": false, bonding: false, parts: "earthed-metal" },
      possible: ["C2"],
      classification: "C2",
      source: "trade discussion: neither RCD nor bonding",
    },
    {
      name: "electric shower without RCD, bonded, stricter view",
      facts: { "rcd-30ma": false, bonding: true, "electric-shower": true },
      positions: { "shower-without-rcd": "rcd-expected" },
      possible: ["C2"],
      source: "trade discussion: showers and makers' instructions",
    },
    {
      name: "RCD on every circuit, no bonding",
      facts: { "rcd-30ma": true, bonding: false, parts: "earthed-metal", "electric-shower": false },
      possible: ["none"],
      source: "regulation: bonding may be left out",
    },
    {
      name: "bonding not tested",
      facts: { "rcd-30ma": false, parts: "earthed-metal" },
      possible: ["C3", "C2"],
      missing: ["bonding"],
      source: "union over what a test would show",
    },
  ],
});
