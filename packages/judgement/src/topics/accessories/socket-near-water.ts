import { any, is, NEVER, no, ranked, unsure, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** A socket-outlet, switch or connection unit close to a sink or basin outside a bathroom. */
export const socketNearWater = topic({
  id: "socket-near-water",
  title: "Accessory near a sink",
  group: "accessories",
  items: ["accessories.external-influences"],
  facts: {
    wetting: ranked({
      asks: "How near is it to the tap, and does water get to it?",
      effort: "glance",
      values: {
        away: "it is well away from sink and tap",
        near: "it is within about 300 mm of the sink, and stays dry",
        splashed: "it is splashed in ordinary use",
        "water-inside": "there are water marks or corrosion in it",
      },
    }),
    "rcd-30ma": yesNo({
      asks: "Is it protected by a working RCD of 30 mA or less?",
      effort: "glance",
      yes: "a working RCD of 30 mA or less protects it",
      no: "no working RCD of 30 mA or less protects it",
      worse: "no",
      worked: { by: "additional-protection", met: "yes", notMet: "no" },
    }),
  },
  contested: {},
  paths: [
    {
      id: "water-gets-in",
      hazard: "contact-with-live-parts",
      route: "water runs into the accessory and somebody with wet hands touches it",
      exists: is("wetting", "splashed", "water-inside"),
      layers: [
        {
          id: "enclosure",
          provision: "barrier-or-enclosure",
          words: "the plate, which is not made for splashes",
          gone: NEVER,
          sound: NEVER,
          regulations: ["512.2.1", "522.3.1"],
        },
        {
          id: "rcd",
          provision: "additional-protection",
          words: "an RCD of 30 mA or less, while no water has got in",
          gone: any(no("rcd-30ma"), is("wetting", "water-inside")),
          sound: NEVER,
          regulations: ["411.3.3", "415.1.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("wetting", "near", "splashed", "water-inside"),
      words: "the accessory is in a place that does not suit it",
      regulations: ["512.2.1"],
    },
  ],
  client: {
    C2: "A socket or switch gets wet from the sink. It could give a shock. Have it moved soon.",
    C3: "A socket or switch is too close to the sink. It is not a danger now. It is better moved.",
    FI: [
      unsure("We could not find out if water gets into a socket or switch by the sink. This must be looked at soon.", [
        "wetting",
      ]),
      unsure(
        "We could not find out if a fast safety switch guards a socket or switch by the sink. This must be looked at soon.",
        ["rcd-30ma"],
      ),
    ],
    none: "The sockets and switches are well clear of the sink.",
  },
  remedies: [
    {
      words: "Move it away from the water.",
      changes: { wetting: "away" },
    },
    { words: "Protect it by a 30 mA RCD, if no water has got in.", changes: { "rcd-30ma": "yes" } },
  ],
  examples: [
    {
      name: "200 mm from the bowl, dry",
      facts: { wetting: "near" },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: no distance is fixed, the place is poor",
    },
    {
      name: "splashed by the tap, no RCD",
      facts: { wetting: "splashed", "rcd-30ma": false },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: water entry is to be expected",
    },
    {
      name: "splashed by the tap, RCD",
      facts: { wetting: "splashed", "rcd-30ma": true },
      possible: ["C3"],
      source: "trade practice: additional protection limits the harm",
    },
    {
      name: "corrosion inside",
      facts: { wetting: "water-inside", "rcd-30ma": true },
      possible: ["C2"],
      source: "trade practice: water gets in",
    },
    {
      name: "RCD not looked for",
      facts: { wetting: "splashed" },
      possible: ["C3", "C2"],
      missing: ["rcd-30ma"],
      source: "union over the RCD",
    },
  ],
});
