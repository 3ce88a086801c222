import { ALWAYS, all, any, held, is, NEVER, oneKind, ranked } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A protective conductor too small for the energy that a fault lets through. */
export const cpcUndersized = topic({
  id: "cpc-undersized",
  title: "Protective conductor too small",
  group: "circuits",
  items: ["circuits.cpc"],
  facts: {
    withstands: ranked({
      asks: "Does its size withstand an earth fault, and what shows it?",
      effort: "measured",
      values: {
        shown: "its size is shown to withstand an earth fault, by the table or by energy known from the device",
        "rough-only": "only a rough reckoning with an assumed time shows it; the energy let through is not known",
        fails: "a fault lets more energy through than the conductor withstands",
      },
      worked: { by: "cpc-adiabatic", met: "shown", notMet: "fails" },
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
    service: oneKind({
      asks: "Is the circuit in service?",
      effort: "glance",
      values: { live: "the circuit is in service", dead: "the circuit is disconnected and locked off" },
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
      exists: all(is("service", "live"), any(is("withstands", "fails"), is("marks", "heated", "parted"))),
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
      when: all(is("service", "live"), is("withstands", "rough-only"), held("rough-reckoning", "not-enough")),
      words: "the size of the protective conductor is not shown to be enough",
      regulations: ["543.1.1", "543.1.3"],
    },
  ],
  client: {
    C2: "The earth wire is too thin. In a fault it could burn through, and metal could give a shock. Have it fixed soon.",
    C3: "The earth wire may be a little thin. Nothing shows that it is a danger. Ask for its size to be checked.",
    FI: "We could not find out if the earth wire is thick enough for a fault. This must be looked at.",
    none: "The earth wire is thick enough.",
  },
  remedies: [
    {
      words: "Get the energy let through by the device at this fault current from its maker, and reckon again.",
      changes: { withstands: "shown" },
    },
    {
      words: "Fit a device of smaller rating or one that lets less energy through.",
      changes: { withstands: "shown", marks: "none" },
    },
    {
      words: "Run a larger protective conductor and replace what has been heated.",
      changes: { withstands: "shown", marks: "none" },
    },
  ],
  examples: [
    {
      name: "1.0 mm² on a 30 A fuse with a high fault current, 1.9 mm² needed",
      facts: { withstands: "fails", marks: "none", service: "live" },
      possible: ["C2"],
      classification: "C2",
      source: "arithmetic: √(600² × 0.13) ÷ 115 = 1.88 mm²; regulation 543.1.3",
    },
    {
      name: "1.5 mm² with 2.5 mm² on a breaker, maker's energy known",
      facts: { withstands: "shown", marks: "none", service: "live" },
      possible: ["none"],
      classification: "none",
      source: "regulation 543.1.3",
    },
    {
      name: "only the rough reckoning",
      facts: { withstands: "rough-only", marks: "none", service: "live" },
      possible: ["none"],
      source: "trade practice: rough reckoning accepted",
    },
    {
      name: "only the rough reckoning, held not to be enough",
      facts: { withstands: "rough-only", marks: "none", service: "live" },
      positions: { "rough-reckoning": "not-enough" },
      possible: ["C3"],
      source: "trade discussion of faults below 0.1 s",
    },
    {
      name: "sleeve browned along the bare conductor",
      facts: { withstands: "shown", marks: "heated", service: "live" },
      possible: ["C2"],
      source: "trade practice: it has carried more than it can",
    },
    {
      name: "fault current above the data held",
      facts: {
        marks: "none",
        service: "live",
        withstands: { notKnown: "limited", reason: "no energy figure for this device can be had" },
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "union over what the energy would show",
    },
    {
      name: "not reckoned yet",
      facts: { marks: "none", service: "live" },
      possible: ["none", "C2"],
      missing: ["withstands"],
      source: "union over what the energy would show",
    },
  ],
});
