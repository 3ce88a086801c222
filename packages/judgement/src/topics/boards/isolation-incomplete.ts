import { all, any, held, NEVER, no, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A board that stays live in part when its main switch is off. */
export const isolationIncomplete = topic({
  id: "isolation-incomplete",
  title: "Board stays live in part when switched off",
  group: "boards",
  items: ["notices.isolation", "notices.other-sources", "boards.main-switch"],
  facts: {
    "second-feed": yesNo({
      asks: "With its main switch off, is anything in the board still live: a second supply, an off-peak feed, panels, a battery?",
      effort: "measured",
      yes: "something in the board stays live when its main switch is off",
      no: "nothing in the board but the incoming terminals stays live when its main switch is off",
      worse: "yes",
    }),
    "second-switch": yesNo({
      asks: "Is there a means of isolating that second feed?",
      effort: "glance",
      yes: "the second feed has a means of isolation",
      no: "the second feed has no means of isolation",
      worse: "no",
    }),
    notice: yesNo({
      asks: "Does a notice at the board tell of the second feed and where it is isolated?",
      effort: "glance",
      yes: "a notice at the board tells of the second feed",
      no: "no notice tells of the second feed",
      worse: "no",
    }),
    "plain-to-see": yesNo({
      asks: "Is the second switch beside the board and plain to see for what it is?",
      effort: "glance",
      yes: "the switch of the second feed is beside the board and plain to see",
      no: "the second feed is not to be seen from the board",
      worse: "no",
    }),
  },
  contested: {
    "missing-notice": {
      question: "What weight has a missing notice where the second feed is not plain to see?",
      positions: {
        "hidden-feed-counts": {
          words: "a hidden second feed without notice is potentially dangerous",
          because: "whoever switches off and opens the board has every reason to think it dead",
        },
        "notice-only": {
          words: "a missing notice is for improvement",
          because: "whoever opens a board must prove it dead before touching anything",
        },
      },
    },
  },
  paths: [
    {
      id: "thought-dead",
      hazard: "contact-with-live-parts",
      route: "somebody switches off, opens the board or equipment and touches what is still live",
      exists: yes("second-feed"),
      layers: [
        oneEventAway("enclosure", "barrier-or-enclosure", "the cover, which wants a tool to take off", ["416.2.4"]),
        {
          id: "isolation",
          provision: "isolation",
          words: "isolation of the second feed that one knows of",
          gone: any(
            no("second-switch"),
            all(no("notice"), no("plain-to-see"), held("missing-notice", "hidden-feed-counts")),
          ),
          sound: NEVER,
          regulations: ["462.1", "514.11.1", "514.15.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(yes("second-feed"), no("second-switch")),
      words: "a source has no means of isolation",
      regulations: ["462.1"],
    },
    {
      when: all(yes("second-feed"), no("notice")),
      words: "no notice tells that one switch does not make everything dead",
      regulations: ["514.11.1", "514.15.1"],
    },
  ],
  client: {
    C2: "Parts of the fuse box stay live when it is turned off. Someone could get a shock. Put this right soon.",
    C3: "A note is missing that more than one switch must be turned off. It should be put up.",
    FI: [
      unsure("We could not find out if the fuse box goes dead when turned off. It must be looked at soon.", [
        "second-feed",
      ]),
      unsure(
        "Parts of the fuse box stay live when it is turned off. We could not find out if people would know. It must be looked at soon.",
        ["second-switch", "notice", "plain-to-see"],
        yes("second-feed"),
      ),
    ],
    none: "The fuse box goes dead when it is turned off, or a note tells how.",
  },
  remedies: [
    {
      words: "Fix a notice at the board that names the second feed and where it is isolated.",
      changes: { notice: "yes" },
    },
    {
      words: "Fit a means of isolation for the second feed, with a notice at the board.",
      changes: { "second-switch": "yes", notice: "yes" },
    },
    {
      words: "Take the second feed out of the board and give it an enclosure of its own.",
      changes: { "second-feed": "no" },
    },
  ],
  examples: [
    {
      name: "battery without isolation, no label",
      facts: { "second-feed": true, "second-switch": false, notice: false },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: second source cannot be made dead",
    },
    {
      name: "fed from two sources, second one out of sight, no notice",
      facts: { "second-feed": true, "second-switch": true, notice: false, "plain-to-see": false },
      possible: ["C2"],
      source: "trade practice: whoever switches off is misled",
    },
    {
      name: "the same held to be a missing notice only",
      facts: { "second-feed": true, "second-switch": true, notice: false, "plain-to-see": false },
      positions: { "missing-notice": "notice-only" },
      possible: ["C3"],
      source: "trade practice: missing notices",
    },
    {
      name: "off-peak switch beside it, no notice",
      facts: { "second-feed": true, "second-switch": true, notice: false, "plain-to-see": true },
      possible: ["C3"],
      source: "trade practice: missing notices",
    },
    {
      name: "isolator and notice",
      facts: { "second-feed": true, "second-switch": true, notice: true },
      possible: ["none"],
      source: "regulation 514.15.1",
    },
    {
      name: "not proved with the switch off",
      facts: { "second-switch": false, notice: false },
      possible: ["none", "C2"],
      missing: ["second-feed"],
      source: "union over what stays live",
    },
  ],
});
