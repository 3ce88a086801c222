import { all, held, is, NEVER, oneKind, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A notice that a regulation asks for is not there. One notice an observation. */
export const noticeMissing = topic({
  id: "notice-missing",
  title: "Notice missing",
  group: "identification",
  items: [
    "notices.other-sources",
    "notices.isolation",
    "notices.voltage",
    "notices.inspection",
    "notices.rcd-test",
    "earthing.bonding-connections",
  ],
  facts: {
    which: oneKind({
      asks: "Which notice is it about?",
      effort: "glance",
      values: {
        "rcd-test": "it is about the notice to press the test button of the RCD",
        "next-inspection": "it is about the notice with the date of the next inspection",
        "earth-connection": "it is about the label at an earthing or bonding connection not to take it off",
        "mixed-colours": "it is about the notice of two sets of core colours",
        voltage: "it is about the warning of a voltage nobody would expect there",
        isolation: "it is about the notice of what else has to be switched off",
        "other-source": "it is about the warning of a second source of supply",
      },
    }),
    notice: ranked({
      asks: "Is it there, lasting and readable?",
      effort: "glance",
      values: {
        there: "the notice is there, lasting and readable",
        "not-asked-for": "no such notice is asked for here",
        "in-papers": "the notice is missing in a home whose owner has been given the same information in writing",
        missing: "the notice is missing or cannot be read",
      },
    }),
    "stays-live": yesNo({
      asks: "Does something stay live when the main switch is off, such as a UPS, a battery or a generator that runs alone?",
      effort: "opened",
      yes: "parts of the installation stay live when the main switch is off",
      no: "nothing stays live when the main switch is off",
      worse: "yes",
    }),
  },
  contested: {
    "missing-notice": {
      question: "What weight has a missing notice where something stays live when the main switch is off?",
      positions: {
        "hidden-feed-counts": {
          words: "a second feed that nobody is told of is potentially dangerous",
          because: "whoever switches off has every reason to think the installation dead",
        },
        "notice-only": {
          words: "a missing notice is for improvement",
          because: "whoever works on it must prove it dead before touching anything",
        },
      },
    },
  },
  paths: [
    {
      id: "works-on-live",
      hazard: "contact-with-live-parts",
      route: "somebody switches the main switch off, takes the installation for dead, and touches a live part",
      exists: all(is("notice", "in-papers", "missing"), is("which", "other-source", "isolation"), yes("stays-live")),
      layers: [
        oneEventAway("proving-dead", "information", "the practice of proving dead before work", [
          "514.15.1",
          "514.11.1",
        ]),
        {
          id: "told",
          provision: "information",
          words: "other ways of knowing about the second feed",
          gone: held("missing-notice", "hidden-feed-counts"),
          sound: NEVER,
          regulations: ["514.15.1", "514.11.1"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(
        is("notice", "in-papers", "missing"),
        is("which", "earth-connection", "voltage", "isolation", "other-source"),
      ),
      words: "a notice that is asked for is missing",
      regulations: ["514.13.1", "514.10.1", "514.11.1", "514.15.1"],
    },
    {
      when: all(is("notice", "missing"), is("which", "rcd-test", "next-inspection", "mixed-colours")),
      words: "a notice is missing, and nothing given to the owner replaces it",
      regulations: ["514.12.1", "514.12.2", "514.14.1"],
    },
  ],
  client: {
    C2: "Some parts stay live when the main switch is off, and no sign says so. Someone could get a shock. Fit the sign soon.",
    C3: "A safety sign is missing. It is not a danger now. A new sign should be put up.",
    FI: [
      unsure("We could not find out if all parts go off with the main switch. This must be looked at soon.", [
        "stays-live",
      ]),
      unsure("We could not find out if a safety sign is missing. This must be looked at soon.", ["notice", "which"]),
    ],
    none: [
      says("The safety signs are in place.", is("notice", "there")),
      says("No such safety sign is asked for here.", is("notice", "not-asked-for")),
      says("A safety sign is missing, but the owner has the facts in writing.", is("notice", "in-papers")),
    ],
  },
  remedies: [{ words: "Fix the notice.", changes: { notice: "there" } }],
  examples: [
    {
      name: "no label at the earth clamp",
      facts: { which: "earth-connection", notice: "missing" },
      possible: ["C3"],
      classification: "C3",
      source: "trade practice: notices missing",
    },
    {
      name: "no RCD test notice in a shop",
      facts: { which: "rcd-test", notice: "missing" },
      possible: ["C3"],
      source: "trade practice: notices missing",
    },
    {
      name: "no RCD test notice in a home whose owner was told in writing",
      facts: { which: "rcd-test", notice: "in-papers" },
      possible: ["none"],
      source: "regulation since the 2022 text, recalled",
    },
    {
      name: "battery keeps circuits live, no warning",
      facts: { which: "other-source", notice: "missing", "stays-live": true },
      possible: ["C2"],
      classification: "C2",
      source: "trade practice: a second source that nobody expects",
    },
    {
      name: "the same held to be a missing notice only",
      facts: { which: "other-source", notice: "missing", "stays-live": true },
      positions: { "missing-notice": "notice-only" },
      possible: ["C3"],
      source: "trade practice: missing notices",
    },
    {
      name: "solar inverter that stops with the grid, no warning",
      facts: { which: "other-source", notice: "missing", "stays-live": false },
      possible: ["C3"],
      source: "trade practice: label missing, isolation works",
    },
    {
      name: "230 V and no warning of unexpected voltage",
      facts: { which: "voltage", notice: "not-asked-for" },
      possible: ["none"],
      source: "regulation: no unexpected voltage",
    },
    {
      name: "second source, not known whether it runs alone",
      facts: { which: "other-source", notice: "missing" },
      possible: ["C3", "C2"],
      missing: ["stays-live"],
      source: "union over the source",
    },
  ],
});
