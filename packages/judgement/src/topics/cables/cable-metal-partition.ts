import { all, held, is, NEVER, ranked, unsure } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** Cables in a wall or partition with metal studs, where an edge or a screw can cut the cable and liven the frame. */
export const cableMetalPartition = topic({
  id: "cable-metal-partition",
  title: "Cable in a metal-framed partition",
  group: "cables",
  items: ["circuits.concealed", "circuits.additional-protection", "circuits.support"],
  facts: {
    edges: ranked({
      asks: "How does the cable pass the studs?",
      effort: "opened",
      values: {
        guarded: "grommets or bushes guard the cable at every stud",
        partly: "some studs have no guard at the cable",
        bare: "the cable lies on the cut edges of the studs",
      },
    }),
    protection: ranked({
      asks: "What else protects it: earthed metal around it, or a working RCD of 30 mA or less?",
      effort: "glance",
      values: {
        "earthed-metal": "the cable is in earthed metal: armour, conduit or trunking",
        rcd: "a working RCD of 30 mA or less protects it",
        neither: "neither earthed metal nor a working RCD of 30 mA or less protects it",
      },
      worked: { by: "additional-protection", met: "earthed-metal | rcd", notMet: "earthed-metal | neither" },
    }),
    cut: ranked({
      asks: "Where it can be seen, what is the cable like at the studs?",
      effort: "opened",
      values: {
        whole: "the sheath is whole at the studs",
        scuffed: "the sheath is cut or scuffed at a stud",
      },
    }),
  },
  contested: {
    "frame-edges": {
      question: "Unguarded stud edges with no RCD, the cable still whole: potentially dangerous or to be improved?",
      positions: {
        danger: {
          words: "a metal edge on a cable without RCD is one event from a live frame",
          because: "cables move with heat and with the wall, and the frame runs the length of the room",
        },
        improve: {
          words: "a cable that is whole after years at rest is to be improved",
          because: "sheath and insulation are two coverings, and nothing moves it",
        },
      },
    },
  },
  paths: [
    {
      id: "live-frame",
      hazard: "shock-under-fault",
      route: "an edge or a screw cuts the cable, the frame becomes live, and somebody touches a screw in it",
      exists: is("protection", "rcd", "neither"),
      layers: [
        {
          id: "insulation",
          provision: "insulation",
          words: "insulation and sheath of the cable",
          gone: NEVER,
          sound: all(is("cut", "whole"), held("frame-edges", "improve")),
          regulations: ["416.1"],
        },
        {
          id: "edges",
          provision: "barrier-or-enclosure",
          words: "guards between the cable and the edges of the frame",
          gone: is("edges", "partly", "bare"),
          sound: NEVER,
          regulations: ["522.8.11"],
        },
        {
          id: "rcd",
          provision: "additional-protection",
          words: "an RCD of 30 mA or less",
          gone: is("protection", "neither"),
          sound: NEVER,
          regulations: ["522.6.203"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("protection", "neither"),
      words: "a cable in a metal-framed partition has no 30 mA RCD",
      regulations: ["522.6.203"],
    },
    {
      when: all(is("protection", "rcd", "neither"), is("edges", "partly", "bare")),
      words: "a cable is not guarded against the edges of the frame",
      regulations: ["522.8.11"],
    },
  ],
  client: {
    C2: "A cable is not guarded from the metal frame inside a wall. If it is cut, screws in the wall could give a shock. Have it fixed soon.",
    C3: "A cable inside a wall with a metal frame has less protection than it should. It is not a danger now. Improve it.",
    FI: [
      unsure(
        "We could not see if a cable rubs on the metal frame inside a wall. It could give a shock. This must be looked at.",
        ["edges", "cut"],
      ),
      unsure("We could not find out how a cable in a wall with a metal frame is protected. This must be looked at.", [
        "protection",
      ]),
    ],
    none: "The cables inside the walls are protected well enough.",
  },
  remedies: [
    {
      words: "Fit grommets at the studs and replace any scuffed length.",
      changes: { edges: "guarded", cut: "whole" },
    },
    { words: "Replace it by cable in earthed metal.", changes: { protection: "earthed-metal" } },
  ],
  examples: [
    {
      name: "no RCD, no grommets",
      facts: { edges: "bare", protection: "neither", cut: "whole" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: a stud edge can cut the cable and liven the frame",
    },
    {
      name: "guarded, only the RCD missing",
      facts: { edges: "guarded", protection: "neither", cut: "whole" },
      possible: ["C3"],
      classification: "C3",
      source: "regulation 522.6.203",
    },
    {
      name: "no grommets, RCD present",
      facts: { edges: "bare", protection: "rcd", cut: "whole" },
      possible: ["C3"],
      source: "regulation 522.8.11",
    },
    {
      name: "no RCD, no grommets, held to be an improvement",
      facts: { edges: "partly", protection: "neither", cut: "whole" },
      positions: { "frame-edges": "improve" },
      possible: ["C3"],
      source: "trade discussion of cables at rest",
    },
    {
      name: "inside of the wall not seen",
      facts: {
        protection: "neither",
        edges: { notKnown: "limited", reason: "closed partition" },
        cut: { notKnown: "limited", reason: "closed partition" },
      },
      possible: ["C3", "C2"],
      classification: "FI",
      source: "union over what is inside",
    },
    {
      name: "studs not looked at",
      facts: { protection: "neither", cut: "whole" },
      possible: ["C3", "C2"],
      missing: ["edges"],
      source: "union over how the cable passes the studs",
    },
  ],
});
