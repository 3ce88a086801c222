import { all, any, is, NEVER, no, ranked, unsure, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** A cable or flex run in the open: along a fence, over a path, across a lawn. */
export const gardenCableUnprotected = topic({
  id: "garden-cable-unprotected",
  title: "Unprotected cable outdoors",
  group: "outdoors",
  items: ["outdoors.weather", "circuits.support"],
  facts: {
    cable: ranked({
      asks: "What kind of cable is it?",
      effort: "glance",
      values: {
        armoured: "the cable is armoured, or runs in conduit or duct made for outdoors",
        sheathed: "the cable is sheathed and stands sun and weather, without armour",
        "indoor-type": "the cable or flex is of a kind for indoors",
      },
    }),
    route: ranked({
      asks: "Where does it run?",
      effort: "glance",
      values: {
        "out-of-harm": "it is fixed where nobody cuts, digs, leans or treads",
        "in-reach": "it is fixed along a wall or fence where tools and plants get at it",
        loose: "it lies on or just under the ground, or hangs loose",
      },
    }),
    condition: ranked({
      asks: "What is the state of its sheath and cores?",
      effort: "glance",
      values: {
        sound: "the sheath is sound",
        split: "the sheath is split, chafed or cracked by the sun, or basic insulation shows",
        "bare-core": "a bare core can be touched",
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
      id: "cable-is-cut",
      hazard: "contact-with-live-parts",
      route: "a tool, foot or animal goes through the cable and somebody touches the core",
      exists: any(
        all(is("cable", "sheathed", "indoor-type"), is("route", "in-reach", "loose")),
        is("condition", "split", "bare-core"),
      ),
      layers: [
        {
          id: "sheath",
          provision: "insulation",
          words: "the insulation and sheath of the cable",
          gone: is("condition", "bare-core"),
          sound: NEVER,
          regulations: ["416.1", "522.6.1"],
        },
        {
          id: "rcd",
          provision: "additional-protection",
          words: "an RCD of 30 mA or less, where damage to the cable is not to be expected anyway",
          // An RCD is no answer to a cable that will be damaged, or already is: 415.1.2.
          gone: any(no("rcd-30ma"), is("route", "loose"), is("condition", "split", "bare-core")),
          sound: NEVER,
          regulations: ["415.1.1", "415.1.2"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(
        is("cable", "indoor-type"),
        all(is("cable", "sheathed"), is("route", "in-reach", "loose")),
        is("route", "loose"),
        is("condition", "split", "bare-core"),
      ),
      words: "the cable is not of a kind, or not so fixed, as its place asks",
      regulations: ["522.6.1", "522.8.4", "522.11.1"],
    },
  ],
  client: {
    C1: "A cable outdoors is cut and its live wire can be touched. Keep away. Have it made safe now.",
    C2: "A cable outdoors can easily be cut or is worn. Anyone who touches it then could get a shock. Have it fixed soon.",
    C3: "A cable outdoors is not the best type for its place. It is not a danger now. A better one is advised.",
    FI: unsure("We could not find out if a cable outdoors is safe. This must be looked at soon.", [
      "cable",
      "route",
      "condition",
      "rcd-30ma",
    ]),
    none: "The cables outdoors are well protected.",
  },
  remedies: [
    {
      words: "Fix a sound cable where nobody gets at it.",
      changes: { route: "out-of-harm", condition: "sound" },
    },
    { words: "Protect the circuit by a 30 mA RCD, if the cable is sound and fixed.", changes: { "rcd-30ma": "yes" } },
    {
      words: "Replace it by an armoured cable.",
      changes: { cable: "armoured", route: "out-of-harm", condition: "sound" },
    },
  ],
  examples: [
    {
      name: "indoor flex across the lawn to a shed",
      facts: { cable: "indoor-type", route: "loose", condition: "sound", "rcd-30ma": true },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: damage is to be expected",
    },
    {
      name: "indoor cable clipped to a fence, RCD",
      facts: { cable: "indoor-type", route: "in-reach", condition: "sound", "rcd-30ma": true },
      possible: ["C3"],
      source: "trade practice: additional protection limits the harm",
    },
    {
      name: "the same without RCD",
      facts: { cable: "indoor-type", route: "in-reach", condition: "sound", "rcd-30ma": false },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: one cut from danger",
    },
    {
      name: "cut by a hedge trimmer, bare core",
      facts: { condition: "bare-core" },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: bare live metal in reach",
    },
    {
      name: "armoured cable cleated to the wall",
      facts: { cable: "armoured", route: "in-reach", condition: "sound" },
      possible: ["none"],
      source: "regulation: protected against knocks",
    },
    {
      name: "RCD not looked for",
      facts: { cable: "sheathed", route: "in-reach", condition: "sound" },
      possible: ["C3", "C2"],
      missing: ["rcd-30ma"],
      source: "union over the RCD",
    },
  ],
});
