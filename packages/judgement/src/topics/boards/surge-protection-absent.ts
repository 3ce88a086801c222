import { all, any, held, is, oneKind, ranked, says, yes, yesNo } from "@good-grounds/core";
import { topic } from "../topic.ts";

/** Surge protection absent, or fitted and spent. */
export const surgeProtectionAbsent = topic({
  id: "surge-protection-absent",
  title: "Surge protection absent or spent",
  group: "boards",
  items: ["boards.surge"],
  facts: {
    state: ranked({
      asks: "What does the surge protective device show?",
      effort: "glance",
      values: {
        working: "a surge protective device is fitted and its indicator shows it ready",
        declined: "no surge protective device is fitted, and the owner has declined it in writing",
        none: "no surge protective device is fitted",
        spent: "a surge protective device is fitted and its indicator shows it spent",
      },
    }),
    "what-hangs-on-it": oneKind({
      asks: "What could an overvoltage do here?",
      effort: "glance",
      values: {
        goods: "an overvoltage could spoil equipment of ordinary value",
        more: "an overvoltage could hurt people, put out a safety service, or do great loss",
      },
    }),
    "asked-when-made": yesNo({
      asks: "Was the installation made or the board changed under an edition that asked for it?",
      effort: "opened",
      yes: "the board was fitted under an edition that asked for it",
      no: "the board is older than the requirement",
      worse: "yes",
    }),
  },
  contested: {
    "older-board": {
      question: "Is its absence from an older board worth an entry?",
      positions: {
        improvement: {
          words: "it is an improvement to advise",
          because: "today's edition is the yardstick and asks for it unless the owner declines",
        },
        "no-entry": {
          words: "it is no matter for the report",
          because: "nobody is put in danger, and the board met what was asked when it was fitted",
        },
      },
    },
  },
  paths: [],
  departures: [
    {
      when: is("state", "spent"),
      words: "the surge protective device that is fitted is spent",
      regulations: ["534.4"],
    },
    {
      when: all(
        is("state", "declined", "none"),
        any(yes("asked-when-made"), held("older-board", "improvement")),
        any(is("state", "none"), is("what-hangs-on-it", "more")),
      ),
      words: "protection against overvoltages is absent where today's edition asks for it",
      regulations: ["443.4"],
    },
  ],
  client: {
    C3: "There is no working guard against power surges. A surge could break your devices. Adding one is advised.",
    none: [
      says("The owner chose not to have a guard against power surges.", is("state", "declined")),
      "The guard against power surges works, or is not asked for here.",
    ],
  },
  remedies: [{ words: "Fit a surge protective device, or change the spent cartridge.", changes: { state: "working" } }],
  examples: [
    {
      name: "older board in a house, nothing declared",
      facts: { state: "none", "what-hangs-on-it": "goods", "asked-when-made": false },
      possible: ["C3"],
      classification: "C3",
      source: "trade discussion: no surge protection in an older house",
    },
    {
      name: "the same held to be no entry",
      facts: { state: "none", "what-hangs-on-it": "goods", "asked-when-made": false },
      positions: { "older-board": "no-entry" },
      possible: ["none"],
      source: "trade discussion: no surge protection in an older house",
    },
    {
      name: "declined by the owner",
      facts: { state: "declined", "what-hangs-on-it": "goods" },
      possible: ["none"],
      source: "regulation 443.4",
    },
    {
      name: "indicator shows it spent",
      facts: { state: "spent" },
      possible: ["C3"],
      source: "trade practice: fitted and no longer working",
    },
    {
      name: "declined, what hangs on it not asked",
      facts: { state: "declined", "asked-when-made": true },
      possible: ["none", "C3"],
      missing: ["what-hangs-on-it"],
      source: "union over what hangs on it",
    },
  ],
});
