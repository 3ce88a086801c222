import { all, any, held, is, NEVER, no, oneKind, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** The earth of a PME supply is taken to where a broken supply neutral makes it dangerous. */
export const pmeExported = topic({
  id: "pme-exported",
  title: "PME earth taken outside the building",
  group: "earthing",
  items: ["earthing.arrangement", "special.caravans-boats", "special.pools"],
  facts: {
    "pme-earth": yesNo({
      asks: "Is the earth used there the earth of a PME supply?",
      effort: "opened",
      yes: "the earth used there comes from a PME supply",
      no: "the supply is not PME, or the place has its own electrode and RCD, and the PME earth ends before it",
      worse: "yes",
    }),
    place: oneKind({
      asks: "Where is it taken to?",
      effort: "glance",
      values: {
        "plain-outbuilding": "it goes to an outbuilding into which no metal comes from the ground",
        "outbuilding-in-earth":
          "it goes to an outbuilding with metal pipes, a steel frame or other metal from the ground",
        "outdoor-metal": "it goes to earthed metal outdoors that people touch with their feet on the ground",
        pool: "it goes to a swimming pool or the like",
        "caravan-or-boat": "it goes to a caravan, a boat or the outlets for them",
        "fuel-site": "it goes to the fuel pumps of a filling station",
        "building-site": "it goes to a building site",
      },
    }),
    bonded: yesNo({
      asks: "Is all metal from the ground there bonded, by conductors of main bonding size, back to the supply's terminal?",
      effort: "opened",
      yes: "metal from the ground there is bonded at full size",
      no: "metal from the ground there is not bonded, or the conductor is smaller than main bonding has to be",
      worse: "no",
    }),
  },
  contested: {
    "metal-outdoors": {
      question: "Is PME-earthed metal outdoors, other than a vehicle, caravan or boat, potentially dangerous?",
      positions: {
        allowed: {
          words: "it is not forbidden, and not classified",
          because: "fixed equipment of this kind is nowhere excluded, and the neutral has to break first",
        },
        danger: {
          words: "it is potentially dangerous where people touch it wet or barefoot",
          because: "with a broken supply neutral it is live against the ground, and no RCD takes that away",
        },
      },
    },
  },
  paths: [
    {
      id: "broken-neutral",
      hazard: "shock-under-fault",
      route: "the supply neutral breaks, earthed metal rises towards line voltage, and somebody stands on the ground",
      exists: yes("pme-earth"),
      layers: [
        oneEventAway("network", "fault-protection", "a supply neutral that is whole", ["411.4.2"]),
        {
          id: "zone",
          provision: "equipotential-bonding",
          words: "bonding, within which everything in reach is at the same potential",
          gone: any(
            is("place", "caravan-or-boat", "fuel-site"),
            all(is("place", "outbuilding-in-earth", "pool", "building-site"), no("bonded")),
            all(is("place", "outdoor-metal"), held("metal-outdoors", "danger")),
          ),
          sound: NEVER,
          regulations: ["411.3.1.2", "544.1.1", "702.415.2", "704.411.3.1", "708.411.4", "709.411.4"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(yes("pme-earth"), is("place", "caravan-or-boat")),
      words: "a PME earth is used for a caravan or boat",
      regulations: ["708.411.4", "709.411.4"],
    },
  ],
  client: {
    C2: "The earth from the street goes to a place outside. If a main wire breaks, metal there could give a shock. Change it soon.",
    FI: unsure("We could not find out how the place outside is earthed. This must be looked at soon.", [
      "pme-earth",
      "place",
      "bonded",
    ]),
    none: "The place outside is earthed in a safe way.",
  },
  remedies: [
    {
      words: "Bond the metal from the ground there, with a conductor of main bonding size.",
      changes: { bonded: "yes" },
    },
    {
      words: "End the PME earth at the building, and give the place an electrode of its own with RCDs to suit.",
      changes: { "pme-earth": "no" },
    },
  ],
  examples: [
    {
      name: "caravan hook-up on the house's PME earth",
      facts: { "pme-earth": true, place: "caravan-or-boat" },
      possible: ["C2"],
      classification: "C2",
      source: "regulation 708.411.4",
    },
    {
      name: "timber shed, plastic water pipe",
      facts: { "pme-earth": true, place: "plain-outbuilding" },
      possible: ["none"],
      source: "regulation 411.3.1.2: nothing to bond",
    },
    {
      name: "steel-framed barn, 2.5 mm² earth, nothing bonded",
      facts: { "pme-earth": true, place: "outbuilding-in-earth", bonded: false },
      possible: ["C2"],
      source: "regulation 544.1.1",
    },
    {
      name: "garden heater, fixed",
      facts: { "pme-earth": true, place: "outdoor-metal" },
      possible: ["none"],
      source: "trade discussion of outdoor equipment on PME",
    },
    {
      name: "the same where it is held to be dangerous",
      facts: { "pme-earth": true, place: "outdoor-metal" },
      positions: { "metal-outdoors": "danger" },
      possible: ["C2"],
      source: "trade discussion of outdoor equipment on PME",
    },
    {
      name: "pump on a filling station, earth not traced",
      facts: {
        place: "fuel-site",
        "pme-earth": { notKnown: "limited", reason: "the earthing at the pumps was outside the extent" },
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "union over the source of the earth",
    },
    {
      name: "garage, metal not looked at",
      facts: { "pme-earth": true, place: "outbuilding-in-earth" },
      possible: ["none", "C2"],
      missing: ["bonded"],
      source: "union over the bonding",
    },
  ],
});
