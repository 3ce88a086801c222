import { all, is, NEVER, no, not, ranked, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";
import { HEAT } from "./facts.ts";

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
    heat: HEAT,
    "live-parts-open": yesNo({
      asks: "Is the board open or broken so that what falls in can bridge live parts?",
      effort: "glance",
      yes: "what falls in can bridge live parts",
      no: "the board is closed",
      worse: "yes",
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
          gone: is("heat", "active"),
          sound: all(is("heat", "none"), no("live-parts-open"), not(is("stored", "explosive"))),
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
    {
      id: "falls-in",
      hazard: "burns-or-fire",
      route: "a thing falls into the open board and bridges live parts",
      exists: all(not(is("stored", "clear")), yes("live-parts-open")),
      layers: [
        {
          id: "closed",
          provision: "barrier-or-enclosure",
          words: "a closed board",
          gone: yes("live-parts-open"),
          sound: NEVER,
          regulations: ["416.2.1"],
        },
        oneEventAway("clearing", "overcurrent-protection", "the device ahead, which clears a short circuit", ["434.1"]),
      ],
    },
    {
      id: "hot-board",
      hazard: "burns-or-fire",
      route: "a board that has run hot goes on heating",
      exists: not(is("heat", "none")),
      layers: [
        oneEventAway("case", "barrier-or-enclosure", "the case of the board", ["421.1"]),
        {
          id: "no-heat",
          provision: "thermal-protection",
          words: "parts that stay cool",
          gone: not(is("heat", "none")),
          sound: NEVER,
          regulations: ["526.1"],
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
  client: {
    C1: "The fuse box is burning hot, and things near it can catch fire. Clear them away and turn it off now.",
    C2: "Things kept at the fuse box could catch fire. Clear them away now, and have the box looked at.",
    C3: "Things are kept in front of the fuse box. Keep the space clear, so that you can turn it off.",
    FI: "Things are kept at the fuse box, and we could not see if it runs hot. Clear them. It must be looked at.",
    none: "The space at the fuse box is clear.",
  },
  remedies: [
    { words: "Clear the space, and say in the report that it is to stay clear.", changes: { stored: "clear" } },
    { words: "Close the board and put right what runs hot.", changes: { "live-parts-open": "no", heat: "none" } },
  ],
  examples: [
    {
      name: "coats and boxes in the stair cupboard, board cool and closed",
      facts: { stored: "burns", heat: "none", "live-parts-open": false },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice",
    },
    {
      name: "fuel cans under the board",
      facts: { stored: "explosive", heat: "none", "live-parts-open": false },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: one spark from an explosion",
    },
    {
      name: "boxes against a browned board",
      facts: { stored: "burns", heat: "marks", "live-parts-open": false },
      possible: ["C2"],
      source: "trade practice: heat beside what burns",
    },
    {
      name: "board not looked into",
      facts: { stored: "burns", "live-parts-open": false },
      possible: ["C3", "C2", "C1"],
      missing: ["heat"],
      source: "union over what the open board would show",
    },
  ],
});
