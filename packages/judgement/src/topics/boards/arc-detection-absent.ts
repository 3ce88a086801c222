import { all, held, is, no, oneKind, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** No arc fault detection on socket-outlet circuits. */
export const arcDetectionAbsent = topic({
  id: "arc-detection-absent",
  title: "No arc fault detection",
  group: "boards",
  items: ["boards.arc-fault"],
  facts: {
    fitted: yesNo({
      asks: "Do the single-phase socket circuits up to 32 A have an arc fault detection device that works?",
      effort: "opened",
      yes: "arc fault detection is fitted and works",
      no: "no working arc fault detection is fitted",
      worse: "no",
    }),
    use: oneKind({
      asks: "What sort of building is it?",
      effort: "glance",
      values: {
        ordinary: "the building is an ordinary house, flat, shop or office",
        "required-use":
          "it is a higher-risk residential building, a house in multiple occupation, student housing built as such, or a care home",
      },
    }),
    "asked-when-made": yesNo({
      asks: "Were the circuits made or altered when the device was already asked for in such buildings (from 2022)?",
      effort: "opened",
      yes: "the circuits were made or altered when the device was already asked for",
      no: "the circuits are older than the requirement",
      worse: "yes",
    }),
  },
  contested: {
    "older-circuits": {
      question: "In a building where it is asked for today, is its absence from older circuits worth an entry?",
      positions: {
        improvement: {
          words: "it is an improvement to advise",
          because: "today's edition is the yardstick, and people sleep there in numbers",
        },
        "no-entry": {
          words: "it is no matter for the report",
          because: "the circuits met what was asked when they were made, and nothing about them is worse since",
        },
      },
    },
  },
  paths: [],
  departures: [
    {
      when: all(no("fitted"), is("use", "required-use"), yes("asked-when-made")),
      words: "socket circuits in a building of this use have no arc fault detection",
      regulations: ["421.1.7"],
    },
    {
      when: all(no("fitted"), is("use", "required-use"), held("older-circuits", "improvement")),
      words: "socket circuits in a building of this use have no arc fault detection, asked for since they were made",
      regulations: ["421.1.7"],
    },
  ],
  client: {
    C3: "A device that spots sparks in the wires is missing or does not work. It is now asked for in such buildings. Adding it is advised.",
    none: "A device that spots sparks is not asked for here, or it is there.",
  },
  remedies: [
    {
      words: "Fit arc fault detection devices to the socket circuits when the board is next worked on.",
      changes: { fitted: "yes" },
    },
  ],
  examples: [
    {
      name: "ordinary house",
      facts: { fitted: false, use: "ordinary" },
      possible: ["none"],
      classification: "none",
      source: "regulation 421.1.7: recommended only",
    },
    {
      name: "care home rewired last year",
      facts: { fitted: false, use: "required-use", "asked-when-made": true },
      possible: ["C3"],
      classification: "C3",
      source: "regulation 421.1.7",
    },
    {
      name: "older house in multiple occupation, held to be no entry",
      facts: { fitted: false, use: "required-use", "asked-when-made": false },
      positions: { "older-circuits": "no-entry" },
      possible: ["none"],
      source: "trade discussion: devices asked for later",
    },
    {
      name: "use of the building not known",
      facts: { fitted: false },
      possible: ["none", "C3"],
      missing: ["use"],
      source: "union over the use",
    },
  ],
});
