import { all, any, held, is, NEVER, no, ranked, says, unsure, yes, yesNo } from "@good-grounds/core";
import { oneEventAway, topic } from "../topic.ts";

/** A circuit whose current returns through the neutral of another circuit. */
export const borrowedNeutral = topic({
  id: "borrowed-neutral",
  title: "Neutral shared between circuits",
  group: "circuits",
  items: ["circuits.neutrals"],
  facts: {
    shared: yesNo({
      asks: "Does current of one circuit return through the neutral of another?",
      effort: "measured",
      yes: "current of one circuit returns through the neutral of another",
      no: "every circuit has a neutral of its own",
      worse: "yes",
    }),
    switching: ranked({
      asks: "How are the two circuits switched?",
      effort: "glance",
      values: {
        together: "one device, or linked devices, switch both circuits off together",
        "same-rcd": "separate devices under one RCD or main switch of their own switch them",
        apart: "separate devices with nothing in common but the main switch switch them",
      },
    }),
    notice: yesNo({
      asks: "Is there a lasting notice at both devices that the neutral is shared?",
      effort: "glance",
      yes: "a notice at both devices says that the neutral is shared",
      no: "no notice says that the neutral is shared",
      worse: "no",
    }),
    "neutral-carries": yesNo({
      asks: "Can the shared neutral carry the current of both circuits together?",
      effort: "opened",
      yes: "the shared neutral carries the sum of both devices",
      no: "both devices together let more through than the shared neutral carries",
      worse: "no",
    }),
  },
  contested: {
    warned: {
      question: "Does one RCD over both with a notice at the devices make the shared neutral an improvement only?",
      positions: {
        "a-layer": {
          words: "a notice with one switch over both is a layer left",
          because: "whoever isolates is told, and has one switch that makes both dead",
        },
        "no-layer": {
          words: "a notice does not stand in for separate neutrals",
          because: "314.4 wants each circuit separate so that one made dead stays dead",
        },
      },
    },
  },
  paths: [
    {
      id: "opened-neutral",
      hazard: "contact-with-live-parts",
      route: "one circuit is switched off for work, its neutral is opened, and the load of the other makes it live",
      exists: yes("shared"),
      layers: [
        oneEventAway("closed", "barrier-or-enclosure", "enclosures that stay closed until somebody works inside", [
          "416.2.4",
        ]),
        {
          id: "isolation",
          provision: "isolation",
          words: "a device that makes the circuit dead, its neutral included",
          gone: is("switching", "same-rcd", "apart"),
          sound: NEVER,
          regulations: ["314.4", "462.2"],
        },
        {
          id: "warned",
          provision: "information",
          words: "a notice, with one switch over both",
          gone: any(is("switching", "apart"), no("notice"), held("warned", "no-layer")),
          sound: NEVER,
          regulations: ["514.11.1"],
        },
      ],
    },
    {
      id: "hot-neutral",
      hazard: "burns-or-fire",
      route: "both circuits load the one neutral, and no device sees the sum",
      exists: yes("shared"),
      layers: [
        {
          id: "sum",
          provision: "overcurrent-protection",
          words: "devices that together keep the neutral within what it carries",
          gone: no("neutral-carries"),
          sound: yes("neutral-carries"),
          regulations: ["431.2.1", "433.1.1"],
        },
        oneEventAway("load", "thermal-protection", "a load that is seldom full on both"),
      ],
    },
  ],
  departures: [
    {
      when: all(yes("shared"), is("switching", "same-rcd", "apart")),
      words: "two circuits share a neutral",
      regulations: ["314.4"],
    },
  ],
  client: {
    C2: [
      says(
        "Two circuits share one return wire. With one switched off, its wires can still give a shock. Have them parted soon.",
        is("switching", "same-rcd", "apart"),
      ),
      says("Two circuits share one return wire. It could get too hot. Have them parted soon.", no("neutral-carries")),
    ],
    C3: "Two circuits share one return wire. A notice warns of it. Parting them would be safer.",
    FI: [
      unsure(
        "Two circuits may share one return wire. We could not find out. It could give a shock in later work. Have it looked at.",
        ["shared"],
      ),
      unsure("Two circuits share one return wire. We could not find out if that is safe. Have it looked at.", [
        "switching",
        "notice",
        "neutral-carries",
      ]),
    ],
    none: "Each circuit has its own return wire, or both go off together.",
  },
  remedies: [
    {
      words: "Put both circuits on one device that the shared neutral and the smaller cable can carry.",
      changes: { switching: "together", "neutral-carries": "yes" },
    },
    {
      words: "Where one RCD or switch serves both, fix a notice at both devices.",
      changes: { notice: "yes" },
    },
    {
      words: "Run a neutral of its own, or change the switching so that none is needed.",
      changes: { shared: "no" },
    },
  ],
  examples: [
    {
      name: "landing light takes its neutral from the floor above, separate devices",
      facts: { shared: true, switching: "apart", notice: false, "neutral-carries": true },
      possible: ["C2"],
      classification: "C2",
      source: "trade discussion of shared neutrals; regulation 314.4",
    },
    {
      name: "same RCD and labelled",
      facts: { shared: true, switching: "same-rcd", notice: true, "neutral-carries": true },
      possible: ["C3"],
      classification: "C3",
      source: "trade discussion of shared neutrals",
    },
    {
      name: "same RCD and labelled, held to be no layer",
      facts: { shared: true, switching: "same-rcd", notice: true, "neutral-carries": true },
      positions: { warned: "no-layer" },
      possible: ["C2"],
      source: "trade discussion of shared neutrals",
    },
    {
      name: "both on one device",
      facts: { shared: true, switching: "together", "neutral-carries": true },
      possible: ["none"],
      source: "trade discussion of shared neutrals",
    },
    {
      name: "neutrals not parted for a reading",
      facts: {
        switching: "apart",
        "neutral-carries": true,
        shared: { notKnown: "limited", reason: "board could not be made dead" },
      },
      possible: ["none", "C2"],
      classification: "FI",
      source: "union over what a neutral to neutral reading would show",
    },
    {
      name: "notice not looked for",
      facts: { shared: true, switching: "same-rcd", "neutral-carries": true },
      possible: ["C3", "C2"],
      missing: ["notice"],
      source: "union over the notice",
    },
  ],
});
