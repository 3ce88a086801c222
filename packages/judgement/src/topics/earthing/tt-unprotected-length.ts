import { ALWAYS, all, any, held, is, NEVER, no, ranked, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** On an earth electrode, what lies in front of the first RCD. */
export const ttUnprotectedLength = topic({
  id: "tt-unprotected-length",
  title: "Electrode-earthed installation: tails and board before the first RCD",
  group: "earthing",
  items: ["boards.enclosure", "intake.meter-tails", "earthing.arrangement"],
  facts: {
    tails: ranked({
      asks: "From the meter to the terminals of the first RCD, how are the conductors insulated?",
      effort: "opened",
      values: {
        double: "insulation and sheath, or as good, reach to the terminals of the first RCD",
        "single-clear": "a single layer of insulation runs for a stretch, held clear of earthed metal",
        "single-on-metal": "a single layer of insulation touches earthed metal or passes its edge",
      },
    }),
    board: ranked({
      asks: "What is the enclosure of the first RCD made of?",
      effort: "glance",
      values: {
        insulating: "the enclosure is insulating, with no earthed metal around the parts before the RCD",
        "metal-guarded": "the enclosure is metal, with an insulating gland, and tails held by more than the terminal",
        metal: "the enclosure is metal, and nothing but the terminal keeps a tail from touching it",
      },
    }),
    upstream: yesNo({
      asks: "Does a time-delayed RCD in an insulating enclosure come first?",
      effort: "glance",
      yes: "a time-delayed RCD in an insulating enclosure comes first",
      no: "no RCD comes before this one",
      worse: "no",
    }),
  },
  contested: {
    "metal-board": {
      question: "Is metal around the parts before the first RCD potentially dangerous on an electrode?",
      positions: {
        danger: {
          words: "it is, unless the tails are guarded",
          because: "a tail that touches the case makes all earthed metal live, and the main fuse never blows",
        },
        improvement: {
          words: "it is an improvement as long as the tails are double insulated",
          because: "the stretch is a hand's breadth, and the terminals hold",
        },
      },
    },
  },
  paths: [
    {
      id: "case-live",
      hazard: "shock-under-fault",
      route: "a conductor before the RCD touches earthed metal, and every earthed part of the installation stays live",
      exists: ALWAYS,
      layers: [
        oneEventAway("basic", "insulation", "the first layer of insulation and tight terminals", ["416.1"]),
        {
          id: "second",
          provision: "fault-protection",
          words: "an RCD further up, or insulation that keeps such a fault from happening",
          gone: all(
            no("upstream"),
            any(
              is("tails", "single-on-metal"),
              all(is("board", "metal"), any(is("tails", "single-clear"), held("metal-board", "danger"))),
            ),
          ),
          sound: NEVER,
          regulations: ["411.5.2", "412.2.1", "531.3.5.3.2"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(no("upstream"), any(is("tails", "single-clear", "single-on-metal"), is("board", "metal"))),
      words: "the part before the first RCD has no fault protection of its own",
      regulations: ["411.5.2", "412.2.1"],
    },
  ],
  client: {
    C2: "In front of the safety switch a loose wire could make metal live, and nothing would cut it off. Have it put right soon.",
    C3: "The wires in front of the safety switch could be better. It is not a danger now.",
    FI: [
      unsure("We could not see the wires in front of the safety switch. This must be looked at.", ["tails", "board"]),
      unsure("We could not find out if another safety switch comes first. This must be looked at.", ["upstream"]),
    ],
    none: "The wires in front of the safety switch are in order.",
  },
  remedies: [
    {
      words: "Fit an insulating gland, and fix the sheathed tails so that a loose one cannot touch the case.",
      changes: { tails: "double", board: "metal-guarded" },
    },
    {
      words: "Put a time-delayed RCD in an insulating enclosure before the board.",
      changes: { upstream: "yes" },
    },
  ],
  examples: [
    {
      name: "metal board, RCD main switch inside, no gland",
      facts: { tails: "double", board: "metal", upstream: false },
      possible: ["C2"],
      source: "trade discussion of metal boards on an electrode",
    },
    {
      name: "the same where it is held to be an improvement",
      facts: { tails: "double", board: "metal", upstream: false },
      positions: { "metal-board": "improvement" },
      possible: ["C3"],
      source: "trade discussion of metal boards on an electrode",
    },
    {
      name: "metal board with gland and clamped tails",
      facts: { tails: "double", board: "metal-guarded", upstream: false },
      possible: ["none"],
      source: "regulation 412.2.1",
    },
    {
      name: "tails and board insulating",
      facts: { tails: "double", board: "insulating", upstream: false },
      possible: ["none"],
      source: "regulation 412.2.1",
    },
    {
      name: "delayed RCD first",
      facts: { board: "metal", upstream: true },
      possible: ["none"],
      source: "regulation 411.5.2",
    },
    {
      name: "board not opened",
      facts: { board: "metal-guarded", upstream: false },
      possible: ["none", "C3", "C2"],
      missing: ["tails"],
      source: "union over the tails",
    },
  ],
});
