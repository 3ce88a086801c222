import { all, any, held, is, NEVER, not, ranked, unsure } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** Scorched, browned or hot parts in a board. */
export const boardOverheating = topic({
  id: "board-overheating",
  title: "Signs of heat in a board",
  group: "boards",
  items: ["boards.overheating", "boards.connections"],
  facts: {
    marks: ranked({
      asks: "What has the heat done to the parts, and what do hand, nose and ear tell under load?",
      effort: "opened",
      values: {
        none: "no part is marked by heat",
        discoloured: "a part is discoloured, and its insulation is still whole and supple",
        burnt: "a part is charred, melted or brittle",
        active: "a part is too hot to hold, smells of burning or crackles now",
      },
    }),
    cause: ranked({
      asks: "What made the heat, and is that still there?",
      effort: "opened",
      values: {
        gone: "what made the heat was put right earlier and has not come back",
        "put-right-today": "what made the heat was found and put right during the inspection",
        "still-there": "what made the heat is still there",
      },
    }),
  },
  contested: {
    "put-right": {
      question: "Is a joint that is put right during the inspection classified as found or as left?",
      positions: {
        "as-left": {
          words: "the report says what was found and done, and classifies what is left",
          because: "the classification tells the reader what still has to be done",
        },
        "as-found": {
          words: "what was found is classified, whatever was done to it",
          because: "the report is of the condition found, and work done wants a certificate of its own",
        },
      },
    },
  },
  paths: [
    {
      id: "hot-joint",
      hazard: "burns-or-fire",
      route: "the joint or device heats until something burns",
      exists: not(is("marks", "none")),
      layers: [
        {
          id: "no-heat",
          provision: "thermal-protection",
          words: "no more heat",
          gone: is("marks", "active"),
          sound: all(
            is("marks", "none", "discoloured"),
            any(is("cause", "gone"), all(is("cause", "put-right-today"), held("put-right", "as-left"))),
          ),
          regulations: ["526.1", "421.1"],
        },
        {
          id: "parts-whole",
          provision: "insulation",
          words: "insulation and plastic that stand the heat",
          gone: not(is("marks", "none")),
          sound: NEVER,
          regulations: ["416.1", "512.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: not(is("marks", "none")),
      words: "parts of the board have been hurt by heat or run hot",
      regulations: ["526.1"],
    },
  ],
  client: {
    C1: "A part of the fuse box is very hot or smells of burning now. It could start a fire. Turn it off. It must be put right today.",
    C2: "A part of the fuse box has been too hot. It could start a fire. It must be put right soon.",
    C3: "A part of the fuse box was too hot once. The cause is gone. Have it looked at again.",
    FI: [
      unsure(
        "A part of the fuse box has been too hot. We could not find out why. It must be looked at soon.",
        ["cause"],
        is("marks", "discoloured", "burnt", "active"),
      ),
      unsure("We could not see if parts of the fuse box have been too hot. It must be looked at soon.", ["marks"]),
    ],
    none: "There is no sign of heat in the fuse box.",
  },
  remedies: [
    {
      words: "Cut back to sound conductor, remake the joint to the maker's torque and look again under load.",
      changes: { cause: "gone" },
    },
    {
      words: "Replace the burnt device and whatever busbar, conductor or enclosure the heat has hurt.",
      changes: { marks: "none", cause: "gone" },
    },
  ],
  examples: [
    {
      name: "charred main switch, loose terminal",
      facts: { marks: "burnt", cause: "still-there" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: overheating found",
    },
    {
      name: "it crackles and is browned",
      facts: { marks: "active" },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: heat doing harm now",
    },
    {
      name: "browned neutral found loose and tightened",
      facts: { marks: "discoloured", cause: "put-right-today" },
      possible: ["C3"],
      source: "trade discussion: loose terminal tightened during the inspection",
    },
    {
      name: "the same classified as found",
      facts: { marks: "discoloured", cause: "put-right-today" },
      positions: { "put-right": "as-found" },
      possible: ["C2"],
      source: "trade discussion: loose terminal tightened during the inspection",
    },
    {
      name: "browned, its cause not found",
      facts: {
        marks: "discoloured",
        cause: { notKnown: "limited", reason: "busbar cover could not be taken off" },
      },
      possible: ["C3", "C2"],
      classification: "FI",
      source: "union over the cause",
    },
    {
      name: "browned, not looked into yet",
      facts: { marks: "discoloured" },
      possible: ["C3", "C2"],
      missing: ["cause"],
      source: "union over the cause",
    },
  ],
});
