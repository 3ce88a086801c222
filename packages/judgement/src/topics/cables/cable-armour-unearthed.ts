import { ALWAYS, all, is, NEVER, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** The armour or metal sheath of a cable that is not connected to earth. */
export const cableArmourUnearthed = topic({
  id: "cable-armour-unearthed",
  title: "Cable armour not earthed",
  group: "cables",
  items: ["circuits.cpc", "outdoors.buried", "circuits.terminations"],
  facts: {
    armour: ranked({
      asks: "Does the armour read continuous to the main earthing terminal?",
      effort: "measured",
      values: {
        earthed: "the armour reads continuous to the main earthing terminal",
        poor: "the armour is earthed by a loose or corroded gland only",
        unearthed: "the armour has no path to earth",
      },
    }),
    "only-conductor": yesNo({
      asks: "Is the armour the only protective conductor of what the cable feeds?",
      effort: "opened",
      yes: "the armour is the only protective conductor of what the cable feeds",
      no: "a core of the cable or another conductor earths what it feeds",
      worse: "yes",
    }),
    touchable: yesNo({
      asks: "Can armour, a gland or metal joined to it be touched?",
      effort: "glance",
      yes: "armour or metal joined to it can be touched",
      no: "the outer sheath and insulating boxes cover all of the armour",
      worse: "yes",
    }),
    struck: ranked({
      asks: "Can something be driven into the cable: a spade, a nail, a fence post?",
      effort: "glance",
      values: {
        unlikely: "it runs where nothing is driven into it",
        likely: "it runs in ground that is dug, or in a wall or fence that is nailed",
      },
    }),
  },
  contested: {},
  paths: [
    {
      id: "live-armour",
      hazard: "shock-under-fault",
      route: "a fault inside the cable makes the armour live, and somebody touches it",
      exists: all(is("armour", "poor", "unearthed"), yes("touchable")),
      layers: [
        oneEventAway("insulation", "insulation", "the insulation of the cores", ["416.1"]),
        {
          id: "earth",
          provision: "fault-protection",
          words: "earthing of the armour",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["411.3.1.1"],
        },
      ],
    },
    {
      id: "spade",
      hazard: "contact-with-live-parts",
      route: "a spade or nail goes through, becomes live in somebody's hand, and nothing disconnects",
      exists: all(is("armour", "poor", "unearthed"), is("struck", "likely")),
      layers: [
        oneEventAway("cable", "insulation", "sheath and insulation of the cable", ["416.1"]),
        {
          id: "earth",
          provision: "fault-protection",
          words: "earthed armour that clears the strike",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["522.8.10", "522.6.204"],
        },
      ],
    },
    {
      id: "no-earth-beyond",
      hazard: "shock-under-fault",
      route: "a fault makes metal at the far end live, and it stays live",
      exists: all(is("armour", "poor", "unearthed"), yes("only-conductor")),
      layers: [
        oneEventAway("basic", "insulation", "the insulation of live parts", ["416.1"]),
        {
          id: "conductor",
          provision: "fault-protection",
          words: "a protective conductor to the far end",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["411.3.1.1", "543.2.5"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("armour", "poor", "unearthed"),
      words: "the armour of a cable is not reliably earthed",
      regulations: ["411.3.1.1", "526.1"],
    },
  ],
  client: {
    C2: "The metal wrap of a cable is not earthed well. In a fault there could be a shock. Have it earthed soon.",
    C3: "The metal wrap of a cable is not earthed well. It is covered and out of the way. Have it earthed.",
    FI: [
      unsure(
        "We could not test if the metal wrap of a cable is earthed. It could give a shock. This must be looked at.",
        ["armour"],
      ),
      unsure(
        "The metal wrap of a cable is not earthed well. We could not find out if that is a danger. This must be looked at.",
        ["only-conductor", "touchable", "struck"],
      ),
    ],
    none: "The metal wrap of the cable is earthed.",
  },
  remedies: [
    {
      words: "Make off the armour in a gland with an earth tag at the supply end, and read it.",
      changes: { armour: "earthed" },
    },
    {
      words: "Where the armour was the only protective conductor and is too poor, run another.",
      changes: { armour: "earthed", "only-conductor": "no" },
    },
  ],
  examples: [
    {
      name: "armour cut back in a plastic box, cable buried in a border",
      facts: { armour: "unearthed", "only-conductor": false, touchable: false, struck: "likely" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: the armour cannot clear a strike",
    },
    {
      name: "the armour earths a metal shed, gland loose",
      facts: { armour: "poor", "only-conductor": true, touchable: true, struck: "unlikely" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: fault protection of the shed lost",
    },
    {
      name: "covered throughout, high on a wall, earthed by a core",
      facts: { armour: "unearthed", "only-conductor": false, touchable: false, struck: "unlikely" },
      possible: ["C3"],
      source: "trade practice: no route to the armour",
    },
    {
      name: "earthed",
      facts: { armour: "earthed" },
      possible: ["none"],
      source: "regulation 411.3.1.1",
    },
    {
      name: "far end locked, not read",
      facts: {
        "only-conductor": true,
        touchable: true,
        struck: "unlikely",
        armour: { notKnown: "limited", reason: "no access to the far end" },
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "union over the reading",
    },
    {
      name: "run not walked",
      facts: { armour: "unearthed", "only-conductor": false, touchable: false },
      possible: ["C3", "C2"],
      missing: ["struck"],
      source: "union over the run",
    },
  ],
});
