import { ALWAYS, all, any, held, is, NEVER, no, ranked, says, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** The electrode itself, its connection and its conductor. */
export const electrodeCondition = topic({
  id: "electrode-condition",
  title: "Earth electrode or its connection in bad condition",
  group: "earthing",
  items: ["earthing.electrode", "earthing.bonding-connections"],
  facts: {
    connected: ranked({
      asks: "How is the conductor connected to the electrode?",
      effort: "opened",
      values: {
        tight: "it is clamped tight to the electrode",
        corroded: "the clamp is corroded, and does not move by hand",
        loose: "the clamp is loose",
        off: "the conductor is off the electrode, or broken",
      },
    }),
    "suits-rcds": yesNo({
      asks: "Does electrode resistance times the rated residual current of each RCD stay within 50 V today?",
      effort: "measured",
      yes: "by measurement the electrode suits its RCDs today",
      no: "by measurement the electrode does not suit its RCDs",
      worse: "no",
      worked: { by: "electrode", met: "yes", notMet: "no" },
    }),
    conductor: ranked({
      asks: "How is the conductor to the electrode run?",
      effort: "glance",
      values: {
        guarded: "it is large enough for its place, and guarded or buried deep enough",
        "open-to-knocks": "it is open to knocks, spades or corrosion, or thin for its place",
      },
    }),
    reached: yesNo({
      asks: "Can the connection be reached for inspection, with cover and label in place?",
      effort: "glance",
      yes: "the connection can be reached, and has cover and label",
      no: "the connection cannot be reached, or its cover or label is missing",
      worse: "no",
    }),
  },
  contested: {
    "corroded-clamp": {
      question: "Is a corroded clamp through which the RCDs still trip potentially dangerous?",
      positions: {
        improvement: {
          words: "it is to be renewed, and works today",
          because: "the measured value includes the clamp as it is",
        },
        danger: {
          words: "it is potentially dangerous",
          because: "nothing else disconnects a fault here, and the next winter may part the joint",
        },
      },
    },
  },
  paths: [
    {
      id: "metal-stays-live",
      hazard: "shock-under-fault",
      route: "metal becomes live through a fault, and the electrode is not there to trip the RCD",
      exists: ALWAYS,
      layers: [
        oneEventAway("basic", "insulation", "the insulation between live parts and earthed metal", ["416.1"]),
        {
          id: "electrode",
          provision: "fault-protection",
          words: "an electrode that is connected and suits its RCDs",
          gone: any(
            is("connected", "loose", "off"),
            no("suits-rcds"),
            all(is("connected", "corroded"), held("corroded-clamp", "danger")),
          ),
          sound: NEVER,
          regulations: ["411.5.3", "542.3.2"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("connected", "corroded", "loose", "off"),
      words: "the connection at the electrode is not sound",
      regulations: ["542.3.2"],
    },
    {
      when: is("conductor", "open-to-knocks"),
      words: "the conductor to the electrode is not protected as its place asks for",
      regulations: ["542.3.1", "543.3.1"],
    },
    {
      when: no("reached"),
      words: "the connection cannot be inspected, or is not covered and labelled",
      regulations: ["514.13.1", "543.3.2"],
    },
  ],
  client: {
    C2: [
      says(
        "The wire to the earth rod is off or loose. In a fault, metal could stay live. Have it put right today.",
        is("connected", "loose", "off"),
      ),
      says(
        "The earth rod does not work well enough. In a fault, metal could stay live. Have it put right soon.",
        no("suits-rcds"),
      ),
      says(
        "The clamp on the earth rod is rusty. If it fails, metal could stay live in a fault. Have it put right soon.",
        is("connected", "corroded"),
      ),
    ],
    C3: "The earth rod works. Its wire, clamp or cover should be better.",
    FI: unsure("We could not find the earth rod or test it well. This must be looked at soon.", [
      "connected",
      "suits-rcds",
    ]),
    none: "The earth rod and its wire are in order.",
  },
  remedies: [
    {
      words: "Renew the clamp, connect the conductor, and measure the electrode again.",
      changes: { connected: "tight", "suits-rcds": "yes" },
    },
    { words: "Guard the conductor, or replace it by one fit for its place.", changes: { conductor: "guarded" } },
    { words: "Provide a pit with cover and label.", changes: { reached: "yes" } },
  ],
  examples: [
    {
      name: "conductor pulled off the rod",
      facts: { connected: "off" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: fault protection absent",
    },
    {
      name: "rusty clamp, 70 Ω, 30 mA",
      facts: { connected: "corroded", "suits-rcds": true, conductor: "guarded", reached: true },
      possible: ["C3"],
      source: "trade practice",
    },
    {
      name: "the same where a joint about to fail is held to be dangerous",
      facts: { connected: "corroded", "suits-rcds": true, conductor: "guarded", reached: true },
      positions: { "corroded-clamp": "danger" },
      possible: ["C2"],
      source: "trade discussion of electrode clamps",
    },
    {
      name: "pit cover and label missing",
      facts: { connected: "tight", "suits-rcds": true, conductor: "guarded", reached: false },
      possible: ["C3"],
      source: "regulation 514.13.1",
    },
    {
      name: "rod not found, reading good",
      facts: {
        "suits-rcds": true,
        conductor: "guarded",
        reached: false,
        connected: { notKnown: "limited", reason: "the rod is under the drive" },
      },
      possible: ["C3", "C2"],
      classification: "FI",
      source: "union over the connection",
    },
    {
      name: "nothing known but access",
      facts: { reached: true },
      possible: ["none", "C3", "C2"],
      missing: ["connected", "suits-rcds"],
      source: "union over what is not known",
    },
  ],
});
