import { ALWAYS, all, any, held, is, NEVER, no, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A protective conductor too small for the energy that a fault lets through. */
export const cpcUndersized = topic({
  id: "cpc-undersized",
  title: "Protective conductor too small",
  group: "circuits",
  items: ["circuits.cpc"],
  facts: {
    withstands: yesNo({
      asks: "By size or by energy, does the protective conductor withstand an earth fault?",
      effort: "measured",
      yes: "its size withstands an earth fault",
      no: "a fault lets more energy through than the conductor withstands",
      worse: "no",
      worked: { by: "cpc-adiabatic", met: "yes", notMet: "no" },
    }),
    evidence: ranked({
      asks: "What shows it?",
      effort: "measured",
      values: {
        "by-table": "its size follows from that of the line conductor by Table 54.7",
        "by-energy": "the energy let through at this fault current is known from the device's maker or its standard",
        rough: "only a rough reckoning with an assumed time of 0.1 s shows it",
      },
    }),
    marks: ranked({
      asks: "Are there signs that it has already carried a fault or a load?",
      effort: "opened",
      values: {
        none: "the conductor shows no sign of heat",
        heated: "the conductor or the insulation beside it shows heat",
        parted: "the conductor has burnt through",
      },
    }),
  },
  contested: {
    "rough-reckoning": {
      question: "Does a rough reckoning with an assumed time of 0.1 s show that the conductor is large enough?",
      positions: {
        enough: {
          words: "the rough reckoning is enough for an existing circuit",
          because: "breakers open far sooner, and twin cable of standard make has long been sold with this size",
        },
        "not-enough": {
          words: "it shows nothing, and the energy from the device's maker is wanted",
          because: "below 0.1 s the formula with a time does not hold, 543.1.3",
        },
      },
    },
  },
  paths: [
    {
      id: "burns-through",
      hazard: "shock-under-fault",
      route: "a fault burns the conductor through before the device opens, and metal stays live",
      exists: any(no("withstands"), is("marks", "heated", "parted")),
      layers: [
        oneEventAway("basic", "insulation", "the insulation of live parts", ["416.1"]),
        {
          id: "conductor",
          provision: "fault-protection",
          words: "a protective conductor that survives the fault",
          gone: ALWAYS,
          sound: NEVER,
          regulations: ["543.1.1", "543.1.3"],
        },
      ],
    },
  ],
  departures: [
    {
      when: all(yes("withstands"), is("evidence", "rough"), held("rough-reckoning", "not-enough")),
      words: "the size of the protective conductor is not shown to be enough",
      regulations: ["543.1.1", "543.1.3"],
    },
  ],
  client: {
    C2: [
      says(
        "The earth wire has burnt through. In a fault, metal could give a shock. Have it fixed today.",
        is("marks", "parted"),
      ),
      says(
        "The earth wire is too thin. In a fault it could burn through, and metal could give a shock. Have it fixed soon.",
        no("withstands"),
      ),
      says(
        "The earth wire has been hot. It could fail in a fault, and metal could give a shock. Have it fixed soon.",
        is("marks", "heated"),
      ),
    ],
    C3: "The earth wire may be a little thin. Nothing shows that it is a danger. Ask for its size to be checked.",
    FI: [
      unsure("We could not find out if the earth wire is thick enough for a fault. This must be looked at.", [
        "withstands",
      ]),
      unsure("We could not see if the earth wire has been hot. This must be looked at.", ["marks"]),
    ],
    none: "The earth wire is thick enough.",
  },
  remedies: [
    {
      words: "Get the energy let through by the device at this fault current from its maker, and reckon again.",
      changes: { withstands: "yes", evidence: "by-energy" },
    },
    {
      words: "Fit a device of smaller rating or one that lets less energy through.",
      changes: { withstands: "yes", evidence: "by-table", marks: "none" },
    },
    {
      words: "Run a larger protective conductor and replace what has been heated.",
      changes: { withstands: "yes", evidence: "by-table", marks: "none" },
    },
  ],
  examples: [
    {
      name: "1.0 mm² on a 30 A fuse with a high fault current, 1.9 mm² needed",
      facts: { withstands: false, marks: "none" },
      possible: ["C2"],
      classification: "C2",
      source: "arithmetic: √(600² × 0.13) ÷ 115 = 1.88 mm²; regulation 543.1.3",
    },
    {
      name: "1.5 mm² with 2.5 mm² on a breaker, maker's energy known",
      facts: { withstands: true, evidence: "by-energy", marks: "none" },
      possible: ["none"],
      classification: "none",
      source: "regulation 543.1.3",
    },
    {
      name: "only the rough reckoning",
      facts: { withstands: true, evidence: "rough", marks: "none" },
      possible: ["none"],
      source: "trade practice: rough reckoning accepted",
    },
    {
      name: "only the rough reckoning, held not to be enough",
      facts: { withstands: true, evidence: "rough", marks: "none" },
      positions: { "rough-reckoning": "not-enough" },
      possible: ["C3"],
      source: "trade discussion of faults below 0.1 s",
    },
    {
      name: "sleeve browned along the bare conductor",
      facts: { withstands: true, evidence: "by-table", marks: "heated" },
      possible: ["C2"],
      source: "trade practice: it has carried more than it can",
    },
    {
      name: "fault current above the data held",
      facts: {
        marks: "none",
        evidence: "by-energy",
        withstands: { notKnown: "limited", reason: "no energy figure for this device can be had" },
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "union over what the energy would show",
    },
    {
      name: "not reckoned yet",
      facts: { marks: "none", evidence: "by-table" },
      possible: ["none", "C2"],
      missing: ["withstands"],
      source: "union over what the energy would show",
    },
  ],
});
