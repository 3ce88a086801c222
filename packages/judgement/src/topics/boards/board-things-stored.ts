import { all, is, NEVER, not, ranked, says, unsure } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** Things kept against or above a board. */
export const boardThingsStored = topic({
  id: "board-things-stored",
  title: "Things stored against a board",
  group: "boards",
  items: ["boards.access", "fire.escape-routes"],
  facts: {
    stored: ranked({
      asks: "What is kept at the board?",
      effort: "glance",
      values: {
        clear: "the space at the board is clear",
        "in-the-way": "things that do not burn easily stand in the way",
        burns: "paper, clothes, paint or the like lie against or under the board",
        explosive: "gas bottles, fuel or solvent stand at the board",
      },
    }),
    board: ranked({
      asks: "Is the board closed, and does it run cool?",
      effort: "glance",
      values: {
        sound: "the board is closed and shows no heat",
        faulty: "the board is open or broken, or shows marks of heat",
        "hot-now": "the board is too hot to hold, smells of burning or crackles now",
      },
    }),
  },
  contested: {},
  paths: [
    {
      id: "stored-burns",
      hazard: "burns-or-fire",
      route: "heat or an arc at the board sets what is kept there alight",
      exists: is("stored", "burns", "explosive"),
      layers: [
        {
          id: "cool",
          provision: "thermal-protection",
          words: "a board that stays cool and closed",
          gone: is("board", "hot-now"),
          sound: all(is("board", "sound"), not(is("stored", "explosive"))),
          regulations: ["421.1"],
        },
        {
          id: "nothing-to-burn",
          provision: "surroundings",
          words: "nothing near that catches fire",
          gone: is("stored", "burns", "explosive"),
          sound: NEVER,
          regulations: ["421.1", "422.3"],
        },
      ],
    },
  ],
  departures: [
    {
      when: not(is("stored", "clear")),
      words: "the board is not free to reach and clear of what could burn",
      regulations: ["132.12", "513.1"],
    },
  ],
  dangers: [
    {
      id: "hot-now",
      least: "C1",
      when: is("board", "hot-now"),
      words: "the board is too hot to hold, smells of burning or crackles now",
      regulations: ["421.1.1", "526.1"],
    },
    {
      id: "faulty",
      least: "C2",
      when: is("board", "faulty"),
      words: "the board is open or broken, or bears marks of heat",
      regulations: ["416.2.1", "526.1"],
    },
  ],
  client: {
    C1: [
      says(
        "The fuse box is very hot, crackles or smells of burning, and things near it can catch fire. Turn it off now. If there is smoke, get out and call for help.",
        is("stored", "burns", "explosive"),
      ),
      "The fuse box is very hot, crackles or smells of burning. Turn it off now. If there is smoke, get out and call for help.",
    ],
    C2: [
      says(
        "The fuse box is not sound, and things kept at it could catch fire. Clear the space now, and have the box put right soon.",
        all(is("board", "faulty"), is("stored", "burns", "explosive")),
      ),
      says(
        "The fuse box is open or broken, or has been hot. It could give a shock or start a fire. Have it put right soon.",
        is("board", "faulty"),
      ),
      "Things kept at the fuse box could catch fire. Clear them away now, and have the box looked at.",
    ],
    C3: "Things are kept at the fuse box. Keep the space clear, so that you can turn it off.",
    FI: [
      unsure(
        "Things are kept at the fuse box, and we could not see if it runs hot. Clear them. It must be looked at.",
        ["board"],
        is("stored", "burns", "explosive"),
      ),
      unsure("We could not find out if things kept at the fuse box could catch fire. It must be looked at.", [
        "stored",
      ]),
      unsure("We could not see if the fuse box is sound or runs hot. It must be looked at.", ["board"]),
    ],
    none: "The space at the fuse box is clear.",
  },
  remedies: [
    { words: "Clear the space, and say in the report that it is to stay clear.", changes: { stored: "clear" } },
    { words: "Close the board and put right what runs hot.", changes: { board: "sound" } },
  ],
  examples: [
    {
      name: "coats and boxes in the stair cupboard, board cool and closed",
      facts: { stored: "burns", board: "sound" },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice",
    },
    {
      name: "fuel cans under the board",
      facts: { stored: "explosive", board: "sound" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: one spark from an explosion",
    },
    {
      name: "boxes against a browned board",
      facts: { stored: "burns", board: "faulty" },
      possible: ["C2"],
      source: "trade practice: heat beside what burns",
    },
    {
      name: "board not looked into",
      facts: { stored: "burns" },
      possible: ["C3", "C2", "C1"],
      missing: ["board"],
      source: "union over what the open board would show",
    },
  ],
});
