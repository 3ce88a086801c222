import { ALWAYS, all, any, held, is, NEVER, oneKind, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Conductors connected the wrong way round at a point of a circuit. */
export const polarityReversedAtPoint = topic({
  id: "polarity-reversed-at-point",
  title: "Conductors reversed at a point",
  group: "circuits",
  items: ["accessories.connections", "circuits.terminations"],
  facts: {
    swapped: oneKind({
      asks: "Which conductors are the wrong way round at the point?",
      effort: "measured",
      values: {
        none: "the conductors are connected the right way round",
        "line-neutral": "line and neutral are the wrong way round",
        "neutral-earth": "neutral and protective conductor are the wrong way round",
        "line-earth": "line and protective conductor are the wrong way round",
      },
    }),
    switching: ranked({
      asks: "What does the point rely on for switching off?",
      effort: "glance",
      values: {
        "both-poles": "a plug or a switch parts both poles there",
        "one-pole": "a single-pole switch or a fuse on one side is all that parts it",
      },
    }),
    "live-when-off": ranked({
      asks: "Switched off there, can live metal then be touched in ordinary use?",
      effort: "opened",
      values: {
        "needs-tool": "live metal is reached only with a tool",
        "in-use":
          "live metal is reached in ordinary use, as at the outer contact of a screw lampholder or a heater's element",
      },
    }),
    "class-1-metal": yesNo({
      asks: "Is metal of equipment or a metal plate joined to the earth contact there?",
      effort: "glance",
      yes: "metal that people touch is joined to the earth contact",
      no: "no metal is joined to the earth contact",
      worse: "yes",
    }),
  },
  contested: {
    "double-pole-swap": {
      question: "Line and neutral reversed where a plug or a double-pole switch parts both: danger or improvement?",
      positions: {
        danger: {
          words: "the fuse and switch of what is plugged in may then sit in the neutral",
          because: "a fuse in the neutral can open and leave the appliance live inside",
        },
        improve: {
          words: "where both poles are parted it is to be improved",
          because: "unplugging makes everything dead, whichever way round",
        },
      },
    },
  },
  paths: [
    {
      id: "thought-dead",
      hazard: "contact-with-live-parts",
      route: "somebody takes it to be switched off and touches what stayed live",
      exists: is("swapped", "line-neutral"),
      layers: [
        {
          id: "isolation",
          provision: "isolation",
          words: "switching that makes it dead",
          gone: any(is("switching", "one-pole"), held("double-pole-swap", "danger")),
          sound: NEVER,
          regulations: ["132.14.1", "643.6"],
        },
        {
          id: "closed",
          provision: "barrier-or-enclosure",
          words: "an enclosure around what stays live",
          gone: all(is("switching", "one-pole"), is("live-when-off", "in-use")),
          sound: NEVER,
          regulations: ["416.2.1"],
        },
      ],
    },
    {
      id: "earth-carries-load",
      hazard: "shock-under-fault",
      route: "the protective conductor carries load current, and a break in it makes metal live",
      exists: is("swapped", "neutral-earth"),
      layers: [
        oneEventAway("continuity", "equipotential-bonding", "a protective conductor that stays whole", ["543.3.1"]),
        {
          id: "earth",
          provision: "fault-protection",
          words: "a protective conductor that carries no load",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["411.3.1.1"],
        },
      ],
    },
    {
      id: "metal-live",
      hazard: "shock-under-fault",
      route: "metal joined to the earth contact is live as soon as it is connected",
      exists: is("swapped", "line-earth"),
      layers: [
        {
          id: "basic",
          provision: "insulation",
          words: "insulation between line and the metal",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["416.1"],
        },
        {
          id: "no-metal",
          provision: "fault-protection",
          words: "no metal connected that could be touched",
          gone: yes("class-1-metal"),
          sound: NEVER,
          regulations: ["411.3.1.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("swapped", "line-neutral", "neutral-earth", "line-earth"),
      words: "conductors are connected the wrong way round",
      regulations: ["643.6", "132.14.1"],
    },
  ],
  client: {
    C1: "Wires are crossed at one point. Live metal can be touched. It can kill. Do not use it until it is mended.",
    C2: [
      says(
        "Wires are crossed at one point. It can stay live when it is switched off. Somebody could get a shock. Have it mended soon.",
        is("swapped", "line-neutral"),
      ),
      says(
        "Two wires are crossed at one point. If one of them breaks, metal could give a shock. Have it mended soon.",
        is("swapped", "neutral-earth"),
      ),
      says(
        "Wires are crossed at one point. Metal joined to it would be live. Do not use it until it is mended.",
        is("swapped", "line-earth"),
      ),
    ],
    C3: "Wires are crossed at one point. It is dead once it is unplugged or turned off. Have it put right.",
    FI: [
      unsure("We could not test if the wires at some points are the right way round. This must be looked at.", [
        "swapped",
      ]),
      unsure(
        "Wires are crossed at one point. We could not find out how much of a danger it is. This must be looked at.",
        ["switching", "live-when-off", "class-1-metal"],
        is("swapped", "line-neutral", "line-earth"),
      ),
    ],
    none: "The wires are the right way round.",
  },
  remedies: [
    {
      words: "Isolate, connect the conductors the right way round, and test polarity and loop impedance again.",
      changes: { swapped: "none" },
    },
  ],
  examples: [
    {
      name: "line and neutral reversed at a socket",
      facts: {
        swapped: "line-neutral",
        switching: "both-poles",
        "live-when-off": "needs-tool",
      },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: reversed at a socket",
    },
    {
      name: "the same held to be an improvement",
      facts: {
        swapped: "line-neutral",
        switching: "both-poles",
        "live-when-off": "needs-tool",
      },
      positions: { "double-pole-swap": "improve" },
      possible: ["C3"],
      source: "trade discussion of reversed sockets",
    },
    {
      name: "screw lampholder live at its outer contact while off",
      facts: { swapped: "line-neutral", switching: "one-pole", "live-when-off": "in-use" },
      possible: ["C1"],
      source: "trade practice: live metal is touched on changing a lamp",
    },
    {
      name: "line and earth crossed, metal plate",
      facts: { swapped: "line-earth", "class-1-metal": true },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: metal is live now",
    },
    {
      name: "neutral and earth crossed at a twin socket",
      facts: { swapped: "neutral-earth" },
      possible: ["C2"],
      source: "trade practice: the protective conductor carries load",
    },
    {
      name: "point could not be tested",
      facts: {
        switching: "one-pole",
        "live-when-off": "needs-tool",
        "class-1-metal": false,
        swapped: { notKnown: "limited", reason: "behind a built-in appliance" },
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "union over what a polarity test would show",
    },
    {
      name: "crossed, switching not looked at",
      facts: { swapped: "line-neutral" },
      possible: ["C2", "C1"],
      missing: ["switching"],
      source: "union over the switching",
    },
  ],
});
