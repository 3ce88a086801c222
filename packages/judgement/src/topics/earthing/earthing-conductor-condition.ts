import { ALWAYS, all, any, held, is, NEVER, no, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** The earthing conductor of the supply and its connections: tight, whole, protected, labelled. */
export const earthingConductorCondition = topic({
  id: "earthing-conductor-condition",
  title: "Earthing conductor disconnected, loose or damaged",
  group: "earthing",
  items: ["earthing.conductor", "earthing.arrangement"],
  facts: {
    connection: ranked({
      asks: "How is the earthing conductor connected, at both ends?",
      effort: "opened",
      values: {
        tight: "it is connected tight and lasting at both ends",
        "improvised-clamp":
          "a clamp made for pipes holds it on the sheath or armour of the service cable, and is tight",
        loose: "a connection is loose, twisted on, or corroded",
        off: "it is not connected at one end",
      },
    }),
    run: ranked({
      asks: "What is its state along the run?",
      effort: "glance",
      values: {
        sound: "it is whole, and fixed or protected where it may be knocked",
        exposed: "it is whole, and unprotected where it may be knocked or pulled",
        worn: "strands are broken, or it is corroded or has been hot",
      },
    }),
    "metal-live": yesNo({
      asks: "Is metal that people can touch live now?",
      effort: "measured",
      yes: "metal within reach is at a dangerous voltage now",
      no: "no metal within reach is at a dangerous voltage",
      worse: "yes",
    }),
    label: yesNo({
      asks: "Is the connection labelled so that nobody takes it off by mistake?",
      effort: "glance",
      yes: "a lasting label warns against removal",
      no: "no lasting label warns against removal",
      worse: "no",
    }),
  },
  contested: {
    "pipe-clamp": {
      question: "Is a pipe clamp on the sheath or armour of the service cable fault protection that lasts?",
      positions: {
        "for-now": {
          words: "while it is tight and reads well, it is to be improved",
          because: "the distributor should make this connection, but a fault is disconnected today",
        },
        "does-not-last": {
          words: "it does not count as a lasting connection",
          because: "it crushes a lead sheath and works loose, and heat at the sheath reaches the live cores",
        },
      },
    },
  },
  paths: [
    {
      id: "metal-stays-live",
      hazard: "shock-under-fault",
      route: "metal becomes live through a fault, the earth is not there to clear it, and somebody touches the metal",
      exists: ALWAYS,
      layers: [
        {
          id: "basic",
          provision: "insulation",
          words: "the insulation between live parts and earthed metal",
          gone: all(yes("metal-live"), any(is("connection", "loose", "off"), is("run", "worn"))),
          sound: NEVER,
          regulations: ["416.1"],
        },
        {
          id: "earth",
          provision: "fault-protection",
          words: "an earthing conductor connected at both ends",
          gone: any(
            is("connection", "loose", "off"),
            is("run", "worn"),
            all(is("connection", "improvised-clamp"), held("pipe-clamp", "does-not-last")),
          ),
          sound: NEVER,
          regulations: ["411.3.1.1", "526.1", "542.3.2"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("connection", "improvised-clamp", "loose", "off"),
      words: "the connection of the earthing conductor is not of a lasting kind",
      regulations: ["526.1", "542.3.2"],
    },
    {
      when: is("run", "exposed", "worn"),
      words: "the earthing conductor is not protected against damage",
      regulations: ["522.6.1", "543.3.1"],
    },
    { when: no("label"), words: "the connection has no label", regulations: ["514.13.1"] },
  ],
  dangers: [
    {
      id: "metal-live",
      least: "C1",
      when: yes("metal-live"),
      words: "metal within reach is live now",
      regulations: ["131.2.2", "411.3.1.1"],
    },
  ],
  client: {
    C1: [
      says(
        "Metal here is live and the earth wire is off, loose or worn. It can kill. Turn the power off and have it put right now.",
        any(is("connection", "loose", "off"), is("run", "worn")),
      ),
      "Metal here is live. It can kill. Do not touch it. Turn the power off and have the cause found now.",
    ],
    C2: [
      says(
        "The main earth wire is off, loose or worn. If a fault comes, metal could stay live. Have it put right today.",
        any(is("connection", "loose", "off"), is("run", "worn")),
      ),
      says(
        "The main earth wire is held by the wrong kind of clamp. It may not last. In a fault, metal could stay live. Have it put right soon.",
        is("connection", "improvised-clamp"),
      ),
    ],
    C3: "The main earth wire works. It should be better fixed or marked.",
    FI: [
      unsure("We could not see all of the main earth wire. This must be looked at soon.", ["connection", "run"]),
      unsure("We could not find out if metal here is live. This must be tested soon.", ["metal-live"]),
    ],
    none: "The main earth wire is in order.",
  },
  remedies: [
    { words: "Until it is put right, find and isolate what makes the metal live.", changes: { "metal-live": "no" } },
    { words: "Fix the label.", changes: { label: "yes" } },
    {
      words: "Connect or tighten the conductor on a proper terminal, and measure the external loop again.",
      changes: { connection: "tight" },
    },
    { words: "Fix the conductor and guard it where it may be knocked.", changes: { run: "sound" } },
    {
      words: "Ask the distributor to provide a terminal of its own instead of the clamp.",
      changes: { connection: "tight" },
    },
  ],
  examples: [
    {
      name: "earthing conductor found off at the terminal",
      facts: { connection: "off", "metal-live": false },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: fault protection absent",
    },
    {
      name: "the same with a live tap",
      facts: { connection: "off", "metal-live": true },
      possible: ["C1"],
      source: "trade practice: metal live now",
    },
    {
      name: "pipe clamp on the lead sheath, tight",
      facts: { connection: "improvised-clamp", run: "sound", "metal-live": false, label: true },
      possible: ["C3"],
      source: "trade discussion of clamps on the service cable",
    },
    {
      name: "the same where it is held not to last",
      facts: { connection: "improvised-clamp", run: "sound", label: true, "metal-live": false },
      positions: { "pipe-clamp": "does-not-last" },
      possible: ["C2"],
      source: "trade discussion of clamps on the service cable",
    },
    {
      name: "label missing",
      facts: { "metal-live": false, connection: "tight", run: "sound", label: false },
      possible: ["C3"],
      source: "regulation 514.13.1",
    },
    {
      name: "far end not seen",
      facts: { run: "sound", "metal-live": false, label: true },
      possible: ["none", "C3", "C2"],
      missing: ["connection"],
      source: "union over the connection",
    },
  ],
});
