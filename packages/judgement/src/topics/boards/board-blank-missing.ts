import { all, any, held, is, NEVER, no, not, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";
import { ACCESS } from "./facts.ts";

/** A gap in the front of a board: a missing blank, a knocked-out entry, a device left out. */
export const boardBlankMissing = topic({
  id: "board-blank-missing",
  title: "Gap or missing blank in a board",
  group: "boards",
  items: ["boards.enclosure"],
  facts: {
    "finger-reaches-live": yesNo({
      asks: "Through the gap, does the jointed test finger (12 mm × 80 mm) reach live metal?",
      effort: "glance",
      yes: "a finger put through the gap reaches live metal",
      no: "a finger put through the gap does not reach live metal",
      worse: "yes",
      worked: { by: "opening-access", met: "no", notMet: "yes" },
    }),
    gap: ranked({
      asks: "How large is the gap, and where is the live metal behind it?",
      effort: "glance",
      values: {
        tight: "the gap does not let a 12.5 mm ball in",
        "out-of-line": "the gap is small, and live metal lies well out of line",
        "in-line": "the gap lets a 12.5 mm ball in, and only depth or a shroud keeps a thin object off live metal",
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
          because: "only people who know of the danger get that far, 416.2.4 and the note on access",
        },
        "does-not-count": {
          words: "live metal within a finger's reach counts as touchable, lock or not",
          because: "those who open the cupboard are then within reach with nothing between",
        },
      },
    },
  },
  paths: [
    {
      id: "touch",
      hazard: "contact-with-live-parts",
      route: "somebody touches live metal through the gap",
      exists: not(is("access", "locked-off")),
      layers: [
        {
          id: "enclosure",
          provision: "barrier-or-enclosure",
          words: "the enclosure of the board",
          gone: yes("finger-reaches-live"),
          sound: all(no("finger-reaches-live"), is("gap", "tight", "out-of-line")),
          regulations: ["416.2.1"],
        },
        {
          id: "lock",
          provision: "restricted-access",
          words: "a lock that keeps ordinary persons away",
          gone: any(is("access", "key-about", "anyone"), held("locked-board", "does-not-count")),
          sound: NEVER,
          regulations: ["416.2.4"],
        },
      ],
    },
  ],
  departures: [
    {
      when: any(yes("finger-reaches-live"), is("gap", "out-of-line", "in-line")),
      words: "the enclosure does not give IP2X or IPXXB",
      regulations: ["416.2.1"],
    },
  ],
  dangers: [
    {
      id: "live-metal",
      least: "C2",
      when: yes("finger-reaches-live"),
      words:
        "live metal can be touched with the board as it stands; a lock or a switch that is off is one event from danger",
      regulations: ["416.1", "416.2.1"],
    },
  ],
  client: {
    C1: "There is a hole in the fuse box. A finger can touch live metal through it. Keep away until it is covered.",
    C2: [
      says(
        "There is a hole in the fuse box. Something pushed in could touch live metal. It needs a cover soon.",
        all(no("finger-reaches-live"), is("gap", "in-line")),
      ),
      says(
        "A finger can touch live metal through a hole in the fuse box. The box is out of use and locked. It needs a cover soon, before it is used again.",
        all(yes("finger-reaches-live"), is("access", "locked-off")),
      ),
      says(
        "There is a hole in the fuse box. A finger can touch live metal through it. A lock keeps people away. It needs a cover soon.",
        yes("finger-reaches-live"),
      ),
    ],
    C3: [
      says(
        "There is a small gap in the fuse box. It is not a danger now. A cover would make it safer.",
        all(no("finger-reaches-live"), is("gap", "out-of-line")),
      ),
      says(
        "There is a hole in the fuse box. It is out of use and locked. The hole needs a cover before it is used again.",
        is("access", "locked-off"),
      ),
      says(
        "There is a gap in the fuse box. It stands behind a lock. A cover would make it safer.",
        is("access", "skilled-only"),
      ),
    ],
    FI: [
      unsure(
        "There is a hole in the fuse box. We could not find out how close live metal is. It must be looked at soon.",
        ["finger-reaches-live"],
        is("gap", "out-of-line", "in-line"),
      ),
      unsure(
        "There is a hole in the fuse box. We could not find out who can get to it. It must be looked at soon.",
        ["access"],
        any(yes("finger-reaches-live"), is("gap", "in-line")),
      ),
      unsure("We could not find out if a gap in the fuse box is safe. It must be looked at soon.", [
        "finger-reaches-live",
        "gap",
      ]),
    ],
    none: "The fuse box is closed well enough.",
  },
  remedies: [
    {
      words: "Fit blanks of the board's own system to every open way.",
      changes: { "finger-reaches-live": "no", gap: "tight" },
    },
    {
      words: "Until blanks are fitted, close the gap with a rigid piece that needs a tool to remove.",
      changes: { "finger-reaches-live": "no", gap: "tight" },
    },
  ],
  examples: [
    {
      name: "one blank missing, busbar 25 mm behind, hallway",
      facts: { "finger-reaches-live": true, gap: "in-line", access: "anyone" },
      possible: ["C1"],
      classification: "C1",
      source: "trade practice: nothing stands between a finger and live metal",
    },
    {
      name: "stub shrouded, a ball enters",
      facts: { "finger-reaches-live": false, gap: "in-line", access: "anyone" },
      possible: ["C2"],
      source: "trade practice: below IP2X, contact by a thin object",
    },
    {
      name: "reach not tried",
      facts: { gap: "in-line", access: "anyone" },
      possible: ["C2", "C1"],
      missing: ["finger-reaches-live"],
      source: "union over what the test would show",
    },
    {
      name: "locked cupboard of maintenance staff",
      facts: { "finger-reaches-live": true, gap: "in-line", access: "skilled-only" },
      possible: ["C2"],
      source: "trade discussion of a locked electrical cupboard",
    },
    {
      name: "the same where the lock is held not to count",
      facts: { "finger-reaches-live": true, gap: "in-line", access: "skilled-only" },
      positions: { "locked-board": "does-not-count" },
      possible: ["C1"],
      source: "trade discussion of a locked electrical cupboard",
    },
  ],
});
