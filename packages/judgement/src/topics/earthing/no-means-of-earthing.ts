import { ALWAYS, all, any, held, is, NEVER, no, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** Nothing, or only a pipe, connects the main earthing terminal to earth. */
export const noMeansOfEarthing = topic({
  id: "no-means-of-earthing",
  title: "No means of earthing, or a pipe as the only one",
  group: "earthing",
  items: ["earthing.arrangement"],
  facts: {
    means: ranked({
      asks: "What connects the main earthing terminal to earth?",
      effort: "glance",
      values: {
        proper: "the distributor's terminal or an earth electrode is connected",
        "pipe-only": "a water, gas or other service pipe is the only means of earthing",
        "not-connected": "a terminal or electrode is there, but the installation is not connected to it",
        absent: "there is no means of earthing at all",
      },
    }),
    "pipe-loop": yesNo({
      asks: "With the pipe as it is today, does a fault to earth trip the fuses, breakers or RCDs in time?",
      effort: "measured",
      yes: "by measurement, faults are disconnected in time as things are today",
      no: "faults are not disconnected in time",
      worse: "no",
    }),
    "metal-live": yesNo({
      asks: "Is metal that people can touch live now, or does anyone report tingles?",
      effort: "measured",
      yes: "metal within reach is at a dangerous voltage now",
      no: "no metal within reach is at a dangerous voltage",
      worse: "yes",
    }),
  },
  contested: {
    "pipe-as-earth": {
      question: "Is a service pipe that gives a good reading today fault protection as long as it does?",
      positions: {
        "not-counted": {
          words: "a pipe of a public service does not count as a means of earthing",
          because: "plastic or an insulating joint can be put in from outside at any time, and nobody here would know",
        },
        counted: {
          words: "a pipe that disconnects faults today counts until it is changed",
          because: "the measured loop is what clears the fault, whatever it runs through",
        },
      },
    },
  },
  paths: [
    {
      id: "unearthed-metal",
      hazard: "shock-under-fault",
      route: "metal becomes live through a fault, nothing switches off, and somebody touches it",
      exists: ALWAYS,
      layers: [
        {
          id: "basic",
          provision: "insulation",
          words: "the insulation between live parts and metal that can be touched",
          gone: all(yes("metal-live"), is("means", "pipe-only", "not-connected", "absent")),
          sound: NEVER,
          regulations: ["416.1"],
        },
        {
          id: "earth",
          provision: "fault-protection",
          words: "a means of earthing through which a fault is disconnected",
          gone: any(
            is("means", "not-connected", "absent"),
            all(is("means", "pipe-only"), any(no("pipe-loop"), held("pipe-as-earth", "not-counted"))),
          ),
          sound: NEVER,
          regulations: ["411.3.1.1", "542.1.2"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("means", "pipe-only", "not-connected", "absent"),
      words: "no permitted means of earthing is connected",
      regulations: ["411.3.1.1", "542.1.2", "542.2.6"],
    },
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
        "Metal here is live and there is no proper earth to make it safe. It can kill. Turn the power off and have it put right now.",
        is("means", "pipe-only", "not-connected", "absent"),
      ),
      "Metal here is live. It can kill. Do not touch it. Turn the power off and have the cause found now.",
    ],
    C2: "The wiring has no proper earth. If a fault comes, metal could give a shock and stay live. Have an earth put in soon.",
    C3: "The wiring uses a pipe as its earth. It works today. A proper earth should be put in.",
    FI: [
      unsure("We could not find out if the wiring has a proper earth. This must be looked at soon.", ["means"]),
      unsure(
        "The wiring uses a pipe as its earth. We could not find out if that works. This must be looked at soon.",
        ["pipe-loop"],
        is("means", "pipe-only"),
      ),
      unsure(
        "The wiring uses a pipe as its earth. We could not find out if metal here is live. This must be tested soon.",
        ["metal-live"],
        is("means", "pipe-only"),
      ),
      unsure("We could not find out if metal here is live. This must be tested soon.", ["metal-live"]),
    ],
    none: "The wiring is earthed as it should be.",
  },
  remedies: [
    {
      words: "Connect the distributor's earthing terminal, where the distributor offers one and agrees.",
      changes: { means: "proper" },
    },
    {
      words: "Install an earth electrode, and RCDs chosen for its resistance in front of every circuit.",
      changes: { means: "proper" },
    },
    { words: "Until then, find and isolate what makes the metal live.", changes: { "metal-live": "no" } },
  ],
  examples: [
    {
      name: "no earth at an overhead supply, no fault now",
      facts: { means: "absent", "metal-live": false },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: fault protection absent",
    },
    {
      name: "no earth, pipework at 120 V",
      facts: { means: "absent", "metal-live": true },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: metal live now",
    },
    {
      name: "water pipe as the only earth, breakers trip",
      facts: { means: "pipe-only", "pipe-loop": true, "metal-live": false },
      possible: ["C2"],
      source: "regulation 542.2.6",
    },
    {
      name: "the same where a good reading is held to count",
      facts: { means: "pipe-only", "pipe-loop": true, "metal-live": false },
      positions: { "pipe-as-earth": "counted" },
      possible: ["C3"],
      source: "trade discussion of water pipe earths",
    },
    {
      name: "distributor's terminal beside the cut-out, nothing connected",
      facts: { means: "not-connected", "metal-live": false },
      possible: ["C2"],
      source: "regulation 411.3.1.1",
    },
    {
      name: "means not found yet",
      facts: { "metal-live": false },
      possible: ["none", "C2"],
      missing: ["means"],
      source: "union over the means of earthing",
    },
  ],
});
