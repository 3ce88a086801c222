import { all, any, held, is, NEVER, no, ranked, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A protective conductor that is continuous, with more resistance than its length and size give. */
export const cpcResistanceHigh = topic({
  id: "cpc-resistance-high",
  title: "Protective conductor with high resistance",
  group: "circuits",
  items: ["circuits.cpc", "circuits.terminations"],
  facts: {
    "fits-length": yesNo({
      asks: "Does its resistance fit length and size, and is it much the same at neighbouring points?",
      effort: "measured",
      yes: "the resistance fits length and size",
      no: "the resistance is well above what length and size give",
      worse: "no",
      worked: {
        by: "r1r2-length",
        matter: "resistance-not-above",
        and: [{ by: "zs-agreement", matter: "readings-not-above" }],
        notMet: "no",
      },
    }),
    cause: ranked({
      asks: "What lies behind it?",
      effort: "opened",
      values: {
        reading: "the reading: a painted screw, a worn plug of the instrument, a longer route than thought",
        smaller: "part of it is smaller than thought, and sound",
        "poor-joint": "a loose, corroded or damaged connection",
      },
    }),
    disconnects: yesNo({
      asks: "As it is, is an earth fault at the worst point cleared in time?",
      effort: "measured",
      yes: "an earth fault at the worst point is cleared in time",
      no: "an earth fault at the worst point is not cleared in time",
      worse: "no",
      worked: { by: "maximum-zs", met: "yes", notMet: "no" },
    }),
  },
  contested: {
    "joint-that-still-clears": {
      question:
        "A poor joint in the protective conductor, its resistance still that of its length and faults still cleared in time: danger or improvement?",
      positions: {
        danger: {
          words: "a joint that is going is one event from having no earth",
          because: "the fault current itself may open it",
        },
        improve: {
          words: "while the resistance fits and faults are cleared it is to be improved",
          because: "the limit that counts is met today",
        },
      },
    },
  },
  paths: [
    {
      id: "lost-earth",
      hazard: "shock-under-fault",
      route: "metal becomes live through a fault, the protective conductor fails to carry it, and the metal stays live",
      exists: any(no("disconnects"), is("cause", "poor-joint")),
      layers: [
        oneEventAway("basic", "insulation", "the insulation of live parts", ["416.1"]),
        {
          id: "conductor",
          provision: "fault-protection",
          words: "a protective conductor that carries the fault until it is cleared",
          gone: any(
            no("disconnects"),
            all(is("cause", "poor-joint"), any(no("fits-length"), held("joint-that-still-clears", "danger"))),
          ),
          sound: NEVER,
          regulations: ["411.3.1.1", "543.3.1"],
        },
      ],
    },
  ],
  departures: [
    { when: no("disconnects"), words: "an earth fault is not cleared in time", regulations: ["411.3.2"] },
    {
      when: is("cause", "poor-joint"),
      words: "a connection of the protective conductor is poor",
      regulations: ["526.1", "543.3.1"],
    },
  ],
  client: {
    C2: "The earth wire has a bad joint or is too weak. In a fault metal could give a shock. Have it mended soon.",
    C3: "A joint of the earth wire is poor. The power still goes off in a fault. Have the joint mended.",
    FI: [
      unsure(
        "A test of the earth wire is worse than it should be. We could not find out why. This must be looked at.",
        ["cause"],
        no("fits-length"),
      ),
      unsure("We could not find out if the earth wire does its job. This must be looked at.", [
        "fits-length",
        "disconnects",
        "cause",
      ]),
    ],
    none: "The earth wire does its job.",
  },
  remedies: [
    {
      words: "Clean and tighten the connections between the last good point and the first bad one, and read again.",
      changes: { "fits-length": "yes", cause: "reading", disconnects: "yes" },
    },
    {
      words: "Replace the damaged or undersized length.",
      changes: { "fits-length": "yes", cause: "reading", disconnects: "yes" },
    },
  ],
  examples: [
    {
      name: "corroded connection found, faults still cleared",
      facts: { "fits-length": false, cause: "poor-joint", disconnects: true },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: one event from no earth",
    },
    {
      name: "the same while the resistance still fits",
      facts: { "fits-length": true, cause: "poor-joint", disconnects: true },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: a poor earth joint is one event from no earth, whatever it reads today",
    },
    {
      name: "that one held to be an improvement",
      facts: { "fits-length": true, cause: "poor-joint", disconnects: true },
      positions: { "joint-that-still-clears": "improve" },
      possible: ["C3"],
      source: "trade discussion",
    },
    {
      name: "painted screw of a metal plate",
      facts: { "fits-length": false, cause: "reading", disconnects: true },
      possible: ["none"],
      classification: "none",
      source: "trade practice: the reading was of the paint",
    },
    {
      name: "1.4 Ω above its neighbours, cause not found",
      facts: { "fits-length": false, disconnects: true, cause: { notKnown: "limited", reason: "box plastered over" } },
      possible: ["none", "C2"],
      classification: "FI",
      source: "union over the cause",
    },
    {
      name: "not opened yet",
      facts: { "fits-length": false, disconnects: true },
      possible: ["none", "C2"],
      missing: ["cause"],
      source: "union over the cause",
    },
  ],
});
