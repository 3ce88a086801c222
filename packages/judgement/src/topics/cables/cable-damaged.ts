import { ALWAYS, all, any, is, NEVER, no, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** A cable that is nicked, crushed, cut, gnawed or drilled. */
export const cableDamaged = topic({
  id: "cable-damaged",
  title: "Damaged cable in service",
  group: "cables",
  items: ["circuits.insulation", "circuits.support"],
  facts: {
    damage: ranked({
      asks: "How deep does the damage to the cable in service go?",
      effort: "glance",
      values: {
        surface: "only the surface of the sheath is marked",
        sheath: "the sheath is open and the insulation of the cores is whole",
        insulation: "the insulation of a core is cut, crushed or gnawed, and no metal shows",
        "bare-metal": "the metal of a conductor shows",
      },
    }),
    reach: ranked({
      asks: "Who gets to the damaged place?",
      effort: "glance",
      values: {
        closed: "the place is behind a cover or in a void that is reached with a tool",
        "seldom-entered": "the place is in a loft or under a floor that people seldom enter, and not to store things",
        "in-reach": "the place is within reach of people, pets or livestock, as in a loft used for storage",
      },
    }),
    "goes-on": yesNo({
      asks: "Is what did the damage still at work: animals, a door, traffic, heat, movement?",
      effort: "glance",
      yes: "what did the damage is still at work",
      no: "what did the damage is over",
      worse: "yes",
    }),
    "beside-combustible": yesNo({
      asks: "Does something that burns touch the damaged place: timber, insulation, nest, dust?",
      effort: "glance",
      yes: "something that burns touches the damaged place",
      no: "nothing that burns touches the damaged place",
      worse: "yes",
    }),
  },
  contested: {},
  paths: [
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "somebody touches the conductor at the damaged place",
      exists: ALWAYS,
      layers: [
        {
          id: "insulation",
          provision: "insulation",
          words: "the insulation of the cores",
          gone: is("damage", "bare-metal"),
          sound: all(is("damage", "surface"), no("goes-on")),
          regulations: ["416.1"],
        },
        {
          id: "sheath",
          provision: "barrier-or-enclosure",
          words: "the sheath, or a place that keeps hands away",
          gone: all(
            is("reach", "in-reach"),
            any(is("damage", "insulation", "bare-metal"), all(is("damage", "sheath"), yes("goes-on"))),
          ),
          sound: NEVER,
          regulations: ["522.6.1", "522.8.1"],
        },
      ],
    },
    {
      id: "arc",
      hazard: "burns-or-fire",
      route: "the damaged conductors arc and set fire to what is around them",
      exists: is("damage", "insulation", "bare-metal"),
      layers: [
        {
          id: "apart",
          provision: "insulation",
          words: "insulation that keeps the conductors apart",
          gone: any(is("damage", "bare-metal"), yes("goes-on")),
          sound: NEVER,
          regulations: ["421.1.1"],
        },
        {
          id: "surroundings",
          provision: "surroundings",
          words: "surroundings that do not burn, or a device that clears the arc",
          gone: NEVER,
          sound: no("beside-combustible"),
          regulations: ["421.1.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(is("damage", "sheath", "insulation", "bare-metal"), yes("goes-on")),
      words: "a cable is damaged or exposed to damage",
      regulations: ["522.6.1", "134.1.1"],
    },
  ],
  client: {
    C1: "A cable is damaged and live metal can be touched. It can kill. Keep away until it is mended.",
    C2: [
      says(
        "A cable is damaged down to its metal. It could give a shock or start a fire. Have it mended soon.",
        is("damage", "bare-metal"),
      ),
      "A cable is damaged. A little more damage could give a shock or start a fire. Have it mended soon.",
    ],
    C3: [
      says(
        "The outer cover of a cable is damaged. The wires inside are still covered. Have it mended when you can.",
        is("damage", "sheath"),
      ),
      says(
        "Something rubs or knocks a cable. The cable is still sound. Have the cause put right.",
        is("damage", "surface"),
      ),
      says(
        "A cable is damaged. It is out of the way and not a danger now. Have it mended when you can.",
        is("damage", "insulation"),
      ),
    ],
    FI: [
      unsure("We could not find out how deep the damage of a cable goes. It must be looked at soon.", ["damage"]),
      unsure(
        "A cable is damaged. We could not find out how much of a danger it is. It must be looked at soon.",
        ["reach", "goes-on", "beside-combustible"],
        is("damage", "sheath", "insulation", "bare-metal"),
      ),
    ],
    none: "The cable has no damage that matters.",
  },
  remedies: [
    {
      words: "Cut out the damaged length and rejoin in an enclosure, or replace the cable.",
      changes: { damage: "surface" },
    },
    {
      words: "Stop what does the damage: reroute, guard with conduit, keep animals out.",
      changes: { "goes-on": "no" },
    },
  ],
  examples: [
    {
      name: "sheath slit, cores whole, nothing goes on",
      facts: { damage: "sheath", reach: "in-reach", "goes-on": false },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: basic insulation whole, cover damaged",
    },
    {
      name: "copper showing by the skirting",
      facts: { damage: "bare-metal", reach: "in-reach" },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: nothing between a finger and live metal",
    },
    {
      name: "gnawed to the copper in a loft",
      facts: { damage: "bare-metal", reach: "seldom-entered" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: rodent damage",
    },
    {
      name: "core crushed under a door that still shuts on it",
      facts: { damage: "insulation", reach: "in-reach", "goes-on": true },
      possible: ["C2"],
      source: "trade practice: the next shut exposes it",
    },
    {
      name: "depth of the damage not seen",
      facts: {
        reach: "in-reach",
        "goes-on": false,
        "beside-combustible": false,
        damage: { notKnown: "limited", reason: "runs behind fixed units" },
      },
      possible: ["none", "C3", "C2", "C1"],
      classification: "FI",
      source: "union over the depth of the damage",
    },
    {
      name: "place not looked at closely",
      facts: { damage: "bare-metal" },
      possible: ["C2", "C1"],
      missing: ["reach"],
      source: "union over who gets to it",
    },
  ],
});
