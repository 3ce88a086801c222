import { all, amount, any, below, held, is, NEVER, no, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Cables less than 50 mm deep in walls and partitions: zone, covering and 30 mA RCD. */
export const cableInWall = topic({
  id: "cable-in-wall",
  title: "Cable less than 50 mm deep in a wall",
  group: "cables",
  items: ["circuits.concealed", "circuits.additional-protection"],
  facts: {
    depth: amount({
      asks: "How deep in the wall does it run, from the nearer face?",
      name: "depth of the cable",
      effort: "opened",
      unit: "metre",
      worse: "lower",
    }),
    zone: ranked({
      asks: "Does it run in a zone that an accessory, a corner or a ceiling makes plain?",
      effort: "opened",
      values: {
        "in-zone":
          "it runs straight up, down or along from a visible accessory, or within 150 mm of a corner or ceiling",
        "blind-zone": "it runs in a zone made by an accessory that cannot be seen from this side or is gone",
        outside: "it runs across or diagonally, outside any zone",
      },
    }),
    covering: yesNo({
      asks: "Is it in earthed metal (armour, conduit, trunking) or behind steel that stops a nail?",
      effort: "opened",
      yes: "earthed metal or steel stops a nail",
      no: "nothing stops a nail",
      worse: "no",
    }),
    "rcd-30ma": yesNo({
      asks: "Does a working RCD of 30 mA or less protect it?",
      effort: "glance",
      yes: "a working RCD of 30 mA or less protects it",
      no: "no working RCD of 30 mA or less protects it",
      worse: "no",
      worked: { by: "additional-protection", met: "yes", notMet: "no" },
    }),
  },
  contested: {
    "shallow-in-zone": {
      question: "Shallow cable in its zone without RCD: only short of today's standard, or potentially dangerous?",
      positions: {
        improve: {
          words: "in its zone, only additional protection is missing",
          because: "accessories show where not to drill, and earthing and the fuse still act",
        },
        danger: {
          words: "people drill in the zone all the same",
          because: "deaths have come from fixings driven into shallow cables",
        },
      },
    },
  },
  paths: [
    {
      id: "nail",
      hazard: "contact-with-live-parts",
      route: "a nail, screw or drill goes into the cable and its metal becomes live in somebody's hand",
      exists: all(below("depth", "50 mm"), no("covering")),
      layers: [
        oneEventAway("unstruck", "insulation", "insulation and sheath of the cable", ["416.1"]),
        {
          id: "zone",
          provision: "information",
          words: "a zone that tells people where not to drill",
          gone: any(is("zone", "blind-zone", "outside"), held("shallow-in-zone", "danger")),
          sound: NEVER,
          regulations: ["522.6.202"],
        },
        {
          id: "rcd",
          provision: "additional-protection",
          words: "an RCD of 30 mA or less",
          gone: no("rcd-30ma"),
          sound: NEVER,
          regulations: ["415.1.1", "522.6.202"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(below("depth", "50 mm"), no("covering"), any(is("zone", "blind-zone", "outside"), no("rcd-30ma"))),
      words: "a shallow cable lacks its zone or its 30 mA RCD, with nothing else to protect it",
      regulations: ["522.6.202"],
    },
  ],
  client: {
    C2: [
      says(
        "A cable runs just under the wall face where nobody would expect it. A nail in it could give a shock. Have it made safe soon.",
        is("zone", "blind-zone", "outside"),
      ),
      "A cable runs just under the wall face. A nail in it could give a shock. Have it made safe soon.",
    ],
    C3: [
      says(
        "No fast safety switch that works guards the cables in the walls. Take care where you drill. Adding one makes it safer.",
        no("rcd-30ma"),
      ),
      says(
        "A cable runs in the wall where nobody would expect it. A fast safety switch guards you. Take care where you drill.",
        yes("rcd-30ma"),
      ),
    ],
    FI: [
      unsure(
        "We could not find out where the cable runs in the wall, or how deep. A nail could hit it. This must be looked at.",
        ["depth", "zone", "covering"],
      ),
      unsure("We could not find out if a fast safety switch guards the cables in the walls. This must be looked at.", [
        "rcd-30ma",
      ]),
    ],
    none: "The cables in the walls are protected well enough.",
  },
  remedies: [
    { words: "Protect the circuit with an RCD of 30 mA.", changes: { "rcd-30ma": "yes" } },
    {
      words: "Cover the length with earthed steel that stops a nail.",
      changes: { covering: "yes" },
    },
    {
      words: "Reroute the cable in a zone, or deeper.",
      changes: { zone: "in-zone" },
    },
  ],
  examples: [
    {
      name: "20 mm deep in its zone, no RCD",
      facts: { depth: "20 mm", zone: "in-zone", covering: false, "rcd-30ma": false },
      possible: ["C3"],
      classification: "C3",
      source: "trade discussion: only additional protection is missing; regulation 522.6.202",
    },
    {
      name: "the same held to be dangerous",
      facts: { depth: "20 mm", zone: "in-zone", covering: false, "rcd-30ma": false },
      positions: { "shallow-in-zone": "danger" },
      possible: ["C2"],
      source: "trade discussion: past deaths",
    },
    {
      name: "diagonal at 20 mm, no RCD",
      facts: { depth: "20 mm", zone: "outside", covering: false, "rcd-30ma": false },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: penetration foreseeable, no additional protection",
    },
    {
      name: "diagonal at 20 mm, RCD present",
      facts: { depth: "20 mm", zone: "outside", covering: false, "rcd-30ma": true },
      possible: ["C3"],
      source: "trade practice; regulation 522.6.202",
    },
    {
      name: "a limit as typed: 50 mm",
      facts: { depth: "50 mm" },
      possible: ["none"],
      source: "regulation 522.6.202: less than 50 mm",
    },
    {
      name: "route not traced",
      facts: {
        depth: "15 mm to 30 mm",
        covering: false,
        "rcd-30ma": false,
        zone: { notKnown: "limited", reason: "finished walls" },
      },
      possible: ["C3", "C2"],
      classification: "FI",
      source: "union over the route",
    },
    {
      name: "zone not looked at",
      facts: { depth: "20 mm", covering: false, "rcd-30ma": false },
      possible: ["C3", "C2"],
      missing: ["zone"],
      source: "union over the route",
    },
  ],
});
