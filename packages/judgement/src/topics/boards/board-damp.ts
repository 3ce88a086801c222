import { any, is, NEVER, no, not, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Water, rust, green copper, vermin or dirt in a board. */
export const boardDamp = topic({
  id: "board-damp",
  title: "Water, corrosion or dirt in a board",
  group: "boards",
  items: ["boards.enclosure", "boards.connections"],
  facts: {
    inside: ranked({
      asks: "What is found inside?",
      effort: "opened",
      values: {
        clean: "the inside of the board is dry and clean",
        "old-marks": "there are old marks of water, light rust, dust or droppings, and all is dry now",
        "on-live-parts": "terminals or busbars are corroded, or dirt that conducts lies on them",
        "wet-now": "water is in the board now",
      },
    }),
    "source-stopped": yesNo({
      asks: "Has what let it in been found and stopped?",
      effort: "beyond",
      yes: "what let it in has been found and stopped",
      no: "what let it in is still there",
      worse: "no",
    }),
    "insulation-good": yesNo({
      asks: "Is the insulation resistance of the board and its circuits good?",
      effort: "measured",
      yes: "the insulation resistance is good",
      no: "the insulation resistance is low",
      worse: "no",
      worked: { by: "insulation-resistance", met: "yes", notMet: "no", findings: "not-met-only" },
    }),
  },
  contested: {},
  paths: [
    {
      id: "tracks",
      hazard: "burns-or-fire",
      route: "current creeps over wet or corroded parts, heats or arcs, or makes the case live",
      exists: not(is("inside", "clean")),
      layers: [
        {
          id: "clean-dry",
          provision: "insulation",
          words: "dry and clean surfaces between live parts",
          gone: any(is("inside", "on-live-parts", "wet-now"), no("insulation-good")),
          sound: yes("source-stopped"),
          regulations: ["416.1", "512.2.1"],
        },
        {
          id: "case",
          provision: "barrier-or-enclosure",
          words: "the enclosure, while it is not wet through",
          gone: is("inside", "wet-now"),
          sound: NEVER,
          regulations: ["522.3.1"],
        },
      ],
    },
    {
      id: "comes-back",
      hazard: "contact-with-live-parts",
      route: "water comes in again, and the case or the water on it becomes live",
      exists: no("source-stopped"),
      layers: [
        oneEventAway("dry-now", "surroundings", "that it is dry now", ["522.3.1"]),
        {
          id: "entry-shut",
          provision: "barrier-or-enclosure",
          words: "an enclosure that keeps out what came in before",
          gone: not(is("inside", "clean")),
          sound: is("inside", "clean"),
          regulations: ["512.2.1", "522.3.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: not(is("inside", "clean")),
      words: "water, corrosion or dirt has got into the board",
      regulations: ["512.2.1", "522.3.1"],
    },
  ],
  client: {
    C1: "There is water in the fuse box now. It could kill. Keep away. It must be made safe today.",
    C2: "Water, rust or dirt has got into the fuse box. It could start a fire or give a shock. Put this right soon.",
    C3: "There are old marks of water, rust or dirt in the fuse box. It is dry now. Have it cleaned.",
    FI: [
      unsure(
        "There are old marks in the fuse box. We could not find out if the cause was stopped. It must be looked at.",
        ["source-stopped"],
        is("inside", "old-marks"),
      ),
      unsure("We could not find out what water or dirt has done in the fuse box. It must be looked at.", [
        "inside",
        "insulation-good",
        "source-stopped",
      ]),
    ],
    none: "The fuse box is dry and clean.",
  },
  remedies: [
    { words: "Find and stop what lets the water in.", changes: { "source-stopped": "yes" } },
    {
      words: "Replace corroded parts, clean and dry the board, and stop what let the water in.",
      changes: { inside: "clean", "source-stopped": "yes", "insulation-good": "yes" },
    },
  ],
  examples: [
    {
      name: "old stain, leak repaired, insulation good",
      facts: { inside: "old-marks", "source-stopped": true, "insulation-good": true },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice",
    },
    {
      name: "green terminals in a cellar",
      facts: { inside: "on-live-parts", "source-stopped": false, "insulation-good": true },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: corrosion on live parts",
    },
    {
      name: "water runs in along a cable",
      facts: { inside: "wet-now", "source-stopped": false },
      possible: ["C1"],
      source: "trade practice: water on live parts now",
    },
    {
      name: "stain, its source not found",
      facts: {
        inside: "old-marks",
        "source-stopped": { notKnown: "limited", reason: "the flat above was not open to us" },
        "insulation-good": true,
      },
      possible: ["C3", "C2"],
      classification: "FI",
      source: "union over the source",
    },
    {
      name: "stain, not yet tested",
      facts: { inside: "old-marks", "source-stopped": true },
      possible: ["C3", "C2"],
      missing: ["insulation-good"],
      source: "union over the test",
    },
  ],
});
