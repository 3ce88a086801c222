import { all, any, held, is, no, oneKind, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** Core colours that say something else than what the core is. */
export const conductorColours = topic({
  id: "conductor-colours",
  title: "Conductor colours wrong or mixed",
  group: "identification",
  items: ["circuits.identification", "notices.diagram"],
  facts: {
    colours: oneKind({
      asks: "What is the matter with the colours?",
      effort: "opened",
      values: {
        "one-set": "one set of colours is used throughout, old or new",
        "old-and-new": "old and new colours are both in use, each in its own meaning",
        "line-looks-neutral": "a core coloured as a neutral is a line or a switched line",
        "neutral-looks-line": "a core coloured as a line is a neutral, or phases are swapped in colour",
        "live-looks-earth": "a green, yellow or green-and-yellow core is live",
      },
    }),
    marked: yesNo({
      asks: "Are the cores marked with what they are at every end, or in words where colours are mixed?",
      effort: "opened",
      yes: "cores are marked at their ends with what they are",
      no: "cores are not marked at their ends with what they are",
      worse: "no",
    }),
    notice: yesNo({
      asks: "Is there a notice of two sets of colours at the board, or is it a home whose owner has been told in writing?",
      effort: "glance",
      yes: "a notice, or papers in a home, tell of two sets of colours",
      no: "nothing tells of two sets of colours",
      worse: "no",
    }),
  },
  contested: {
    "switch-line": {
      question: "Is an unmarked switched line at a light switch worth recording?",
      positions: {
        record: {
          words: "it is worth recording as an improvement",
          because: "514.3 and 514.4 give each colour a meaning, and a marker costs nothing",
        },
        "leave-it": {
          words: "it is not recorded",
          because: "whoever opens a switch knows that both cores are live, and nobody else sees them",
        },
      },
    },
  },
  paths: [
    {
      id: "taken-for-earth",
      hazard: "contact-with-live-parts",
      route: "somebody takes the live core for an earth, and joins it to metal or touches it",
      exists: all(is("colours", "live-looks-earth"), no("marked")),
      layers: [oneEventAway("proving-dead", "information", "the practice of proving dead before work", ["514.4.2"])],
    },
  ],
  departures: [
    {
      when: all(is("colours", "old-and-new"), no("notice"), no("marked")),
      words: "nothing tells of the two sets of colours",
      regulations: ["514.14.1"],
    },
    {
      when: any(
        all(is("colours", "line-looks-neutral"), no("marked"), held("switch-line", "record")),
        all(is("colours", "neutral-looks-line"), no("marked")),
      ),
      words: "a core does not show what it is",
      regulations: ["514.3.1", "514.4.1"],
    },
    {
      when: is("colours", "live-looks-earth"),
      words: "the colours of the earth are used for a live core",
      regulations: ["514.4.2"],
    },
  ],
  client: {
    C2: "A live wire has the colours of an earth wire. Someone working on it could get a shock. Have it changed soon.",
    C3: [
      says(
        "A live wire has the colours of an earth wire. It is marked at its ends. Changing it would be better.",
        is("colours", "live-looks-earth"),
      ),
      "Some wires are not marked with what they are. It is not a danger to you. They should be marked.",
    ],
    FI: unsure("We could not find out if a wire with earth colours is live. This must be looked at soon.", [
      "colours",
      "marked",
    ]),
    none: says("The wires show what they are.", any(yes("marked"), is("colours", "one-set", "old-and-new"))),
  },
  remedies: [
    { words: "Mark every end of the core with what it is.", changes: { marked: "yes" } },
    { words: "Fix the notice of two sets of colours at the board.", changes: { notice: "yes" } },
    { words: "Use another core or cable for the live conductor.", changes: { colours: "one-set" } },
  ],
  examples: [
    {
      name: "old and new colours, no notice",
      facts: { colours: "old-and-new", marked: false, notice: false },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: notices and marking missing",
    },
    {
      name: "green-and-yellow core as switched line, not marked",
      facts: { colours: "live-looks-earth", marked: false },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: the next person takes it for an earth",
    },
    {
      name: "green-and-yellow core as switched line, marked brown",
      facts: { colours: "live-looks-earth", marked: true },
      possible: ["C3"],
      source: "regulation: the two colours are kept for earth alone",
    },
    {
      name: "blue switched line not marked",
      facts: { colours: "line-looks-neutral", marked: false },
      possible: ["C3"],
      source: "trade practice: marking missing",
    },
    {
      name: "the same, held not worth recording",
      facts: { colours: "line-looks-neutral", marked: false },
      positions: { "switch-line": "leave-it" },
      possible: ["none"],
      source: "trade discussion of switched lines",
    },
    {
      name: "old colours throughout",
      facts: { colours: "one-set" },
      possible: ["none"],
      classification: "none",
      source: "regulation: not retrospective",
    },
    {
      name: "ends not opened",
      facts: { colours: "live-looks-earth" },
      possible: ["C3", "C2"],
      missing: ["marked"],
      source: "union over what opening would show",
    },
  ],
});
