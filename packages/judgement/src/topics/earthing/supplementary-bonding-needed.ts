import { ALWAYS, all, held, NEVER, no, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Supplementary bonding where a fault is not disconnected in time, or where the place asks for it. */
export const supplementaryBondingNeeded = topic({
  id: "supplementary-bonding-needed",
  title: "Supplementary bonding missing where it is needed",
  group: "earthing",
  items: ["earthing.supplementary"],
  facts: {
    "in-time": yesNo({
      asks: "Is an earth fault disconnected in time by the fuse or breaker of the circuit?",
      effort: "measured",
      yes: "the fuse or breaker disconnects an earth fault in time",
      no: "the fuse or breaker does not disconnect an earth fault in time",
      worse: "no",
      worked: { by: "maximum-zs", matter: "overcurrent-disconnects", met: "yes", notMet: "no" },
    }),
    "rcd-in-time": yesNo({
      asks: "Is it disconnected in time by an RCD that passed its test?",
      effort: "measured",
      yes: "an RCD disconnects an earth fault in time",
      no: "no RCD disconnects an earth fault in time",
      worse: "no",
      worked: { by: "maximum-zs", matter: "residual-disconnects", met: "yes", notMet: "no" },
    }),
    "asked-by-place": yesNo({
      asks: "Is it a place that asks for it in any case, such as a pool or where livestock stand?",
      effort: "glance",
      yes: "the place asks for supplementary bonding in any case",
      no: "the place does not ask for it in any case",
      worse: "yes",
    }),
    bonded: yesNo({
      asks: "Are all parts in reach of one another joined, at 50 V divided by the operating current or less?",
      effort: "measured",
      yes: "by measurement all parts in reach of one another are joined well enough",
      no: "parts in reach of one another are not joined, or not well enough",
      worse: "no",
    }),
  },
  contested: {
    "place-with-rcd": {
      question:
        "Is bonding that the place asks for, and that is missing, potentially dangerous where faults are disconnected?",
      positions: {
        danger: {
          words: "it is",
          because: "wet or bare feet and animals do not stand the voltage even for the time of disconnection",
        },
        improvement: {
          words: "it is to be improved",
          because: "a 30 mA RCD keeps the time to a blink",
        },
      },
    },
  },
  paths: [
    {
      id: "metal-stays-live",
      hazard: "shock-under-fault",
      route: "metal becomes live through a fault and stays live too long, and somebody touches it and another part",
      exists: ALWAYS,
      layers: [
        oneEventAway("basic", "insulation", "the insulation between live parts and earthed metal", ["416.1"]),
        {
          id: "time-or-bond",
          provision: "fault-protection",
          words: "disconnection in time, or supplementary bonding in its place",
          gone: all(no("in-time"), no("rcd-in-time"), no("bonded")),
          sound: NEVER,
          regulations: ["411.3.2.6", "415.2.1", "415.2.2"],
        },
      ],
    },
    {
      id: "wet-place",
      hazard: "shock-under-fault",
      route: "a small voltage between two parts reaches wet skin or an animal",
      exists: yes("asked-by-place"),
      layers: [
        oneEventAway("no-fault", "fault-protection", "freedom from faults and a short disconnection time", ["411.3.2"]),
        {
          id: "bond",
          provision: "equipotential-bonding",
          words: "supplementary bonding of all parts in reach of one another",
          gone: all(no("bonded"), held("place-with-rcd", "danger")),
          sound: NEVER,
          regulations: ["415.2", "702.415.2", "705.415.2.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(yes("asked-by-place"), no("bonded")),
      words: "the supplementary bonding that the place asks for is missing",
      regulations: ["415.2", "702.415.2", "705.415.2.1"],
    },
  ],
  client: {
    C2: "Metal parts here are not linked to each other. In a fault you could get a shock from two of them. Have it put right soon.",
    C3: [
      says("Metal parts here are not all linked. A safety switch helps. Linking them is better.", yes("rcd-in-time")),
      "Metal parts here are not all linked. It is not a danger now. Linking them is better.",
    ],
    FI: [
      unsure("We could not find out if metal parts here are linked as they need to be. This must be tested.", [
        "bonded",
      ]),
      unsure(
        "Metal parts here are not all linked. We could not find out if they have to be. This must be tested.",
        ["in-time", "rcd-in-time", "asked-by-place"],
        no("bonded"),
      ),
    ],
    none: "Metal parts here are safe as they are.",
  },
  remedies: [
    {
      words:
        "Join the parts in reach of one another, and measure that they are at 50 V divided by the operating current or less.",
      changes: { bonded: "yes" },
    },
    {
      words: "Protect the circuit by an RCD that disconnects in time.",
      changes: { "rcd-in-time": "yes" },
    },
  ],
  examples: [
    {
      name: "motor circuit, loop too high, no RCD, no bonding",
      facts: { "in-time": false, "rcd-in-time": false, "asked-by-place": false, bonded: false },
      possible: ["C2"],
      classification: "C2",
      source: "regulation 411.3.2.6",
    },
    {
      name: "the same, bonded",
      facts: { "in-time": false, "rcd-in-time": false, "asked-by-place": false, bonded: true },
      possible: ["none"],
      source: "regulation 415.2.2",
    },
    {
      name: "milking parlour without bonding, RCD works",
      facts: { "in-time": false, "rcd-in-time": true, "asked-by-place": true, bonded: false },
      possible: ["C2"],
      source: "regulation 705.415.2.1",
    },
    {
      name: "the same where a fast RCD is held to be enough for now",
      facts: { "in-time": false, "rcd-in-time": true, "asked-by-place": true, bonded: false },
      positions: { "place-with-rcd": "improvement" },
      possible: ["C3"],
      source: "trade discussion of bonding in farm buildings",
    },
    {
      name: "loop too high, bonding not measured",
      facts: { "in-time": false, "rcd-in-time": false, "asked-by-place": false },
      possible: ["none", "C2"],
      missing: ["bonded"],
      source: "union over the bonding",
    },
  ],
});
