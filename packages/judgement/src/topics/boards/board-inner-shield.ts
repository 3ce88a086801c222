import { all, is, NEVER, oneKind, ranked, unsure, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** A shield inside a board missing, so that live metal is open as soon as the cover is off or the door is open. */
export const boardInnerShield = topic({
  id: "board-inner-shield",
  title: "Inner shield of a board missing",
  group: "boards",
  items: ["boards.enclosure"],
  facts: {
    "live-behind": yesNo({
      asks: "With the outer cover or door open, does the test finger touch live metal that a shield was made to cover?",
      effort: "opened",
      yes: "live metal that a shield was made to cover can be touched behind the outer cover",
      no: "live metal behind the outer cover is shielded, or was never meant to be",
      worse: "yes",
    }),
    outer: ranked({
      asks: "How is the outer cover or door opened?",
      effort: "glance",
      values: {
        tool: "the outer cover wants a tool or key to open",
        "by-hand": "the outer cover or door opens by hand",
      },
    }),
    "opened-by": oneKind({
      asks: "Who comes to it and can open it, as to reset a device or set a timer?",
      effort: "glance",
      values: {
        "skilled-only": "only skilled or instructed persons come to it and open it",
        ordinary: "ordinary persons open it in use, or can come to it and open it",
      },
    }),
  },
  contested: {},
  paths: [
    {
      id: "touch-behind",
      hazard: "contact-with-live-parts",
      route: "somebody opens the outer cover and touches live metal behind it",
      exists: yes("live-behind"),
      layers: [
        {
          id: "outer",
          provision: "barrier-or-enclosure",
          words: "an outer cover or door that wants a tool or key",
          gone: is("outer", "by-hand"),
          sound: all(is("outer", "tool"), is("opened-by", "skilled-only")),
          regulations: ["416.2.4"],
        },
        {
          id: "skilled",
          provision: "restricted-access",
          words: "that only people who know the danger open it",
          gone: is("opened-by", "ordinary"),
          sound: NEVER,
          regulations: ["416.2.4"],
        },
      ],
    },
  ],
  departures: [
    {
      when: yes("live-behind"),
      words: "a shield over live parts that came with the board is missing",
      regulations: ["134.1.1", "416.2.4"],
    },
  ],
  client: {
    C1: "Live metal can be touched when the door of the fuse box is open. Keep it shut. Make it safe today.",
    C2: "A guard inside the fuse box is missing. Opening it could give a shock. Replace the guard soon.",
    C3: "A guard inside the fuse box is missing. Only an electrician gets that far. It should be put back.",
    FI: [
      unsure("We could not find out if a guard inside the fuse box is missing. It must be looked at soon.", [
        "live-behind",
      ]),
      unsure(
        "A guard inside the fuse box is missing. We could not find out who opens the box. It must be looked at soon.",
        ["outer", "opened-by"],
        yes("live-behind"),
      ),
    ],
    none: "No live part in the fuse box lacks its guard.",
  },
  remedies: [
    { words: "Fit the shield that belongs to the board.", changes: { "live-behind": "no" } },
    { words: "Fit a lock or screws to the outer door.", changes: { outer: "tool" } },
  ],
  examples: [
    {
      name: "terminal shield gone behind a screwed cover",
      facts: { "live-behind": true, outer: "tool", "opened-by": "skilled-only" },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: not accessible in use",
    },
    {
      name: "door opens by hand to reset devices, busbar open behind",
      facts: { "live-behind": true, outer: "by-hand", "opened-by": "ordinary" },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: live parts within reach in use",
    },
    {
      name: "door by hand, plant room staff only",
      facts: { "live-behind": true, outer: "by-hand", "opened-by": "skilled-only" },
      possible: ["C2"],
      source: "trade discussion of a locked electrical cupboard",
    },
    {
      name: "not opened",
      facts: { outer: "tool", "opened-by": "ordinary" },
      possible: ["none", "C2"],
      missing: ["live-behind"],
      source: "union over what is behind",
    },
  ],
});
