import { all, any, held, is, NEVER, no, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Sockets or points of a power circuit whose earth contact has no path back to the main earthing terminal. */
export const socketNoCpc = topic({
  id: "socket-no-cpc",
  title: "Socket or power point without a path to earth",
  group: "circuits",
  items: ["circuits.cpc", "accessories.connections"],
  facts: {
    "earth-path": ranked({
      asks: "Is there a continuous path from the earth contact of the point to the main earthing terminal?",
      effort: "measured",
      values: {
        sound: "the earth contact is continuous to the main earthing terminal",
        uncertain: "the earth contact is continuous only by chance metalwork or an unsteady contact",
        open: "the earth contact reads open circuit to the main earthing terminal",
      },
    }),
    feeds: ranked({
      asks: "What can the point feed: only a fixed class II item, or anything with a plug or a metal case?",
      effort: "glance",
      values: {
        "class-2-fixed": "the point feeds one fixed class II item and takes no plug",
        "class-1": "class I equipment is or can be connected to the point",
      },
    }),
    "rcd-30ma": yesNo({
      asks: "Does a tested RCD of 30 mA or less protect the point?",
      effort: "measured",
      yes: "a tested RCD of 30 mA or less protects the point",
      no: "no RCD of 30 mA or less that works protects the point",
      worse: "no",
    }),
  },
  contested: {
    "rcd-instead-of-earth": {
      question: "Does a 30 mA RCD stand in for the missing protective conductor?",
      positions: {
        "does-not-count": {
          words: "an RCD does not stand in for a protective conductor",
          because:
            "without a path to earth it opens only once current flows through a person, and 415.1.2 does not let it stand alone",
        },
        counts: {
          words: "an RCD that works is a layer left until the conductor is restored",
          because: "it ends a shock from live metal in a fraction of a second",
        },
      },
    },
  },
  paths: [
    {
      id: "live-case",
      hazard: "shock-under-fault",
      route: "a fault makes a metal case live, nothing disconnects, and somebody touches it",
      exists: is("earth-path", "uncertain", "open"),
      layers: [
        oneEventAway("basic", "insulation", "the insulation of live parts inside the equipment", ["416.1"]),
        {
          id: "no-metal",
          provision: "fault-protection",
          words: "insulation of the equipment, so that no metal can become live",
          gone: is("feeds", "class-1"),
          sound: is("feeds", "class-2-fixed"),
          regulations: ["411.3.1.1", "412.2.1"],
        },
        {
          id: "rcd",
          provision: "additional-protection",
          words: "an RCD of 30 mA or less",
          gone: any(no("rcd-30ma"), held("rcd-instead-of-earth", "does-not-count")),
          sound: NEVER,
          regulations: ["415.1.2"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("earth-path", "uncertain", "open"),
      words: "a point of the circuit has no reliable protective conductor",
      regulations: ["411.3.1.1", "543.2.1"],
    },
  ],
  client: {
    C2: "Some sockets have no sure earth. If a plugged in item goes wrong, its metal case could give a shock. Have this fixed soon.",
    C3: [
      says(
        "A power point has no sure earth. What it feeds now does not need one. Adding one would make it safer.",
        is("feeds", "class-2-fixed"),
      ),
      says(
        "A power point has no sure earth. A fast safety switch guards you for now. Adding an earth would make it safer.",
        all(is("feeds", "class-1"), yes("rcd-30ma")),
      ),
    ],
    FI: [
      unsure(
        "We could not find out if some power points are earthed. A fault there could give a shock. This must be looked at soon.",
        ["earth-path"],
      ),
      unsure(
        "A power point has no sure earth. We could not find out if what it feeds needs one. This must be looked at soon.",
        ["feeds", "rcd-30ma"],
        is("earth-path", "uncertain", "open"),
      ),
    ],
    none: "The power points are earthed as they should be.",
  },
  remedies: [
    {
      words: "Isolate the circuit, find the open connection and make it good; test every point again.",
      changes: { "earth-path": "sound" },
    },
    {
      words: "Where no conductor was ever run, rewire the section with a protective conductor.",
      changes: { "earth-path": "sound" },
    },
  ],
  examples: [
    {
      name: "three sockets read open to the main earthing terminal",
      facts: { "earth-path": "open", feeds: "class-1" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: no fault protection for class I appliances",
    },
    {
      name: "the earth of a pipe clip only, tested RCD",
      facts: { "earth-path": "uncertain", feeds: "class-1", "rcd-30ma": true },
      possible: ["C2"],
      source: "regulation 415.1.2: an RCD is not the sole means",
    },
    {
      name: "the same where the RCD is held to be a layer left",
      facts: { "earth-path": "uncertain", feeds: "class-1", "rcd-30ma": true },
      positions: { "rcd-instead-of-earth": "counts" },
      possible: ["C3"],
      source: "trade discussion of an RCD with no protective conductor",
    },
    {
      name: "socket behind furniture not tested",
      facts: { feeds: "class-1", "earth-path": { notKnown: "limited", reason: "behind fixed furniture" } },
      possible: ["none", "C2"],
      classification: "FI",
      source: "union over what the test would show",
    },
    {
      name: "earth contact not tested",
      facts: { feeds: "class-1" },
      possible: ["none", "C2"],
      missing: ["earth-path"],
      source: "union over what the test would show",
    },
  ],
});
