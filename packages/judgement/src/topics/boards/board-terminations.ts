import { all, any, held, is, no, not, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Terminals of a board: how they hold their conductors. Marks of heat are a subject of their own. */
export const boardTerminations = topic({
  id: "board-terminations",
  title: "Connections in a board",
  group: "boards",
  items: ["boards.connections", "circuits.terminations"],
  facts: {
    grip: ranked({
      asks: "With the board dead, how does the terminal hold when tried by hand and screwdriver?",
      effort: "opened",
      values: {
        tight: "the terminal is tight",
        slack: "the screw takes a part of a turn, and the conductor does not move",
        loose: "the conductor moves in the terminal or can be drawn out",
      },
    }),
    strands: ranked({
      asks: "Are all strands in the terminal?",
      effort: "opened",
      values: {
        all: "all strands are in the terminal",
        few: "a few strands are cut off or left out",
        many: "so many strands are cut off or left out that the rest is too small for the circuit",
      },
    }),
    "clamps-insulation": yesNo({
      asks: "Does the terminal clamp insulation in place of metal?",
      effort: "opened",
      yes: "the terminal clamps insulation",
      no: "the terminal clamps bare metal only",
      worse: "yes",
    }),
    "in-one-terminal": ranked({
      asks: "How many conductors, and of what sizes, share the terminal?",
      effort: "opened",
      values: {
        "as-made-for": "the terminal holds as many conductors, and of such sizes, as it is made for",
        "too-many": "the terminal holds more conductors, or sizes more unlike, than it is made for",
      },
    }),
    "put-right": yesNo({
      asks: "Was it remade or tightened to the maker's torque during the inspection?",
      effort: "glance",
      yes: "the terminal was put right during the inspection",
      no: "the terminal was left as found",
      worse: "no",
    }),
  },
  contested: {
    "found-or-left": {
      question: "Is a terminal that is put right during the inspection classified as found or as left?",
      positions: {
        "as-left": {
          words: "the report says what was found and done, and classifies what is left",
          because: "the classification tells the reader what still has to be done",
        },
        "as-found": {
          words: "what was found is classified, whatever was done to it",
          because: "the report is of the condition found, and one loose terminal speaks for others not opened",
        },
      },
    },
  },
  paths: [
    {
      id: "bad-joint",
      hazard: "burns-or-fire",
      route: "the joint heats or lets go, and something burns or loses its earth",
      exists: any(no("put-right"), held("found-or-left", "as-found")),
      layers: [
        {
          id: "joint",
          provision: "thermal-protection",
          words: "a joint that holds and carries the current",
          gone: any(is("grip", "loose"), is("strands", "many"), yes("clamps-insulation")),
          sound: all(
            is("grip", "tight"),
            is("strands", "all"),
            no("clamps-insulation"),
            is("in-one-terminal", "as-made-for"),
          ),
          regulations: ["526.1", "526.2"],
        },
        oneEventAway("enclosure", "barrier-or-enclosure", "the enclosure round it, which stands some heat", ["526.5"]),
      ],
    },
  ],
  departures: [
    {
      when: all(
        any(no("put-right"), held("found-or-left", "as-found")),
        any(
          not(is("grip", "tight")),
          not(is("strands", "all")),
          yes("clamps-insulation"),
          is("in-one-terminal", "too-many"),
        ),
      ),
      words: "a connection is not lasting, tight and complete",
      regulations: ["526.1", "526.2"],
    },
  ],
  client: {
    C2: [
      says(
        "A wire in the fuse box is loose or badly fixed. It could get hot and start a fire. Fix it soon.",
        no("put-right"),
      ),
      says("A wire in the fuse box was loose or badly fixed. It was put right during the visit.", yes("put-right")),
    ],
    C3: [
      says("A wire in the fuse box could be fixed better. It holds for now. Have it made tight.", no("put-right")),
      says("A wire in the fuse box was not fixed well. It was put right during the visit.", yes("put-right")),
    ],
    FI: [
      unsure("We could not check if the wires in the fuse box are tight. This must be looked at soon.", [
        "grip",
        "strands",
        "clamps-insulation",
      ]),
      unsure("We could not find out if a bad joint in the fuse box was put right. It must be looked at soon.", [
        "put-right",
      ]),
    ],
    none: "The wires in the fuse box are fixed well.",
  },
  remedies: [
    {
      words: "Remake the joint on sound metal and tighten it to the maker's torque.",
      changes: { grip: "tight", strands: "all", "clamps-insulation": "no" },
    },
    {
      words: "Give conductors that crowd a terminal one of their own.",
      changes: { "in-one-terminal": "as-made-for" },
    },
  ],
  examples: [
    {
      name: "neutral can be drawn out",
      facts: {
        grip: "loose",
        strands: "all",
        "clamps-insulation": false,
        "in-one-terminal": "as-made-for",
        "put-right": false,
      },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: loose connection",
    },
    {
      name: "the same tightened on the spot",
      facts: { grip: "loose", "put-right": true },
      possible: ["none"],
      source: "trade discussion: loose terminal tightened during the inspection",
    },
    {
      name: "the same classified as found",
      facts: { grip: "loose", "put-right": true },
      positions: { "found-or-left": "as-found" },
      possible: ["C2"],
      source: "trade discussion: loose terminal tightened during the inspection",
    },
    {
      name: "three conductors in a terminal made for two, all firm",
      facts: {
        grip: "tight",
        strands: "all",
        "clamps-insulation": false,
        "in-one-terminal": "too-many",
        "put-right": false,
      },
      possible: ["C3"],
      source: "trade practice: against the maker's instructions, holding",
    },
    {
      name: "board could not be made dead",
      facts: {
        grip: { notKnown: "limited", reason: "the board could not be made dead" },
        strands: "all",
        "clamps-insulation": false,
        "in-one-terminal": "as-made-for",
        "put-right": false,
      },
      possible: ["none", "C3", "C2"],
      classification: "FI",
      source: "union over what a screwdriver would show",
    },
    {
      name: "not tried",
      facts: { strands: "all", "clamps-insulation": false, "in-one-terminal": "as-made-for", "put-right": false },
      possible: ["none", "C3", "C2"],
      missing: ["grip"],
      source: "union over what a screwdriver would show",
    },
  ],
});
