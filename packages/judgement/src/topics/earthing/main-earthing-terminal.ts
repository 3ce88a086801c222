import { ALWAYS, any, is, NEVER, no, ranked, unsure, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** The main earthing terminal: whether there is one, tight, in reach, and fit to be opened for tests. */
export const mainEarthingTerminal = topic({
  id: "main-earthing-terminal",
  title: "Main earthing terminal missing, loose or out of reach",
  group: "earthing",
  items: ["earthing.main-terminal", "earthing.bonding-connections"],
  facts: {
    terminal: ranked({
      asks: "Where do earthing conductor, protective conductors and main bonding come together?",
      effort: "opened",
      values: {
        "one-terminal": "they come together at one terminal or bar",
        scattered: "they are joined in several places, each lasting and tight",
        twisted: "they are twisted together, taped, or held by something not made for it",
      },
    }),
    tight: yesNo({
      asks: "Are all its connections tight, and is the link in?",
      effort: "opened",
      yes: "all connections are tight, and the link is in",
      no: "a connection is loose, or the link is open",
      worse: "no",
    }),
    "opens-for-test": yesNo({
      asks: "Can the earthing conductor be taken off for a test, only with a tool?",
      effort: "glance",
      yes: "the earthing conductor can be taken off for a test, only with a tool",
      no: "the earthing conductor cannot be taken off alone, or without a tool",
      worse: "no",
    }),
    reached: yesNo({
      asks: "Can it be got to, and is it labelled where it stands apart from the board?",
      effort: "glance",
      yes: "it can be got to, and is labelled or inside the board",
      no: "it cannot be got to, or has no label",
      worse: "no",
    }),
  },
  contested: {},
  paths: [
    {
      id: "metal-stays-live",
      hazard: "shock-under-fault",
      route: "metal becomes live through a fault, the joint at the terminal is open, and somebody touches the metal",
      exists: ALWAYS,
      layers: [
        oneEventAway("basic", "insulation", "the insulation between live parts and earthed metal", ["416.1"]),
        {
          id: "joint",
          provision: "fault-protection",
          words: "joints that connect every protective conductor to the means of earthing",
          gone: any(no("tight"), is("terminal", "twisted")),
          sound: NEVER,
          regulations: ["411.3.1.1", "526.1", "542.4.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: is("terminal", "scattered", "twisted"),
      words: "there is no main earthing terminal",
      regulations: ["542.4.1"],
    },
    {
      when: no("opens-for-test"),
      words: "the earthing conductor cannot be taken off for a test with a tool",
      regulations: ["542.4.2"],
    },
    {
      when: no("reached"),
      words: "the terminal is not accessible or not labelled",
      regulations: ["514.13.1", "542.4.2", "543.3.2"],
    },
  ],
  client: {
    C2: "The main earth joint is loose or badly made. If a fault comes, metal could stay live. Have it put right today.",
    C3: "The main earth joint works. It should be easy to reach, test and tell apart.",
    FI: unsure("We could not get to the main earth joint. It must be looked at soon.", ["terminal", "tight"]),
    none: "The main earth joint is in order.",
  },
  remedies: [
    { words: "Tighten all connections, close the link and measure the loop.", changes: { tight: "yes" } },
    { words: "Label the terminal and clear the way to it.", changes: { reached: "yes" } },
    {
      words: "Fit a main earthing terminal with a link that opens with a tool, and bring all conductors to it.",
      changes: { terminal: "one-terminal", tight: "yes", "opens-for-test": "yes" },
    },
  ],
  examples: [
    {
      name: "link left open after a test",
      facts: { terminal: "one-terminal", tight: false, "opens-for-test": true, reached: true },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: fault protection absent",
    },
    {
      name: "earths twisted together and taped",
      facts: { terminal: "twisted" },
      possible: ["C2"],
      source: "regulation 526.1",
    },
    {
      name: "earthing conductor soldered to the others",
      facts: { terminal: "one-terminal", tight: true, "opens-for-test": false, reached: true },
      possible: ["C3"],
      source: "regulation 542.4.2",
    },
    {
      name: "no label",
      facts: { terminal: "one-terminal", tight: true, "opens-for-test": true, reached: false },
      possible: ["C3"],
      source: "regulation 514.13.1",
    },
    {
      name: "behind a fitted cupboard",
      facts: {
        reached: false,
        "opens-for-test": false,
        tight: { notKnown: "limited", reason: "the cupboard was not to be taken down" },
        terminal: { notKnown: "limited", reason: "the cupboard was not to be taken down" },
      },
      possible: ["C3", "C2"],
      classification: "FI",
      source: "union over the joint",
    },
    {
      name: "in order but for tightness, not tried yet",
      facts: { terminal: "one-terminal", "opens-for-test": true, reached: true },
      possible: ["none", "C2"],
      missing: ["tight"],
      source: "union over the connections",
    },
  ],
});
