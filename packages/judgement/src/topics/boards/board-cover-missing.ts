import { all, any, held, is, NEVER, no, not, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";
import { ACCESS } from "./facts.ts";

/** The cover of a board off, broken, or held so that it comes off by hand. */
export const boardCoverMissing = topic({
  id: "board-cover-missing",
  title: "Cover of a board missing or broken",
  group: "boards",
  items: ["boards.enclosure"],
  facts: {
    "live-touchable": yesNo({
      asks: "With the cover as you found it, does the jointed test finger touch live metal?",
      effort: "glance",
      yes: "a finger touches live metal with the cover as found",
      no: "a finger does not touch live metal with the cover as found",
      worse: "yes",
    }),
    cover: ranked({
      asks: "In what state is the cover?",
      effort: "glance",
      values: {
        sound: "the cover is whole and needs a tool to take off",
        slight: "the cover is firm, with no more than a hairline crack, a lost door or one lost screw",
        weak: "the cover is cracked through, taped on, or comes off by hand",
        off: "the cover or a piece of it is missing",
      },
    }),
    access: ACCESS,
  },
  contested: {
    "locked-board": {
      question: "Does a lock held by skilled or instructed persons count as a layer between a person and live metal?",
      positions: {
        counts: {
          words: "a lock kept by skilled or instructed persons is a layer left",
          because: "only people who know of the danger get that far",
        },
        "does-not-count": {
          words: "live metal that can be touched counts as such, lock or not",
          because: "those who open the room for a meter or a mop are then within reach with nothing between",
        },
      },
    },
  },
  paths: [
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "somebody touches live metal where the cover should be",
      exists: not(is("access", "locked-off")),
      layers: [
        {
          id: "cover",
          provision: "barrier-or-enclosure",
          words: "the cover of the board",
          gone: yes("live-touchable"),
          sound: all(no("live-touchable"), is("cover", "sound", "slight")),
          regulations: ["416.2.1", "416.2.3"],
        },
        {
          id: "lock",
          provision: "restricted-access",
          words: "a lock that keeps ordinary persons away",
          gone: any(not(is("access", "skilled-only")), held("locked-board", "does-not-count")),
          sound: NEVER,
          regulations: ["416.2.4"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(yes("live-touchable"), not(is("cover", "sound"))),
      words: "the cover is not whole, firmly held and removable only by tool",
      regulations: ["416.2.3", "416.2.4"],
    },
  ],
  dangers: [
    {
      id: "live-metal",
      least: "C2",
      when: yes("live-touchable"),
      words:
        "live metal can be touched with the board as it stands; a lock or a switch that is off is one event from danger",
      regulations: ["416.1", "416.2.1"],
    },
  ],
  client: {
    C1: [
      says(
        "The fuse box has lost its cover. Live metal can be touched. Keep away. It must be made safe today.",
        is("cover", "off"),
      ),
      "Live metal can be touched at the fuse box. Keep away. It must be made safe today.",
    ],
    C2: [
      says(
        "The cover of the fuse box is weak or broken. If it comes off, live metal can be touched. Fix it soon.",
        all(no("live-touchable"), is("cover", "weak")),
      ),
      says(
        "The cover of the fuse box or a piece of it is missing. You could get a shock from what is behind it. Fix it soon.",
        all(no("live-touchable"), is("cover", "off")),
      ),
      says(
        "Live metal can be touched at the fuse box. It is out of use and locked. Have it put right soon, before it is used again.",
        all(yes("live-touchable"), is("access", "locked-off")),
      ),
      says("Live metal can be touched at the fuse box. A lock keeps people away. Fix it soon.", yes("live-touchable")),
    ],
    C3: [
      says(
        "The cover of the fuse box has slight damage. It still keeps you safe. A repair would be good.",
        all(no("live-touchable"), is("cover", "slight")),
      ),
      says(
        "The cover of the fuse box is not as it should be. The box is out of use and locked. Have it put right before it is used again.",
        is("access", "locked-off"),
      ),
      says(
        "The cover of the fuse box is not whole. It stands behind a lock. A repair would be good.",
        is("access", "skilled-only"),
      ),
    ],
    FI: [
      unsure("We could not find out if live metal can be touched in the fuse box. This must be looked at soon.", [
        "live-touchable",
      ]),
      unsure("We could not find out how good the cover of the fuse box is. This must be looked at soon.", ["cover"]),
      unsure("We could not find out who can get to the fuse box. Its cover must be looked at soon.", ["access"]),
    ],
    none: "The cover of the fuse box is sound.",
  },
  remedies: [
    {
      words: "Refit the cover with screws of the right kind, so that a tool is needed to take it off.",
      changes: { "live-touchable": "no", cover: "sound" },
    },
    {
      words: "Where no cover of the same pattern can be had, replace the enclosure.",
      changes: { "live-touchable": "no", cover: "sound" },
    },
  ],
  examples: [
    {
      name: "hallway, in service, cover off, busbar open",
      facts: { "live-touchable": true, cover: "off", access: "anyone" },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: bare live metal within anybody's reach",
    },
    {
      name: "cover taped on",
      facts: { "live-touchable": false, cover: "weak", access: "anyone" },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: further breakage opens the way to live parts",
    },
    {
      name: "one screw lost, tight all round",
      facts: { "live-touchable": false, cover: "slight", access: "anyone" },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice",
    },
    {
      name: "cover off in a room that only maintenance staff open",
      facts: { "live-touchable": true, cover: "off", access: "skilled-only" },
      possible: ["C2"],
      source: "trade discussion of a locked electrical cupboard",
    },
    {
      name: "the same where the lock is held not to count",
      facts: { "live-touchable": true, cover: "off", access: "skilled-only" },
      positions: { "locked-board": "does-not-count" },
      possible: ["C1"],
      source: "trade discussion of a locked electrical cupboard",
    },
    {
      name: "a piece is out of the cover, nothing more said",
      facts: { cover: "off", access: "anyone" },
      possible: ["C2", "C1"],
      missing: ["live-touchable"],
      source: "union over what the finger would show",
    },
  ],
});
