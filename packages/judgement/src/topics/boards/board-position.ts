import { all, any, held, is, NEVER, no, not, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Where a board hangs: near water, out of reach, without room to work. */
export const boardPosition = topic({
  id: "board-position",
  title: "Position of a board",
  group: "boards",
  items: ["boards.access"],
  facts: {
    water: ranked({
      asks: "Can water or steam reach the board?",
      effort: "glance",
      values: {
        dry: "no water or steam reaches the board",
        "near-sink": "the board hangs beside a sink or the like, where a splash would be a rare thing",
        "wet-place": "the board hangs over a sink or bath, in a shower room, or where water drips",
      },
    }),
    "keeps-water-out": yesNo({
      asks: "Does its enclosure keep out the water of that place?",
      effort: "glance",
      yes: "the enclosure keeps out the water to be expected",
      no: "the enclosure does not keep water out",
      worse: "no",
    }),
    reach: ranked({
      asks: "How does the user get to the switches?",
      effort: "glance",
      values: {
        free: "the user gets to the switches at once",
        awkward: "the user gets to the switches from steps, or past things that stand in the way",
        barred: "the user cannot get to the switches without tools, a key they lack, or clearing out",
      },
    }),
    "other-switch": yesNo({
      asks: "Is there a main switch elsewhere that the user gets to at once?",
      effort: "glance",
      yes: "the user gets at once to a main switch elsewhere",
      no: "there is no main switch elsewhere that the user gets to",
      worse: "no",
    }),
    "room-to-work": yesNo({
      asks: "Is there room and footing to work at it and take the cover off?",
      effort: "glance",
      yes: "there is room and footing to work at the board",
      no: "there is no room or footing to work at the board",
      worse: "no",
    }),
  },
  contested: {
    barred: {
      question: "What weight has a board that its user cannot get to?",
      positions: {
        "switching-off-counts": {
          words: "it is potentially dangerous where nothing else switches off",
          because: "in an accident or a fire nobody can make the place dead in time",
        },
        "devices-do-it": {
          words: "it is an improvement to advise",
          because: "the devices clear faults by themselves, and switching off by hand is seldom needed",
        },
      },
    },
  },
  paths: [
    {
      id: "water-in",
      hazard: "contact-with-live-parts",
      route: "water gets into the board, and its case or water on it becomes live",
      exists: is("water", "wet-place"),
      layers: [
        {
          id: "enclosure",
          provision: "barrier-or-enclosure",
          words: "an enclosure that keeps out the water of that place",
          gone: no("keeps-water-out"),
          sound: yes("keeps-water-out"),
          regulations: ["512.2.1", "522.3.1"],
        },
        oneEventAway("not-wet-yet", "surroundings", "that no water has got in so far", ["522.3.1"]),
      ],
    },
    {
      id: "not-switched-off",
      hazard: "contact-with-live-parts",
      route: "somebody is held by a live part, and nobody can switch off in time",
      exists: is("reach", "barred"),
      layers: [
        oneEventAway("no-contact", "barrier-or-enclosure", "enclosures and insulation, so that nobody is held", [
          "416.2.1",
        ]),
        {
          id: "switch-at-hand",
          provision: "isolation",
          words: "a way of cutting off in time: a switch at hand, or the devices themselves",
          gone: all(no("other-switch"), held("barred", "switching-off-counts")),
          sound: NEVER,
          regulations: ["462.1.201", "132.12"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(
        all(not(is("water", "dry")), no("keeps-water-out")),
        is("reach", "awkward", "barred"),
        no("room-to-work"),
      ),
      words: "the board is not where it can be reached, worked at and kept dry",
      regulations: ["132.12", "513.1", "512.2.1"],
    },
  ],
  client: {
    C2: [
      says(
        "Water may get into the fuse box. It could give a shock. Have this put right soon.",
        all(is("water", "wet-place"), no("keeps-water-out")),
      ),
      says(
        "The fuse box is hard to get to. No one could turn it off in time. Have this put right soon.",
        is("reach", "barred"),
      ),
    ],
    C3: "The fuse box is in an awkward place. It is not a danger now. A better place is advised.",
    FI: [
      unsure("We could not find out if water may get into the fuse box. This must be looked at soon.", [
        "water",
        "keeps-water-out",
      ]),
      unsure("We could not find out if the power can be turned off in time. This must be looked at soon.", [
        "reach",
        "other-switch",
      ]),
    ],
    none: "The fuse box is in a good place.",
  },
  remedies: [
    { words: "Clear what stands in the way, and leave a key where the user finds it.", changes: { reach: "free" } },
    { words: "Fit a main switch that the user gets to.", changes: { "other-switch": "yes" } },
    {
      words: "Put the board into an enclosure that keeps the water out.",
      changes: { "keeps-water-out": "yes" },
    },
    {
      words: "Move the board.",
      changes: { water: "dry", reach: "free", "room-to-work": "yes" },
    },
  ],
  examples: [
    {
      name: "in a shower room, ordinary enclosure",
      facts: { water: "wet-place", "keeps-water-out": false, reach: "free", "room-to-work": true },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: water entry to be expected",
    },
    {
      name: "beside the kitchen sink",
      facts: { water: "near-sink", "keeps-water-out": false, reach: "free", "room-to-work": true },
      possible: ["C3"],
      source: "trade practice",
    },
    {
      name: "in a cupboard behind boxes",
      facts: { water: "dry", reach: "awkward", "room-to-work": false },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice",
    },
    {
      name: "behind a neighbour's locked door",
      facts: { water: "dry", reach: "barred", "other-switch": false, "room-to-work": true },
      possible: ["C2"],
      source: "trade practice: nobody can switch off",
    },
    {
      name: "the same held to be for improvement",
      facts: { water: "dry", reach: "barred", "other-switch": false, "room-to-work": true },
      positions: { barred: "devices-do-it" },
      possible: ["C3"],
      source: "trade discussion: boards out of reach",
    },
    {
      name: "over a bath, enclosure not identified",
      facts: { water: "wet-place", reach: "free", "room-to-work": true },
      possible: ["none", "C2"],
      missing: ["keeps-water-out"],
      source: "union over the enclosure",
    },
  ],
});
